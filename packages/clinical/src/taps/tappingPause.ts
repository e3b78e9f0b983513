import { passes, settled } from '../contract/threshold.js';
import { median } from '../statistics/median.js';
import { TAP_COMPARISONS as SIDE } from './comparisons.js';
import { TAP_FIGURES } from './figures.js';
import type { RepairedTaps } from './repair.js';

/**
 * The longest gap in the taps that is longer than missed taps explain: `seconds` of it, after the tap `afterTap` (from
 * 1), over the limit of so many seconds.
 */
export type TappingPause = {
  readonly seconds: number;
  readonly afterTap: number;
  readonly limitSeconds: number;
};

const PAUSE_OVER = TAP_FIGURES.pauseOver.value;

/**
 * Whether the tapping paused, or what was tapped stood still: nobody can tell which from the taps, and a rate over the
 * whole would be of neither. Null where it did not. A gap is measured against the median of the others.
 * Source: docs/conventions.md section 5.
 */
export function tappingPause({ seconds, beatsToNext }: RepairedTaps): TappingPause | null {
  const intervals = beatsToNext.map((beats, at) =>
    settled(((seconds[at + 1] as number) - (seconds[at] as number)) / beats),
  );
  const longest = intervals.reduce((found, one, at) => (one > (intervals[found] as number) ? at : found), 0);
  const others = median(intervals.toSpliced(longest, 1));
  const gap = intervals[longest];
  if (others === null || gap === undefined) return null;
  const limitSeconds = settled(PAUSE_OVER * others);
  if (!passes(gap, SIDE.pauseOver, limitSeconds)) return null;
  return { seconds: gap, afterTap: longest + 1, limitSeconds };
}
