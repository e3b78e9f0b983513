import { mean } from './mean.js';

/**
 * The sample standard deviation, divisor n - 1; null for fewer than two values, where it is not defined.
 *
 * @param centre the mean of the values, where it was worked out before
 */
export function sampleSd(values: readonly number[], centre: number | null = mean(values)): number | null {
  const n = values.length;
  if (centre === null || n < 2) return null;
  let squares = 0;
  for (let k = 0; k < n; k++) squares += ((values[k] as number) - centre) ** 2;
  return Math.sqrt(squares / (n - 1));
}
