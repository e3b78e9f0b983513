import binomialCdfOf from '@stdlib/stats-base-dists-binomial-cdf';
import { defined } from './defined.js';

/** P(at most `k` successes in `n` independent trials), each a success with probability `p`. */
export function binomialCdf(k: number, n: number, p: number): number {
  return defined(binomialCdfOf(k, n, p), 'binomialCdf', k, n, p);
}
