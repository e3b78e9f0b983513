import type { PressurePair } from './byMeasure.js';
import { MINUTE_MS } from './clock.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import { inTimeOrder, type SeriesReading } from './seriesReading.js';

/** A reading that stands alone, with the readings before and after it. */
export type LoneReading = {
  readonly reading: SeriesReading;
  readonly before: SeriesReading;
  readonly after: SeriesReading;
};

/**
 * Readings of a recording that stand far from both their neighbours, above both or below both: the arm may have moved. Who was
 * measured long before or after is no neighbour. They are in the means all the same: nothing is left out by this, a hand may do so.
 *
 * @param readings in any order
 * @param left those that no mean uses, by `index`: neither they nor their neighbourhood count
 * Errors: none. Source: none; common practice (movement is looked for where one reading stands alone), both distances a
 * decision. Out-of-office handbook 6 says that large errors went with movement of the arm.
 */
export function loneReadings(readings: readonly SeriesReading[], left: ReadonlySet<number>): LoneReading[] {
  const used = inTimeOrder(readings).filter(({ index }) => !left.has(index));
  return used.flatMap((reading, at) => {
    const [before, after] = [used[at - 1], used[at + 1]];
    if (before === undefined || after === undefined) return [];
    const near = F.loneNeighbourMinutes.value * MINUTE_MS;
    if (reading.atMs - before.atMs > near || after.atMs - reading.atMs > near) return [];
    const isFar =
      standsAlone(reading.systolic, before.systolic, after.systolic, F.loneSystolic.value) ||
      standsAlone(reading.diastolic, before.diastolic, after.diastolic, F.loneDiastolic.value);
    return isFar ? [{ reading, before, after }] : [];
  });
}

/** Readings that stand alone, and the mean without them; null where there are too many for it to mean anything. */
export type Lone = {
  readonly readings: readonly LoneReading[];
  readonly without: PressurePair | null;
};

/**
 * What there is to say of readings that stand alone; null where none does.
 *
 * @param meanWithout the mean of the whole, mmHg, without the readings of these indexes
 * Errors: none. Source: none; how many are named is a decision.
 */
export function loneOf(
  readings: readonly SeriesReading[],
  left: ReadonlySet<number>,
  meanWithout: (out: ReadonlySet<number>) => PressurePair,
): Lone | null {
  const found = loneReadings(readings, left);
  if (found.length === 0) return null;
  const isFew = found.length <= F.loneNamed.value;
  return {
    readings: found,
    without: isFew ? meanWithout(new Set(found.map(({ reading }) => reading.index))) : null,
  };
}

/** Whether a number is over both others, or under both, by so much or more; null is not known. */
function standsAlone(value: number | null, before: number | null, after: number | null, by: number): boolean {
  if (value === null || before === null || after === null) return false;
  return value - Math.max(before, after) >= by || Math.min(before, after) - value >= by;
}
