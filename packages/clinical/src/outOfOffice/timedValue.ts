import { HOUR_MS } from './clock.js';

/** Values of one measure with their times, in order of time: hours since the first reading of the series. */
export type TimedValues = {
  readonly hours: readonly number[];
  readonly values: readonly number[];
};

/**
 * Timed values cut into runs, none of which is bridged to the next: a night between two days, a gap that is too long.
 * `starts` are the places at which runs begin, in order, the first being 0; no run of several is empty.
 */
export type TimedRuns = TimedValues & { readonly starts: readonly number[] };

/** From one time to a later one, in hours: counted in whole milliseconds, so that three hours are three whenever they begin. */
function wholeStep(from: number, to: number): number {
  return Math.round((to - from) * HOUR_MS) / HOUR_MS;
}

/** The same as `ambulatory-1` had it: the last bit of three hours went by when they began. */
export function plainStep(from: number, to: number): number {
  return to - from;
}

/** The same values cut anew where two neighbours lie further apart than `longestHours`. */
export function withoutGaps({ hours, values }: TimedValues, longestHours: number): TimedRuns {
  const starts: number[] = [];
  for (let k = 0; k < hours.length; k++) {
    if (k === 0 || wholeStep(hours[k - 1] as number, hours[k] as number) > longestHours) starts.push(k);
  }
  return { hours, values, starts };
}

/** The longest time between two neighbours, in hours; null of fewer than two. */
export function longestGap(hours: readonly number[], step = wholeStep): number | null {
  if (hours.length < 2) return null;
  let longest = Number.NEGATIVE_INFINITY;
  for (let k = 1; k < hours.length; k++) {
    const gap = step(hours[k - 1] as number, hours[k] as number);
    if (gap > longest) longest = gap;
  }
  return longest;
}

/** Hours from the first value to the last; 0 of none. */
export function coveredHours(hours: readonly number[]): number {
  return hours.length === 0 ? 0 : (hours[hours.length - 1] as number) - (hours[0] as number);
}
