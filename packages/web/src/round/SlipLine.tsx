import { useEffect, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { signText } from '../app/signText.js';
import { isTimed } from './measuring.js';
import { putBack, type SlipPage, slipOn, withoutSlip } from './slip.js';
import { slipText } from './slipText.js';
import type { Round } from './useRound.js';

type SlipLineProps = { readonly round: Round; readonly page: SlipPage };

/**
 * What was taken out on this page can be put back, in one step, until the page is left, and what came back is said. Not
 * while somebody counts; where the person may read along, without the name of the sign.
 */
export function SlipLine({ round, page }: SlipLineProps) {
  const { words } = useApp();
  const [back, setBack] = useState<{ readonly page: SlipPage; readonly text: string } | null>(null);
  const change = useRef(round.change);
  change.current = round.change;
  // biome-ignore lint/correctness/useExhaustiveDependencies: it ends with the page it was on
  useEffect(() => () => change.current(withoutSlip), [page]);
  const { pulse, breaths } = round.draft;
  const slip = slipOn(round.draft, page);
  const isCounting = isTimed(pulse.measuring) || isTimed(breaths.measuring);
  const isUnnamed = page === 'pulse' || page === 'breaths';
  return (
    <div role="status">
      {isCounting ? null : slip !== null ? (
        <p className="slip-line small">
          <span>
            {isUnnamed
              ? words.sentence('count.removedOne')
              : words.sentence('count.removed', { text: signText(slip.of, words) })}
          </span>
          <button
            type="button"
            className="button button-quiet"
            onClick={() => {
              setBack({ page, text: slipText(slip, words) });
              round.change(putBack);
            }}
          >
            {words.sentence('count.putBack', { text: slipText(slip, words) })}
          </button>
        </p>
      ) : back?.page === page ? (
        <p className="slip-line small">{words.sentence('count.isBack', { text: back.text })}</p>
      ) : null}
    </div>
  );
}
