import type { SidedLimit } from '../contract/shownPressure.js';
import { passes } from '../contract/threshold.js';
import type { AmbulatoryRules } from './ambulatoryRules.js';
import type { PressurePair } from './byMeasure.js';
import { type DayNight, periodOf } from './periods.js';
import type { Edited } from './recordingKept.js';
import type { SeriesReading } from './seriesReading.js';

type Limits = Pick<AmbulatoryRules, 'daySystolic' | 'dayDiastolic' | 'nightSystolic' | 'nightDiastolic'>;

/**
 * Percent of the readings of day and night together that are on the side of the limit of their own period; null where a
 * period has no limit, or nothing was read. Worked out where it is shown, as `derivedSpreads` is.
 *
 * @param readings all that came
 * @param edited those that the result does not use
 * Source: out-of-office handbook 11, 19 (A1, combined 24-h load).
 */
export function combinedLoad(
  readings: readonly SeriesReading[],
  edited: readonly Pick<Edited, 'index'>[],
  dayNight: DayNight,
  { daySystolic, dayDiastolic, nightSystolic, nightDiastolic }: Limits,
): PressurePair {
  const left = new Set(edited.map(({ index }) => index));
  const of = (measure: 'systolic' | 'diastolic', day: SidedLimit | null, night: SidedLimit | null) => {
    if (day === null || night === null) return null;
    const limits = { day, night, neither: null };
    let all = 0;
    let over = 0;
    for (const one of readings) {
      const value = one[measure];
      const limit = limits[periodOf(one, dayNight)];
      if (value === null || limit === null || left.has(one.index)) continue;
      all++;
      if (passes(value, limit.comparison, limit.limit)) over++;
    }
    return all === 0 ? null : (100 * over) / all;
  };
  return {
    systolic: of('systolic', daySystolic, nightSystolic),
    diastolic: of('diastolic', dayDiastolic, nightDiastolic),
  };
}
