import { ACT_NOW_CONDITIONS } from './actNowConditions.js';
import type { ActNowRules } from './actNowRules.js';
import { severeLimits } from './actNowRules.js';
import type { KnownSigns } from './knownSigns.js';
import type { RecheckClass } from './recheckAfter.js';
import { isPressureSevere } from './severe.js';
import { isSevereForPregnancy } from './whoseLimits.js';

/** What only the observer, or the category, can say. Null is not known. */
export type RecheckCircumstances = {
  /** The person looks or feels unwell. */
  readonly unwell: boolean | null;
  /** The pressure is unexpectedly high or low: for this person, or by its category. */
  readonly abnormal: boolean | null;
};

const VERY_LOW = ACT_NOW_CONDITIONS.filter(
  ({ id }) => id === 'very-low-pressure' || id === 'child-hypotension',
);
const CHILD_CRISIS = ACT_NOW_CONDITIONS.filter(({ id }) => id === 'child-crisis');

/**
 * The class whose repeats are due, the most urgent that applies; null when none does. A limit holds whether or not
 * its alert was switched off. Source: bedside handbook 3.15 and 3.16.
 */
export function recheckClass(
  known: KnownSigns,
  { unwell, abnormal }: RecheckCircumstances,
  rules: ActNowRules,
): RecheckClass | null {
  const isCrisis = CHILD_CRISIS.some((condition) => condition.holds(known, rules) !== null);
  if (
    unwell === true ||
    known.isUnwellUpright === true ||
    (known.features ?? []).length > 0 ||
    isVeryLow(known, rules)
  )
    return 'very-low-or-unwell';
  if (isSevereForPregnancy(known, rules)) return 'severe-in-pregnancy';
  if (isPressureSevere(known, severeLimits(rules)) || isCrisis) return 'severe';
  return abnormal === true ? 'abnormal' : null;
}

/** Whether the pressure is very low by the limits in force, whether or not its alert was switched off. */
export function isVeryLow(known: KnownSigns, rules: ActNowRules): boolean {
  return VERY_LOW.some((condition) => condition.holds(known, rules) !== null);
}
