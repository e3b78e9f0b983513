import tCdfOf from '@stdlib/stats-base-dists-t-cdf';
import tQuantileOf from '@stdlib/stats-base-dists-t-quantile';
import { defined } from './defined.js';

/** P(T <= t) of Student's t with `df` degrees of freedom, over 0 and not necessarily whole. */
export function tCdf(t: number, df: number): number {
  return defined(tCdfOf(t, df), 'tCdf', t, df);
}

/** The t below which Student's t with `df` degrees of freedom has probability `p`. */
export function tQuantile(p: number, df: number): number {
  return defined(tQuantileOf(p, df), 'tQuantile', p, df);
}
