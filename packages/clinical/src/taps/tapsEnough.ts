import { passes } from '../contract/threshold.js';
import { TAP_COMPARISONS as SIDE } from './comparisons.js';
import { TAP_FIGURES } from './figures.js';
import type { TapResult } from './tapResult.js';

/**
 * Whether the taps pin the rate down well enough, and about how many more would. `halfWidthPerMinute` is half of
 * the 95 % interval now, null where there is none yet.
 */
export type TapsEnough = {
  readonly enough: boolean;
  readonly more: number;
  readonly halfWidthPerMinute: number | null;
};

const FEWEST = TAP_FIGURES.intervalsForRange.value;

/**
 * When enough taps are enough: the half-width of the 95 % interval of the rate is at most the wanted one. About
 * `more` further taps are needed otherwise, if beats and tapping go on as they were: the half-width falls with
 * the root of the number of intervals (what is due to the tapper's jitter falls faster, so this errs on the side
 * of more). Under five intervals `more` is what it takes to have an interval at all.
 *
 * Errors: throws a RangeError unless the wanted half-width is over 0.
 */
export function tapsEnough(
  { lowPerMinute, highPerMinute, beats }: Pick<TapResult, 'lowPerMinute' | 'highPerMinute' | 'beats'>,
  wantedHalfWidthPerMinute: number = TAP_FIGURES.wantedHalfWidthPerMinute.value,
): TapsEnough {
  if (!(wantedHalfWidthPerMinute > 0)) throw new RangeError(`A half-width of ${wantedHalfWidthPerMinute}`);
  if (lowPerMinute === null || highPerMinute === null) {
    return { enough: false, more: FEWEST + 1 - beats, halfWidthPerMinute: null };
  }
  const halfWidthPerMinute = (highPerMinute - lowPerMinute) / 2;
  if (passes(halfWidthPerMinute, SIDE.wantedHalfWidthPerMinute, wantedHalfWidthPerMinute))
    return { enough: true, more: 0, halfWidthPerMinute };
  const intervals = (beats - 1) * (halfWidthPerMinute / wantedHalfWidthPerMinute) ** 2;
  return { enough: false, more: Math.ceil(intervals) + 1 - beats, halfWidthPerMinute };
}
