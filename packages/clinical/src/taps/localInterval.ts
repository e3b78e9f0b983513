import { settled } from '../contract/threshold.js';
import { MAD_TO_SD, medianAbsoluteDeviation } from '../statistics/median.js';
import { TAP_FIGURES } from './figures.js';

const SIDE = TAP_FIGURES.localIntervals.value;

/**
 * For each interval the median of the five before and the five after it, itself left out; at the ends, of what
 * there is. Same unit as the intervals. Empty for fewer than two intervals, which have no neighbour.
 * Source: docs/conventions.md section 5.
 */
export function localIntervals(intervals: readonly number[]): number[] {
  if (intervals.length < 2) return [];
  const local: number[] = [];
  // The interval and its neighbours, in order of size; slid along one place at a time.
  const sorted = new Float64Array(2 * SIDE + 1);
  let size = 0;
  for (let i = 0; i < Math.min(SIDE, intervals.length); i++)
    size = insert(sorted, size, intervals[i] as number);
  for (let at = 0; at < intervals.length; at++) {
    if (at > SIDE) size = remove(sorted, size, intervals[at - SIDE - 1] as number);
    if (at + SIDE < intervals.length) size = insert(sorted, size, intervals[at + SIDE] as number);
    local.push(medianWithout(sorted, size, intervals[at] as number));
  }
  return local;
}

/**
 * Each interval as a share of its local interval, settled at 1e-9 as ratios that meet a limit are
 * (docs/conventions.md section 4). Empty for fewer than two intervals.
 */
export function localRatios(intervals: readonly number[]): number[] {
  return localIntervals(intervals).map((local, i) => settled((intervals[i] as number) / local));
}

/** Robust SD of such ratios: 1.4826 x their median absolute deviation; null of none. */
export function robustSpread(ratios: readonly number[]): number | null {
  const deviation = medianAbsoluteDeviation(ratios);
  return deviation === null ? null : settled(MAD_TO_SD * deviation);
}

/** The median of the first `size` values in order, one of them (`self`) left out. */
function medianWithout(sorted: Float64Array, size: number, self: number): number {
  const rest = size - 1;
  const upper = rest >> 1;
  const lower = rest % 2 === 1 ? upper : upper - 1;
  const above = sorted[upper] as number;
  const upperValue = self <= above ? (sorted[upper + 1] as number) : above;
  if (lower === upper) return upperValue;
  const below = sorted[lower] as number;
  return ((self <= below ? (sorted[lower + 1] as number) : below) + upperValue) / 2;
}

/** Puts a value in its place among the first `size` and gives the new size. */
function insert(sorted: Float64Array, size: number, value: number): number {
  let place = size;
  while (place > 0 && (sorted[place - 1] as number) > value) {
    sorted[place] = sorted[place - 1] as number;
    place--;
  }
  sorted[place] = value;
  return size + 1;
}

/** Takes a value that is among the first `size` out of them and gives the new size. */
function remove(sorted: Float64Array, size: number, value: number): number {
  let place = 0;
  while (sorted[place] !== value) place++;
  for (let i = place + 1; i < size; i++) sorted[i - 1] = sorted[i] as number;
  return size - 1;
}
