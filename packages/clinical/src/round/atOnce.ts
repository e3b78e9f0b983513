import type { ActNowRules } from './actNowRules.js';
import { NOTHING_KNOWN } from './knownSigns.js';
import { recheckClass } from './recheckClass.js';
import type { RoundInput } from './roundInput.js';

/**
 * Whether nobody waits, nor rests the arm, after one reading: it is very low, or the person unwell, also on their feet alone.
 * Source: bedside handbook 3.15 (very low or unwell: at once, by hand; common practice).
 */
export function isAtOnceAfter(
  reading: {
    readonly systolic: number | null;
    readonly diastolic: number | null;
    /** Absent or null where nobody asked. */
    readonly isUnwellUpright?: boolean | null;
  },
  {
    facts,
    features,
    unwell,
  }: Pick<RoundInput, 'features' | 'unwell'> & {
    readonly facts: Pick<RoundInput['facts'], 'ageMonths'>;
  },
  rules: ActNowRules,
): boolean {
  const { systolic, diastolic } = reading;
  if (reading.isUnwellUpright === true) return true;
  const known = { ...NOTHING_KNOWN, ageMonths: facts.ageMonths, features, systolic, diastolic };
  return recheckClass(known, { unwell, abnormal: null }, rules) === 'very-low-or-unwell';
}

/** Whether the person is unwell at every reading of the round: an emergency feature, or as they look or feel. */
export function isUnwell({ features, unwell }: Pick<RoundInput, 'features' | 'unwell'>): boolean {
  return unwell === true || (features ?? []).length > 0;
}
