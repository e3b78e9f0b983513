import { mean } from './mean.js';

/** The sample standard deviation, divisor n - 1; null for fewer than two values, where it is not defined. */
export function sampleSd(values: readonly number[]): number | null {
  const centre = mean(values);
  if (centre === null || values.length < 2) return null;
  let squares = 0;
  for (const value of values) squares += (value - centre) ** 2;
  return Math.sqrt(squares / (values.length - 1));
}
