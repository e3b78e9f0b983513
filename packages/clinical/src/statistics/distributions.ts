import betaQuantileOf from '@stdlib/stats-base-dists-beta-quantile';
import binomialCdfOf from '@stdlib/stats-base-dists-binomial-cdf';
import chiSquareCdfOf from '@stdlib/stats-base-dists-chisquare-cdf';
import chiSquareQuantileOf from '@stdlib/stats-base-dists-chisquare-quantile';
import fCdfOf from '@stdlib/stats-base-dists-f-cdf';
import fQuantileOf from '@stdlib/stats-base-dists-f-quantile';
import normalCdfOf from '@stdlib/stats-base-dists-normal-cdf';
import normalQuantileOf from '@stdlib/stats-base-dists-normal-quantile';
import tCdfOf from '@stdlib/stats-base-dists-t-cdf';
import tQuantileOf from '@stdlib/stats-base-dists-t-quantile';

/*
 * The distributions behind every interval, limit and p value, under our own names so that the library can be
 * changed in one place. Probabilities are 0 to 1. All throw a RangeError for an argument outside the
 * distribution's domain: a caller inside this package has broken a promise, and NaN would spread silently.
 * Checked against tables of 40 digits (fixtures/distributions.json) and against a second library.
 */

/** P(Z <= z) of the standard normal distribution. */
export function normalCdf(z: number): number {
  return checked(normalCdfOf(z, 0, 1), 'normalCdf', z);
}

/** The z below which the standard normal distribution has probability `p`; infinite at 0 and 1. */
export function normalQuantile(p: number): number {
  return checked(normalQuantileOf(p, 0, 1), 'normalQuantile', p);
}

/** P(T <= t) of Student's t with `df` degrees of freedom, over 0 and not necessarily whole. */
export function tCdf(t: number, df: number): number {
  return checked(tCdfOf(t, df), 'tCdf', t, df);
}

/** The t below which Student's t with `df` degrees of freedom has probability `p`. */
export function tQuantile(p: number, df: number): number {
  return checked(tQuantileOf(p, df), 'tQuantile', p, df);
}

/** P(X <= x) of chi-square with `df` degrees of freedom. */
export function chiSquareCdf(x: number, df: number): number {
  return checked(chiSquareCdfOf(x, df), 'chiSquareCdf', x, df);
}

/** The x below which chi-square with `df` degrees of freedom has probability `p`. */
export function chiSquareQuantile(p: number, df: number): number {
  return checked(chiSquareQuantileOf(p, df), 'chiSquareQuantile', p, df);
}

/** P(X <= x) of F with `df1` (numerator) and `df2` (denominator) degrees of freedom. */
export function fCdf(x: number, df1: number, df2: number): number {
  return checked(fCdfOf(x, df1, df2), 'fCdf', x, df1, df2);
}

/** The x below which F with `df1` and `df2` degrees of freedom has probability `p`. */
export function fQuantile(p: number, df1: number, df2: number): number {
  return checked(fQuantileOf(p, df1, df2), 'fQuantile', p, df1, df2);
}

/** P(at most `k` successes in `n` independent trials), each a success with probability `p`. */
export function binomialCdf(k: number, n: number, p: number): number {
  return checked(binomialCdfOf(k, n, p), 'binomialCdf', k, n, p);
}

/** The x below which beta(`alpha`, `beta`) has probability `p`: the ends of an exact interval for a share. */
export function betaQuantile(p: number, alpha: number, beta: number): number {
  return checked(betaQuantileOf(p, alpha, beta), 'betaQuantile', p, alpha, beta);
}

function checked(value: number, name: string, ...given: number[]): number {
  if (Number.isNaN(value)) throw new RangeError(`${name}(${given.join(', ')}) is not defined`);
  return value;
}
