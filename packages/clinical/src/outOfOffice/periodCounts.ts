import type { Period } from './ambulatoryRules.js';
import { type ForEachMeasure, forEachMeasure } from './byMeasure.js';
import { type DayNight, periodOf } from './periods.js';
import type { Edited } from './recordingKept.js';
import type { SeriesReading } from './seriesReading.js';

/** How many readings of a period have each number. */
export type PeriodCounts = Readonly<Record<Period, ForEachMeasure<number>>>;

/**
 * How many of the readings that are used have each number, in each period: one without a diastolic counts for the systolic alone.
 * Source: out-of-office handbook 20 ("use what exists for each mean and show both n").
 */
export function periodCounts(
  readings: readonly SeriesReading[],
  edited: readonly Pick<Edited, 'index'>[],
  dayNight: DayNight,
): PeriodCounts {
  const left = new Set(edited.map(({ index }) => index));
  const of = (period: Period) =>
    forEachMeasure(
      (measure) =>
        readings.filter(
          (one) =>
            !left.has(one.index) &&
            one[measure] !== null &&
            (period === 'whole' || periodOf(one, dayNight) === period),
        ).length,
    );
  return { whole: of('whole'), day: of('day'), night: of('night') };
}
