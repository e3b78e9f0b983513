/*
 * The distributions behind every interval, limit and p value stand in a file each, so that a page loads only those it
 * needs. They are our own, from the incomplete beta and gamma functions: a library of them weighs 41 kB on a phone.
 * Probabilities are 0 to 1. All throw a RangeError for an argument outside the distribution's domain: a caller inside
 * this package has broken a promise, and NaN would spread silently. Checked against tables of 40 digits and two
 * libraries (distributions.test.ts, secondLibrary.test.ts); beyond 1000 degrees of freedom good to 1e-10.
 */

/** The value, or a RangeError that names the function and its arguments if there is none. */
export function defined(value: number, name: string, ...given: number[]): number {
  if (Number.isNaN(value)) throw new RangeError(`${name}(${given.join(', ')}) is not defined`);
  return value;
}
