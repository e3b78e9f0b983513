import { mean } from './mean.js';

/**
 * The standard deviation of a whole population, divisor n; 0 of one value, null of none.
 *
 * @param centre the mean of the values, where it was worked out before
 */
export function populationSd(values: readonly number[], centre: number | null = mean(values)): number | null {
  if (centre === null) return null;
  let squares = 0;
  for (let k = 0; k < values.length; k++) squares += ((values[k] as number) - centre) ** 2;
  return Math.sqrt(squares / values.length);
}
