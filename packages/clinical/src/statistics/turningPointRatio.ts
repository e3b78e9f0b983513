import type { Series } from './series.js';

/**
 * The share, 0 to 1, of values between two neighbours that are a strict local maximum or minimum (n - 2 such
 * values without gaps); null if there is none. A random series has 2/3. Ties are no turning points, so coarse
 * times lower it. Source: bedside handbook 1.12.
 */
export function turningPointRatio(series: Series): number | null {
  let turns = 0;
  let places = 0;
  for (let i = 2; i < series.length; i++) {
    const before = series[i - 2] as number | null;
    const value = series[i - 1] as number | null;
    const after = series[i] as number | null;
    if (before === null || value === null || after === null) continue;
    if ((value > before && value > after) || (value < before && value < after)) turns++;
    places++;
  }
  return places === 0 ? null : turns / places;
}
