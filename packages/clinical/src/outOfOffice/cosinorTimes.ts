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

/** The times of a fit; `hours` are local hours from midnight (any day). Source: out-of-office handbook 15. */
export function cosinorTimes(hours: readonly number[]): CosinorTimes {
  const n = hours.length;
  const waves = new Float64Array(n * WAVES_OF_HOUR);
  const normal = new Float64Array(COEFFICIENTS * COEFFICIENTS);
  const row = new Float64Array(COEFFICIENTS);
  row[0] = 1;
  for (let i = 0; i < n; i++) {
    fillWaves(waves, i * WAVES_OF_HOUR, hours[i] as number);
    for (let k = 0; k < WAVES_OF_HOUR; k++) row[k + 1] = waves[i * WAVES_OF_HOUR + k] as number;
    for (let a = 0; a < COEFFICIENTS; a++) {
      const one = row[a] as number;
      for (let b = a, at = a * COEFFICIENTS + a; b < COEFFICIENTS; b++, at++) {
        normal[at] = (normal[at] as number) + one * (row[b] as number);
      }
    }
  }
  return {
    n,
    waves,
    inverseOfOne: inverseOf(normal, 1 + 2, n),
    inverseOfTwo: inverseOf(normal, COEFFICIENTS, n),
  };
}

/** Of the first `size` equations: those of fewer harmonics are the first of those of more. */
function inverseOf(normal: Float64Array, size: number, n: number): Float64Array | null {
  if (n < size) return null;
  const first = new Float64Array(COEFFICIENTS * COEFFICIENTS);
  for (let a = 0; a < size; a++) {
    for (let b = 0; b < size; b++) {
      first[a * COEFFICIENTS + b] = normal[Math.min(a, b) * COEFFICIENTS + Math.max(a, b)] as number;
    }
  }
  return inverse(first, size, COEFFICIENTS);
}
