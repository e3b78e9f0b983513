import { passes, settled } from '../contract/threshold.js';
import { TAP_COMPARISONS as SIDE } from './comparisons.js';
import { TAP_FIGURES } from './figures.js';
import type { TapAdvice } from './tapAdvice.js';
import type { TapResult } from './tapResult.js';

/**
 * Whether the taps pin the rate down well enough and nothing asks for a longer count, and about how many more would.
 * `halfWidthPerMinute` is half of the 95 % interval now, null where there is none yet. `untilSeconds` is the time from
 * the first tap for which the rules ask, null where they ask for none.
 */
export type TapsEnough = {
  readonly enough: boolean;
  readonly more: number;
  readonly halfWidthPerMinute: number | null;
  readonly untilSeconds: number | null;
};

type Narrowed = Pick<TapsEnough, 'more' | 'halfWidthPerMinute'>;

const FEWEST = TAP_FIGURES.intervalsForRange.value;

/**
 * When enough taps are enough: the half-width of the 95 % interval of the rate is at most the wanted one, and the advice
 * on the same taps asks for no longer count. About `more` further taps are needed otherwise, if beats and tapping go on
 * as they were: the half-width falls with the root of the number of intervals (what is due to the tapper's jitter falls
 * faster, so this errs on the side of more), and a longer count is full when its seconds have passed. Under five
 * intervals `more` is what it takes to have an interval at all.
 *
 * Errors: throws a RangeError unless the wanted half-width is over 0.
 */
export function tapsEnough(
  result: Pick<TapResult, 'perMinute' | 'lowPerMinute' | 'highPerMinute' | 'beats'>,
  { nextWindowSeconds }: Pick<TapAdvice, 'nextWindowSeconds'>,
  wantedHalfWidthPerMinute: number = TAP_FIGURES.wantedHalfWidthPerMinute.value,
): TapsEnough {
  if (!(wantedHalfWidthPerMinute > 0)) throw new RangeError(`A half-width of ${wantedHalfWidthPerMinute}`);
  const narrowed = narrowedTo(result, wantedHalfWidthPerMinute);
  const more = Math.max(narrowed.more, tapsUntil(nextWindowSeconds, result));
  return { ...narrowed, more, enough: more === 0, untilSeconds: nextWindowSeconds };
}

function narrowedTo(
  { lowPerMinute, highPerMinute, beats }: Pick<TapResult, 'lowPerMinute' | 'highPerMinute' | 'beats'>,
  wanted: number,
): Narrowed {
  if (lowPerMinute === null || highPerMinute === null) {
    return { more: Math.max(1, FEWEST + 1 - beats), halfWidthPerMinute: null };
  }
  const halfWidthPerMinute = (highPerMinute - lowPerMinute) / 2;
  if (passes(halfWidthPerMinute, SIDE.wantedHalfWidthPerMinute, wanted))
    return { more: 0, halfWidthPerMinute };
  const intervals = (beats - 1) * (halfWidthPerMinute / wanted) ** 2;
  return { more: Math.max(1, Math.ceil(intervals) + 1 - beats), halfWidthPerMinute };
}

/** Taps that are missing until so many seconds have passed since the first; at least one where they are asked for. */
function tapsUntil(
  seconds: number | null,
  { perMinute, beats }: Pick<TapResult, 'perMinute' | 'beats'>,
): number {
  if (seconds === null || perMinute === null) return 0;
  return Math.max(1, Math.ceil(settled((seconds * perMinute) / 60)) + 1 - beats);
}
