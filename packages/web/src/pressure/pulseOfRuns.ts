import type { InForce, RunPlace } from '@evenfall/record';
import { chartedRate } from '../round/chartedRate.js';
import { type DraftValue, isVoidValue, type RoundDraft } from '../round/draft.js';
import type { DraftRun } from './pressureDraft.js';

/** The pulse of a round: the last count or taps with a number; undefined for none. */
export function pulseOfRound({ pulse }: Pick<RoundDraft, 'pulse'>): DraftValue | undefined {
  return pulse.values.findLast((value) => !isVoidValue(value));
}

/**
 * The pulse that a reading can go by: the last count or taps with a number that was taken before it, where no reading in
 * another posture lies between the two; undefined for none. A pulse on the feet is none of a person who lies.
 */
export function pulseBefore(
  { pulse, pressure }: Pick<RoundDraft, 'pulse' | 'pressure'>,
  { sequence, place: { posture } }: Pick<DraftRun, 'sequence' | 'place'>,
): DraftValue | undefined {
  const elsewhere = pressure.values
    .filter((one) => one.sequence < sequence && one.place.posture !== posture)
    .map((one) => one.sequence);
  return pulse.values.findLast(
    (value) =>
      !isVoidValue(value) && value.sequence < sequence && elsewhere.every((other) => other < value.sequence),
  );
}

/** Of a reading that is still to come, where the cuff is: whatever was taken until now came before it. */
export function toCome(place: RunPlace): Pick<DraftRun, 'sequence' | 'place'> {
  return { sequence: Number.POSITIVE_INFINITY, place };
}

/**
 * The pulse that a reading goes by where none is typed with it, per minute: of one that was taken, or of one to come; null
 * where none was counted in its posture.
 */
export function pulseFor(
  draft: Pick<RoundDraft, 'pulse' | 'pressure'>,
  reading: Pick<DraftRun, 'sequence' | 'place'>,
  inForce: InForce,
): number | null {
  const of = pulseBefore(draft, reading);
  return of === undefined ? null : chartedRate(of, inForce);
}

/**
 * The same round with each reading going by its pulse as that stands now: put right, or, where it was taken out, one that
 * was taken before the reading in the same posture, else none. A pulse that was typed or shown with the numbers is the reading's own and stays.
 */
export function withPulseOfRuns(draft: RoundDraft, inForce: InForce): RoundDraft {
  const { values } = draft.pressure;
  const settled = values.map((one) => {
    if (typeof one.pulseOf !== 'string') return one;
    const of = draft.pulse.values.find(({ entry }) => entry === one.pulseOf) ?? pulseBefore(draft, one);
    const pulsePerMinute = of === undefined ? null : chartedRate(of, inForce);
    return pulsePerMinute === one.run.pulsePerMinute ? one : { ...one, run: { ...one.run, pulsePerMinute } };
  });
  const isSame = settled.every((one, at) => one === values[at]);
  return isSame ? draft : { ...draft, pressure: { ...draft.pressure, values: settled } };
}
