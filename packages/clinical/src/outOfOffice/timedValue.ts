import { HOUR_MS } from './clock.js';
import type { Measure, SeriesReading } from './seriesReading.js';

/** Values of one measure with their times, in order of time: hours since the first reading of the series. */
export type TimedValues = {
  readonly hours: readonly number[];
  readonly values: readonly number[];
};

/** One measure of readings that are in order of time; readings without it are left out. Hours count from `fromMs`. */
export function timedValues(
  readings: readonly SeriesReading[],
  measure: Measure,
  fromMs: number,
): TimedValues {
  const hours: number[] = [];
  const values: number[] = [];
  for (const reading of readings) {
    const value = reading[measure];
    if (value === null) continue;
    hours.push((reading.atMs - fromMs) / HOUR_MS);
    values.push(value);
  }
  return { hours, values };
}
