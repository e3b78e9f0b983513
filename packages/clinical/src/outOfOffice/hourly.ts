import { mean } from '../statistics/mean.js';
import { sampleSd } from '../statistics/sampleSd.js';
import { DAY_HOURS } from './clock.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import type { Measure, SeriesReading } from './seriesReading.js';

/** The readings of one hour of the clock; an hour without any is not there. SD null under three. */
export type Hour = {
  readonly hour: number;
  readonly n: number;
  readonly mean: number;
  readonly sd: number | null;
};

/**
 * Means by the clock's hour, in the order in which the hours first come. An empty hour is missing and is never filled.
 * Source: out-of-office handbook 13.
 */
export function hourlyMeans(inOrder: readonly SeriesReading[], measure: Measure): Hour[] {
  const byHour: (number[] | undefined)[] = new Array(DAY_HOURS);
  const found: { readonly hour: number; readonly values: number[] }[] = [];
  for (const reading of inOrder) {
    const value = reading[measure];
    if (value === null) continue;
    const hour = Math.floor(reading.minuteOfDay / 60);
    const values = byHour[hour];
    if (values === undefined) {
      const first = [value];
      byHour[hour] = first;
      found.push({ hour, values: first });
    } else values.push(value);
  }
  return found.map(({ hour, values }) => ({
    hour,
    n: values.length,
    mean: mean(values) as number,
    sd: values.length < F.hourlySdReadings.value ? null : sampleSd(values),
  }));
}
