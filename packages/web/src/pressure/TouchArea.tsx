import { useApp } from '../app/context.js';
import { askedOf } from './marks.js';

/** What the next touch is of, by how many there were after the first. */
const NEXT = ['moments.first', 'moments.last', 'moments.more'] as const;

type TouchAreaProps = {
  readonly count: number;
  readonly touch: (atMs: number) => void;
  /** What the first touch is of, for whoever holds the valve and for whoever looks on; null where its opening is known. */
  readonly valve: 'moments.valve' | 'second.valve' | null;
  /** Said instead of what comes next, where no sound is listened for. */
  readonly says?: string;
  /** How a moment is marked here, if not by a touch anywhere. */
  readonly how?: string;
  /** Takes a finger by itself: on a page where not every touch is one. */
  readonly takesFinger?: boolean;
};

/** The place that is touched for each moment, with what comes next and what was marked. Nothing sounds, nothing vibrates. */
export function TouchArea({ count, touch, valve, says, how, takesFinger = false }: TouchAreaProps) {
  const { words } = useApp();
  const isOpened = valve === null;
  const next = count === 0 && !isOpened ? valve : (NEXT[count - (isOpened ? 0 : 1)] ?? 'moments.more');
  return (
    <button
      type="button"
      className="tap-area touch-area"
      onPointerDown={(event) => {
        if (takesFinger && event.button === 0) touch(event.timeStamp);
      }}
      onClick={(event) => {
        // The press of an assistive tool, which arrives as a click with neither key nor finger.
        if (event.detail === 0) touch(event.timeStamp);
      }}
    >
      <span className="tap-area-says">{says ?? words.sentence(next)}</span>
      <span className="small">
        {count === 0
          ? (how ?? words.sentence('moments.how'))
          : says !== undefined
            ? words.sentence('moments.soFar', { touches: count })
            : askedOf(count, isOpened)
                .map((what) => words.title('mark', what))
                .join(' · ')}
      </span>
    </button>
  );
}
