import type { Count } from './count.js';

/** The rates that a perfect counter of a regular rhythm could have had, per minute. */
export type LikelyRange = {
  readonly lowPerMinute: number;
  readonly highPerMinute: number;
  readonly lowIncluded: boolean;
  readonly highIncluded: boolean;
};

/** Ends in beats, relative to the count. */
const ENDS = {
  beat0: { low: 0, high: 1, lowIncluded: true },
  beat1: { low: -1, high: 0, lowIncluded: true },
  any1: { low: -1, high: 1, lowIncluded: false },
  any0: { low: 0, high: 2, lowIncluded: false },
} as const;

/**
 * Where the true rate lies, given how the clock was started and what the first beat was called. Certain for a
 * regular rhythm counted without a slip; promises nothing for an irregular one. The high end is never included.
 *
 * Units: per minute. A range that would start below 0 starts at 0, included.
 * Source: docs/conventions.md section 5; derived, bedside handbook 1.4.
 *
 * @example likelyRange({ of: 'pulse', n: 19, windowSeconds: 15, clock: 'any', first: 1 }) // 72 to 80, both excluded
 */
export function likelyRange({ n, windowSeconds, clock, first }: Count): LikelyRange {
  const ends = ENDS[`${clock}${first}`];
  const low = n + ends.low;
  return {
    lowPerMinute: (60 * Math.max(low, 0)) / windowSeconds,
    highPerMinute: (60 * (n + ends.high)) / windowSeconds,
    lowIncluded: ends.lowIncluded || low < 0,
    highIncluded: false,
  };
}
