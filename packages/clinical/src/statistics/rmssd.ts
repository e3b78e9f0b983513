import type { Series } from './series.js';

/**
 * Root mean square of successive differences, over the number of differences (n - 1 without gaps); null if there
 * is none. Source: bedside handbook 1.12.
 */
export function rmssd(series: Series): number | null {
  let squares = 0;
  let differences = 0;
  for (let i = 1; i < series.length; i++) {
    const before = series[i - 1] as number | null;
    const value = series[i] as number | null;
    if (before === null || value === null) continue;
    squares += (value - before) ** 2;
    differences++;
  }
  return differences === 0 ? null : Math.sqrt(squares / differences);
}
