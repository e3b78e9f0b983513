import type { Scenario } from '@evenfall/physiology';
import type { Judged } from '../exercise/debrief.js';
import type { CountDebrief } from './countDebrief.js';
import { COUNTING_FIGURES as F } from './figures.js';
import { IRREGULAR_RHYTHMS } from './rhythmOf.js';
import type { TapsDebrief } from './tapsDebrief.js';

/** A rate that was written, beside what was to be had and what was true; per minute. */
export type RateRow = {
  readonly of: 'pulse' | 'apex' | 'breaths';
  readonly written: number;
  /** What a perfect count of that very window, or one tap for each, gives; null: written without either. */
  readonly had: number | null;
  /** Over the minute about it, at the wrist, at the apex or of the chest. */
  readonly truth: number;
  /** Written minus what was to be had; where nothing was counted, minus what was true. */
  readonly error: number;
  /** A difference no larger than this is the method's: one beat more or less in the window, and never less than the book allows. */
  readonly withinPerMinute: number;
  readonly isAccepted: boolean;
  /** Whether what was written lies near what was true, too. */
  readonly isTrue: boolean;
  /** So far from what was true that somebody could be hurt by it. */
  readonly isGrave: boolean;
  readonly count: CountDebrief | null;
  /** What was tapped instead of counted; null: nothing. */
  readonly taps: TapsDebrief | null;
};

/**
 * Every rate that was written, judged as a reading of the pressure is: by what a perfect count of the same window would have
 * given. A window that was too short for this person is no miscount, but its rate may be far from the true one all the same.
 * Whether the pulse is irregular is told from the minutes about the count; without one it is by the rhythm the person has.
 *
 * Source: assessment handbook 13 (pulse 11, respiration 5); docs/conventions.md section 5 (one more or less).
 */
export function rateRows(
  { entered, counts, taps, rates }: Pick<Judged, 'entered' | 'counts' | 'taps' | 'rates'>,
  { rhythm }: Pick<Scenario, 'rhythm'>,
): RateRow[] {
  const { pulsePerMinute, apexPerMinute = null, breathsPerMinute } = entered;
  const rows = [
    ['pulse', pulsePerMinute, rates.wristPerMinute],
    ['apex', apexPerMinute, rates.heartPerMinute],
    ['breaths', breathsPerMinute, rates.breathsPerMinute],
  ] as const;
  return rows.flatMap(([of, written, truth]) => {
    if (written === null) return [];
    const count = counts[of];
    const tapped = count === null ? taps[of] : null;
    const had = count === null ? (tapped?.herePerMinute ?? null) : (60 * count.there) / count.windowSeconds;
    const isIrregular =
      count === null ? IRREGULAR_RHYTHMS.has(rhythm.kind) : count.rhythm.ofPerson === 'irregular';
    const isUneven = of !== 'breaths' && isIrregular;
    const allowed = Math.max(F.withinPerMinute.value, isUneven ? F.irregularWithinShare.value * truth : 0);
    const withinPerMinute = Math.max(allowed, count === null ? 0 : 60 / count.windowSeconds);
    const error = written - (had ?? truth);
    const off = Math.abs(written - truth);
    const grave = of === 'breaths' ? F.graveBreathsPerMinute.value : F.graveShare.value * truth;
    return [
      {
        of,
        written,
        had,
        truth,
        error,
        withinPerMinute,
        isAccepted: isWithin(Math.abs(error), withinPerMinute),
        isTrue: isWithin(off, allowed),
        isGrave: off > grave,
        count,
        taps: tapped,
      },
    ];
  });
}

/** What is written is a whole number. */
function isWithin(off: number, limit: number): boolean {
  const HALF = 0.5;
  return off <= limit + HALF;
}
