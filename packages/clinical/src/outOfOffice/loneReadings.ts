import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import { inTimeOrder, type SeriesReading } from './seriesReading.js';

/** A reading that stands alone, with the readings before and after it. */
export type LoneReading = {
  readonly reading: SeriesReading;
  readonly before: SeriesReading;
  readonly after: SeriesReading;
};

/**
 * Readings of a recording that stand far from both their neighbours, above both or below both: the arm may have moved. They
 * are in the means all the same: nothing is left out by this, a hand may do so.
 *
 * @param readings in any order
 * @param left those that no mean uses, by `index`: neither they nor their neighbourhood count
 * Errors: none. Source: none; common practice (movement is looked for where one reading stands alone), the distance a
 * decision. Out-of-office handbook 6 says that large errors went with movement of the arm.
 */
export function loneReadings(readings: readonly SeriesReading[], left: ReadonlySet<number>): LoneReading[] {
  const used = inTimeOrder(readings).filter(({ index }) => !left.has(index));
  return used.flatMap((reading, at) => {
    const [before, after] = [used[at - 1], used[at + 1]];
    if (before === undefined || after === undefined) return [];
    const isFar =
      standsAlone(reading.systolic, before.systolic, after.systolic, F.loneSystolic.value) ||
      standsAlone(reading.diastolic, before.diastolic, after.diastolic, F.loneDiastolic.value);
    return isFar ? [{ reading, before, after }] : [];
  });
}

/** Whether a number is over both others, or under both, by so much or more; null is not known. */
function standsAlone(value: number | null, before: number | null, after: number | null, by: number): boolean {
  if (value === null || before === null || after === null) return false;
  return value - Math.max(before, after) >= by || Math.min(before, after) - value >= by;
}
