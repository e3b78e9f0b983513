import { CHILD_COMPARISONS as SIDE } from '../child/comparisons.js';
import { CHILD_FIGURES as F } from '../child/figures.js';
import { completedYears } from '../child/years.js';
import { passes } from '../contract/threshold.js';
import type { ActNowRules } from './actNowRules.js';

type Limits = Pick<
  ActNowRules,
  'newbornLowSystolic' | 'infantLowSystolic' | 'childLowBaseSystolic' | 'olderChildLowSystolic'
>;

/**
 * The systolic, mmHg, BELOW which a child of that age in months is hypotensive: 60 as a newborn, 70 to the first
 * birthday, then 70 and 2 for each completed year up to 10, then 90. Source: bedside handbook 3.17.
 */
export function childLowSystolic(ageMonths: number, limits: Limits): number {
  if (passes(ageMonths, SIDE.neonateUnderMonths, F.neonateUnderMonths.value))
    return limits.newbornLowSystolic;
  if (passes(ageMonths, SIDE.infantUnderMonths, F.infantUnderMonths.value)) return limits.infantLowSystolic;
  const years = completedYears(ageMonths);
  return passes(years, SIDE.lowChildToYears, F.lowChildToYears.value)
    ? limits.childLowBaseSystolic + F.lowChildPerYear.value * years
    : limits.olderChildLowSystolic;
}
