/*
 * The distributions behind every interval, limit and p value stand in a file each, under our own names, so that the
 * library can be changed in one place and a page loads only those it needs. Probabilities are 0 to 1. All throw a
 * RangeError for an argument outside the distribution's domain: a caller inside this package has broken a promise,
 * and NaN would spread silently. Checked against tables of 40 digits and a second library (distributions.test.ts).
 */

/** The value, or a RangeError that names the function and its arguments if there is none. */
export function defined(value: number, name: string, ...given: number[]): number {
  if (Number.isNaN(value)) throw new RangeError(`${name}(${given.join(', ')}) is not defined`);
  return value;
}
