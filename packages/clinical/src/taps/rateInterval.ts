import type { Flag } from '../contract/flag.js';
import { longRunHalfWidth } from '../statistics/longRunMean.js';
import type { BeatSeries } from './beatSeries.js';
import { TAP_FIGURES } from './figures.js';
import type { RepairedTaps } from './repair.js';
import { timeStepSeconds } from './timeStep.js';

const FEWEST = TAP_FIGURES.intervalsForRange.value;
const PROBABILITY = 0.95;

export type RateInterval = {
  readonly lowPerMinute: number | null;
  readonly highPerMinute: number | null;
  readonly why: readonly Flag<'too-few-for-range'>[];
};

/**
 * 95 % interval of the long-run rate: where the rate would settle if beats and tapping went on as they are. It
 * allows together for the person's irregularity, independent or slowly varying, for the tapper's jitter, which
 * touches only the first and the last tap, and for times rounded to a step of up to 0.1 s. It lies evenly about
 * the rate as a ratio, so that its ends are never negative.
 *
 * Null under five intervals. Its coverage over a stated draw of people and tappers is in prove/taps.mjs. A change
 * slower than the taps last (a pulse settling after exercise) cannot be seen in it.
 */
export function rateInterval(
  taps: RepairedTaps,
  meanIntervalMs: number,
  beats: BeatSeries | null,
): RateInterval {
  if (beats === null) {
    const intervals = taps.beatsToNext.reduce((sum, one) => sum + one, 0);
    const why = { code: 'too-few-for-range', figures: { intervals, needs: FEWEST } } as const;
    return { lowPerMinute: null, highPerMinute: null, why: [why] };
  }
  // Two times, each off by a uniform error of half a step: step squared / 12 each.
  const step = (timeStepSeconds(taps.seconds) * 1000) / meanIntervalMs;
  const furtherVariance = (2 * (step * step)) / 12 / beats.n ** 2;
  const ratio = Math.exp(longRunHalfWidth({ ...beats, furtherVariance }, PROBABILITY));
  const perMinute = 60_000 / meanIntervalMs;
  // Taps closer than the step of their clock say nothing of the rate: its upper end is then the largest number there is.
  const highPerMinute = Math.min(perMinute * ratio, Number.MAX_VALUE);
  return { lowPerMinute: perMinute / ratio, highPerMinute, why: [] };
}
