import { passes } from '../contract/threshold.js';
import { CDC_HEIGHTS } from './cdcHeightsTable.js';
import { CHILD_COMPARISONS as SIDE } from './comparisons.js';
import { CHILD_FIGURES as F } from './figures.js';
import type { Sex } from './sex.js';

/** The curve of heights at one month of age: L and S without a unit, M in cm. */
export type Lms = { readonly l: number; readonly m: number; readonly s: number };

/** Under this the power of the formula is a logarithm. */
const NO_POWER = 1e-7;
/** Where in its month a row stands. */
const MIDDLE = 0.5;

/** The curve for an age in months, 24 to 240: the row of its whole month plus a half. */
export function heightCurve(sex: Sex, ageMonths: number): Lms {
  const row = CDC_HEIGHTS.rows.find(([months]) => months === Math.floor(ageMonths) + MIDDLE);
  if (row === undefined) throw new Error(`No row of heights for ${ageMonths} months`);
  const [, boysL, boysM, boysS, girlsL, girlsM, girlsS] = row;
  return sex === 'm' ? { l: boysL, m: boysM, s: boysS } : { l: girlsL, m: girlsM, s: girlsS };
}

/**
 * How many SD a height in cm lies above the median of the age and sex, by CDC 2000; minus is below.
 *
 * Errors: throws for an age without a row; an age from outside has been parsed.
 * Source: bedside handbook 6.4, appendix A: z = ((X/M)^L - 1) / (L S), or ln(X/M) / S where L is next to 0.
 *
 * @example heightZ('f', 60, 105) // -0.628
 */
export function heightZ(sex: Sex, ageMonths: number, heightCm: number): number {
  const { l, m, s } = heightCurve(sex, ageMonths);
  if (Math.abs(l) < NO_POWER) return Math.log(heightCm / m) / s;
  return ((heightCm / m) ** l - 1) / (l * s);
}

/**
 * Whether a height in cm can be that of a child of that age and sex. Outside, the regression of pressures by height
 * climbs without end, and a slip of the height would hide a crisis: no limit is made from it. Our decision.
 *
 * Errors: as {@link heightZ}.
 */
export function isHeightPossible(sex: Sex, ageMonths: number, heightCm: number): boolean {
  const far = Math.abs(heightZ(sex, ageMonths, heightCm));
  return !passes(far, SIDE.impossibleHeightZ, F.impossibleHeightZ.value);
}
