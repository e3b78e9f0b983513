import { useApp } from '../app/context.js';
import { signText } from '../app/signText.js';
import { putBack } from './slip.js';
import type { Round } from './useRound.js';

type SlipLineProps = {
  readonly round: Round;
  /** Without the name of the sign, where the person may read along. */
  readonly isUnnamed?: boolean;
};

/** What was taken out last can be put back, in one step. The number stays hidden until then. */
export function SlipLine({ round, isUnnamed = false }: SlipLineProps) {
  const { words } = useApp();
  const { slip } = round.draft;
  return (
    <div role="status">
      {slip === null ? null : (
        <p className="slip-line small">
          <span>
            {isUnnamed
              ? words.sentence('count.removedOne')
              : words.sentence('count.removed', { text: signText(slip.of, words) })}
          </span>
          <button type="button" className="button button-quiet" onClick={() => round.change(putBack)}>
            {words.sentence('count.putBack')}
          </button>
        </p>
      )}
    </div>
  );
}
