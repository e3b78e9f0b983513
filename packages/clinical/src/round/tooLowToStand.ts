import { lowUprightLimit } from '../score/lowUpright.js';
import type { ActNowRules } from './actNowRules.js';
import { NOTHING_KNOWN } from './knownSigns.js';
import { isVeryLow } from './recheckClass.js';

/**
 * The figures of a systolic with which nobody is stood up or left on their feet; null where it is not so low. Low is what is under
 * the limit of the standing test, then with that limit in mmHg, and whatever raises the alert of a low pressure by the limits
 * in force, also where the place switched the alert off: then without one, as the alert says it.
 *
 * @param ageMonths completed months, which a child's limits go by; null is taken for an adult
 * Source: bedside handbook 3.14 (a systolic falling below 90), 3.17 (a systolic of 90 or under; a child's limit). That what is
 * very low lays down too: common practice, no source.
 */
export function tooLowToStand(
  systolic: number,
  ageMonths: number | null,
  rules: ActNowRules,
): Readonly<Record<string, number>> | null {
  const limitMmHg = lowUprightLimit(systolic, ageMonths);
  if (limitMmHg !== null) return { systolic, limitMmHg };
  return isVeryLow({ ...NOTHING_KNOWN, systolic, ageMonths }, rules) ? { systolic } : null;
}
