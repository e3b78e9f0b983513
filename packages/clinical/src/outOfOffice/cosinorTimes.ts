import { inverse } from '../statistics/inverse.js';
import { fillWaves, WAVES_OF_HOUR } from './dayWaves.js';

/** Coefficients of a curve: the mesor, and a beta and a gamma for each of two harmonics. */
export const COEFFICIENTS = 1 + WAVES_OF_HOUR;

/**
 * What the times of a fit alone say, worked out once for every measure that was taken at them: the waves at each, and
 * the inverse of the normal equations of one harmonic and of two, `COEFFICIENTS` in a row; what belongs to a harmonic
 * that is not fitted is 0. An inverse is null where the times do not tell the coefficients apart.
 */
export type CosinorTimes = {
  readonly n: number;
  /** `WAVES_OF_HOUR` for each time, one time after the other. */
  readonly waves: Float64Array;
  readonly inverseOfOne: Float64Array | null;
  readonly inverseOfTwo: Float64Array | null;
};

/**
 * The times of a fit. Source: out-of-office handbook 15.
 *
 * @param toLocal what makes the hours local ones from midnight (of any day)
 */
export function cosinorTimes(hours: readonly number[], toLocal = 0): CosinorTimes {
  const n = hours.length;
  const waves = new Float64Array(n * WAVES_OF_HOUR);
  for (let i = 0; i < n; i++) fillWaves(waves, i * WAVES_OF_HOUR, (hours[i] as number) + toLocal);
  const normal = normalEquations(waves, n);
  return {
    n,
    waves,
    // The equations of one harmonic are the first of those of two.
    inverseOfOne: n < 1 + 2 ? null : inverse(normal.slice(), 1 + 2, COEFFICIENTS),
    inverseOfTwo: n < COEFFICIENTS ? null : inverse(normal, COEFFICIENTS),
  };
}

/** The sums of 1, the waves and all their products, row by row; each sum by itself, for a list of them takes several times as long. */
function normalEquations(waves: Float64Array, n: number): Float64Array {
  let [b1, g1, b2, g2] = [0, 0, 0, 0];
  let [b1b1, b1g1, b1b2, b1g2] = [0, 0, 0, 0];
  let [g1g1, g1b2, g1g2] = [0, 0, 0];
  let [b2b2, b2g2, g2g2] = [0, 0, 0];
  for (let i = 0, at = 0; i < n; i++, at += WAVES_OF_HOUR) {
    const c1 = waves[at] as number;
    const s1 = waves[at + 1] as number;
    const c2 = waves[at + 2] as number;
    const s2 = waves[at + 3] as number;
    b1 += c1;
    g1 += s1;
    b2 += c2;
    g2 += s2;
    b1b1 += c1 * c1;
    b1g1 += c1 * s1;
    b1b2 += c1 * c2;
    b1g2 += c1 * s2;
    g1g1 += s1 * s1;
    g1b2 += s1 * c2;
    g1g2 += s1 * s2;
    b2b2 += c2 * c2;
    b2g2 += c2 * s2;
    g2g2 += s2 * s2;
  }
  // biome-ignore format: a matrix
  return Float64Array.of(
    n, b1, g1, b2, g2,
    b1, b1b1, b1g1, b1b2, b1g2,
    g1, b1g1, g1g1, g1b2, g1g2,
    b2, b1b2, g1b2, b2b2, b2g2,
    g2, b1g2, g1g2, b2g2, g2g2,
  );
}
