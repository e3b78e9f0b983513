import { TAP_FIGURES } from './figures.js';

const SIDE = TAP_FIGURES.localIntervals.value;

/**
 * For each interval the median of the five before and the five after it, itself left out; at the ends, of what
 * there is. Same unit as the intervals. Empty for fewer than two intervals, which have no neighbour.
 * Source: docs/conventions.md section 5.
 */
export function localIntervals(intervals: readonly number[]): number[] {
  if (intervals.length < 2) return [];
  const neighbours = new Float64Array(2 * SIDE);
  return intervals.map((_, at) => {
    let size = 0;
    const end = Math.min(intervals.length - 1, at + SIDE);
    for (let i = Math.max(0, at - SIDE); i <= end; i++) {
      if (i !== at) size = insertInOrder(neighbours, size, intervals[i] as number);
    }
    const upper = neighbours[size >> 1] as number;
    return size % 2 === 1 ? upper : (upper + (neighbours[(size >> 1) - 1] as number)) / 2;
  });
}

/** Puts a value into the first `size` places, which are in order, and gives the new size. */
function insertInOrder(sorted: Float64Array, size: number, value: number): number {
  let place = size;
  while (place > 0 && (sorted[place - 1] as number) > value) {
    sorted[place] = sorted[place - 1] as number;
    place--;
  }
  sorted[place] = value;
  return size + 1;
}
