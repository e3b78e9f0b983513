import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';

/**
 * How far two systolic means of one person lie apart though nothing was changed, as it was published: at home by the SD of
 * the difference, awake over 24 hours by the range of 95 of 100 differences. mmHg; it says nothing of one person's change.
 *
 * Source: out-of-office handbook 17.1.
 */
export const APART_BY_THEMSELVES = {
  home: { sd: F.homeYearApartSd.value },
  ambulatory: { low: F.awakeMonthApartLow.value, high: F.awakeMonthApartHigh.value },
} as const;
