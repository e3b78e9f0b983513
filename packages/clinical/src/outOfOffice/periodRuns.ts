import { HOUR_MS } from './clock.js';
import type { Measure, SeriesReading } from './seriesReading.js';
import type { Segments } from './variability.js';

/** Stretches of day and of night, none of which is bridged by what lies between. */
export function periodRuns(
  kept: readonly SeriesReading[],
  periods: readonly string[],
  measure: Measure,
  startMs: number,
): { readonly day: Segments; readonly night: Segments } {
  const runs: {
    day: { hours: number[]; values: number[] }[];
    night: { hours: number[]; values: number[] }[];
  } = {
    day: [],
    night: [],
  };
  let before = '';
  kept.forEach((reading, k) => {
    const period = periods[k] as string;
    if (period === 'day' || period === 'night') {
      if (period !== before) runs[period].push({ hours: [], values: [] });
      const value = reading[measure];
      const run = runs[period].at(-1);
      if (value !== null && run !== undefined) {
        run.hours.push((reading.atMs - startMs) / HOUR_MS);
        run.values.push(value);
      }
    }
    before = period;
  });
  return runs;
}
