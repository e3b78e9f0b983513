import { CATEGORY_FIGURES as F } from './figures.js';

/** Whether limits of adults do not apply: under the age from which they do. An age that is not known is an adult's. */
export function isChild(ageYears: number | null): boolean {
  return ageYears !== null && ageYears < F.adultFromYears.value;
}
