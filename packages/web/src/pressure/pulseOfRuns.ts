import type { InForce } from '@evenfall/record';
import { chartedRate } from '../round/chartedRate.js';
import { type DraftValue, isVoidValue, type RoundDraft } from '../round/draft.js';

/** The pulse of a round: the last count or taps with a number; undefined for none. */
export function pulseOfRound({ pulse }: Pick<RoundDraft, 'pulse'>): DraftValue | undefined {
  return pulse.values.findLast((value) => !isVoidValue(value));
}

/**
 * The same round with each reading going by its pulse as that stands now: put right, or, where it was taken out, the one
 * that the round has in its place. A pulse that was typed or shown with the numbers is the reading's own and stays.
 */
export function withPulseOfRuns(draft: RoundDraft, inForce: InForce): RoundDraft {
  const { values } = draft.pressure;
  const settled = values.map((one) => {
    if (typeof one.pulseOf !== 'string') return one;
    const of = draft.pulse.values.find(({ entry }) => entry === one.pulseOf) ?? pulseOfRound(draft);
    const pulsePerMinute = of === undefined ? null : chartedRate(of, inForce);
    return pulsePerMinute === one.run.pulsePerMinute ? one : { ...one, run: { ...one.run, pulsePerMinute } };
  });
  const isSame = settled.every((one, at) => one === values[at]);
  return isSame ? draft : { ...draft, pressure: { ...draft.pressure, values: settled } };
}
