import normalCdfOf from '@stdlib/stats-base-dists-normal-cdf';
import normalQuantileOf from '@stdlib/stats-base-dists-normal-quantile';
import { defined } from './defined.js';

/** P(Z <= z) of the standard normal distribution. */
export function normalCdf(z: number): number {
  return defined(normalCdfOf(z, 0, 1), 'normalCdf', z);
}

/** The z below which the standard normal distribution has probability `p`; infinite at 0 and 1. */
export function normalQuantile(p: number): number {
  return defined(normalQuantileOf(p, 0, 1), 'normalQuantile', p);
}
