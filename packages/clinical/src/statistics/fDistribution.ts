import fCdfOf from '@stdlib/stats-base-dists-f-cdf';
import fQuantileOf from '@stdlib/stats-base-dists-f-quantile';
import { defined } from './defined.js';

/** P(X <= x) of F with `df1` (numerator) and `df2` (denominator) degrees of freedom. */
export function fCdf(x: number, df1: number, df2: number): number {
  return defined(fCdfOf(x, df1, df2), 'fCdf', x, df1, df2);
}

/** The x below which F with `df1` and `df2` degrees of freedom has probability `p`. */
export function fQuantile(p: number, df1: number, df2: number): number {
  return defined(fQuantileOf(p, df1, df2), 'fQuantile', p, df1, df2);
}
