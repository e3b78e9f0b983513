import { useApp } from '../app/context.js';
import { askedOf } from './marks.js';

/** What the next touch is of, by how many there were after the first. */
const NEXT = ['moments.first', 'moments.last', 'moments.more'] as const;

type TouchAreaProps = {
  readonly count: number;
  readonly touch: (atMs: number) => void;
  /** What the first touch is of, for whoever holds the valve and for whoever looks on. */
  readonly valve: 'moments.valve' | 'second.valve';
};

/** The place that is touched for each moment, with what comes next and what was marked. Nothing sounds, nothing vibrates. */
export function TouchArea({ count, touch, valve }: TouchAreaProps) {
  const { words } = useApp();
  const says = count === 0 ? valve : (NEXT[count - 1] ?? 'moments.more');
  return (
    <button
      type="button"
      className="tap-area touch-area"
      onClick={(event) => {
        // The press of an assistive tool, which arrives as a click with neither key nor finger.
        if (event.detail === 0) touch(event.timeStamp);
      }}
    >
      <span className="tap-area-says">{words.sentence(says)}</span>
      <span className="small">
        {count === 0
          ? words.sentence('moments.how')
          : askedOf(count)
              .map((what) => words.title('mark', what))
              .join(' · ')}
      </span>
    </button>
  );
}
