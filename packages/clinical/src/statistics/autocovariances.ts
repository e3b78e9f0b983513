import { mean } from './mean.js';
import { known, type Series } from './series.js';

/**
 * The covariance of each value with the one `lag` places later, for lags 0 to `most`: products of the distances
 * from the common mean over the number of such pairs (n - lag without gaps). Lag 0 is therefore the variance with
 * divisor n. Null at a lag without a pair.
 */
export function autocovariances(series: Series, most: number): (number | null)[] {
  const centre = mean(known(series));
  const distances = series.map((value) => (value === null || centre === null ? null : value - centre));
  const covariances: (number | null)[] = [];
  for (let lag = 0; lag <= most; lag++) {
    let products = 0;
    let pairs = 0;
    for (let i = lag; i < distances.length; i++) {
      const earlier = distances[i - lag] as number | null;
      const later = distances[i] as number | null;
      if (earlier === null || later === null) continue;
      products += earlier * later;
      pairs++;
    }
    covariances.push(pairs === 0 ? null : products / pairs);
  }
  return covariances;
}
