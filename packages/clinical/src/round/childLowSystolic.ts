import { passes } from '../contract/threshold.js';
import type { ActNowRules } from './actNowRules.js';
import { ROUND_COMPARISONS as SIDE } from './comparisons.js';
import { ROUND_FIGURES as F } from './figures.js';

const MONTHS_A_YEAR = F.infantUnderMonths.value;

type Limits = Pick<
  ActNowRules,
  'newbornLowSystolic' | 'infantLowSystolic' | 'childLowBaseSystolic' | 'olderChildLowSystolic'
>;

/**
 * The systolic, mmHg, BELOW which a child of that age in months is hypotensive: 60 as a newborn, 70 to the first
 * birthday, then 70 and 2 for each completed year up to 10, then 90. Source: bedside handbook 3.17.
 */
export function childLowSystolic(ageMonths: number, limits: Limits): number {
  if (passes(ageMonths, SIDE.newbornUnderMonths, F.newbornUnderMonths.value))
    return limits.newbornLowSystolic;
  if (passes(ageMonths, SIDE.infantUnderMonths, F.infantUnderMonths.value)) return limits.infantLowSystolic;
  const years = Math.floor(ageMonths / MONTHS_A_YEAR);
  return passes(years, SIDE.formulaUpToYears, F.formulaUpToYears.value)
    ? limits.childLowBaseSystolic + F.childLowPerYear.value * years
    : limits.olderChildLowSystolic;
}
