import chiSquareCdfOf from '@stdlib/stats-base-dists-chisquare-cdf';
import chiSquareQuantileOf from '@stdlib/stats-base-dists-chisquare-quantile';
import { defined } from './defined.js';

/** P(X <= x) of chi-square with `df` degrees of freedom. */
export function chiSquareCdf(x: number, df: number): number {
  return defined(chiSquareCdfOf(x, df), 'chiSquareCdf', x, df);
}

/** The x below which chi-square with `df` degrees of freedom has probability `p`. */
export function chiSquareQuantile(p: number, df: number): number {
  return defined(chiSquareQuantileOf(p, df), 'chiSquareQuantile', p, df);
}
