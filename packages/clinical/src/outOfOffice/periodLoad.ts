import type { SidedLimit } from '../contract/shownPressure.js';
import type { PressurePair } from './byMeasure.js';
import { excessArea, loadPercent, timeLoadPercent } from './load.js';
import type { TimedRuns } from './timedValue.js';

/** Percent of readings, and of time, at or over the limit of the period; area over it in mmHg h. */
export type Load = {
  readonly limit: PressurePair;
  readonly percent: PressurePair;
  readonly timePercent: PressurePair;
  readonly excessArea: PressurePair;
};

/**
 * The load of a period by its limits; null where it has none. The area is null, and not 0, of a period without readings.
 * Source: out-of-office handbook 11.
 */
export function periodLoad(
  of: { readonly systolic: TimedRuns; readonly diastolic: TimedRuns },
  readings: number,
  systolic: SidedLimit | null,
  diastolic: SidedLimit | null,
): Load | null {
  if (systolic === null || diastolic === null) return null;
  const [s, d] = [loadOf(of.systolic, readings, systolic), loadOf(of.diastolic, readings, diastolic)];
  return {
    limit: { systolic: systolic.limit, diastolic: diastolic.limit },
    percent: { systolic: s.percent, diastolic: d.percent },
    timePercent: { systolic: s.timePercent, diastolic: d.timePercent },
    excessArea: { systolic: s.area, diastolic: d.area },
  };
}

function loadOf(runs: TimedRuns, readings: number, { comparison, limit }: SidedLimit) {
  return {
    percent: loadPercent(runs.values, comparison, limit),
    timePercent: timeLoadPercent(runs, comparison, limit),
    area: readings === 0 ? null : excessArea(runs, limit),
  };
}
