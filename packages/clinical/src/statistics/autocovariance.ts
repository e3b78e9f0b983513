import { mean } from './mean.js';
import { known, type Series } from './series.js';

/**
 * The covariance of each value with the one `lag` places later, about the common mean, over the number of such
 * pairs (n - lag without gaps). Null if there is no pair. Lag 0 is therefore the variance with divisor n.
 */
export function autocovariance(series: Series, lag: number): number | null {
  const centre = mean(known(series));
  if (centre === null) return null;
  let products = 0;
  let pairs = 0;
  for (let i = lag; i < series.length; i++) {
    const earlier = series[i - lag] as number | null;
    const later = series[i] as number | null;
    if (earlier === null || later === null) continue;
    products += (earlier - centre) * (later - centre);
    pairs++;
  }
  return pairs === 0 ? null : products / pairs;
}
