import { chartCount } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { Flags } from '../parts/Flags.js';
import { faceFlags } from '../parts/faceFlags.js';
import { type Content, RangeLine, Rate } from '../parts/ValueFigures.js';
import { circumstancesOf } from './facts.js';
import type { PanelProps } from './panelProps.js';

/**
 * What a count comes to and what must be said of it at once, without the rest of a round, which may not be here yet and may
 * never come where the network is gone. What taps come to is worked out by a part of its own, and waits for it.
 */
export function ShownAtOnce({ round, sign, entry }: PanelProps & { readonly entry: string }) {
  const { program } = useApp();
  const { draft, facts, inForce } = round;
  const value = draft[sign].values.find((one) => one.entry === entry);
  if (value?.kind !== 'count') return null;
  const circumstances = circumstancesOf(draft, sign, value, facts, inForce);
  const done = { count: value.count, circumstances, override: null, note: null };
  const given: Content = { kind: 'count', content: chartCount(done, inForce, program) };
  return (
    <div className="measure measure-shown">
      <div role="status">
        <Rate given={given} />
        <RangeLine given={given} />
      </div>
      <Flags flags={faceFlags(given)} isAnnounced />
    </div>
  );
}
