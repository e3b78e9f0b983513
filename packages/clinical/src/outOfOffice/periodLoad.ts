import type { SidedLimit } from '../contract/shownPressure.js';
import type { ForEachMeasure, PressurePair } from './byMeasure.js';
import { excessArea, loadPercent, timeLoadPercent } from './load.js';
import { type SeriesReading, valuesOf } from './seriesReading.js';
import { timedValues } from './timedValue.js';
import type { Segments } from './variability.js';

/** Percent of readings, and of time, at or over the limit of the period; area over it in mmHg h. */
export type Load = {
  readonly limit: PressurePair;
  readonly percent: PressurePair;
  readonly timePercent: PressurePair;
  readonly excessArea: PressurePair;
};

/** The load of a period by its limits; null where it has none. Source: out-of-office handbook 11. */
export function periodLoad(
  runs: ForEachMeasure<{ readonly day: Segments; readonly night: Segments }>,
  period: 'day' | 'night',
  readings: readonly SeriesReading[],
  systolic: SidedLimit | null,
  diastolic: SidedLimit | null,
  startMs: number,
): Load | null {
  if (systolic === null || diastolic === null) return null;
  const limits = { systolic, diastolic };
  const pair = (of: (measure: 'systolic' | 'diastolic', limit: SidedLimit) => number | null) => ({
    systolic: of('systolic', limits.systolic),
    diastolic: of('diastolic', limits.diastolic),
  });
  return {
    limit: { systolic: systolic.limit, diastolic: diastolic.limit },
    percent: pair((m, { comparison, limit }) => loadPercent(valuesOf(readings, m), comparison, limit)),
    timePercent: pair((m, { comparison, limit }) =>
      timeLoadPercent(timedValues(readings, m, startMs), comparison, limit),
    ),
    excessArea: pair((m, { limit }) => (readings.length === 0 ? null : excessArea(runs[m][period], limit))),
  };
}
