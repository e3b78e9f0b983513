import { passes } from '../contract/threshold.js';
import { type ActNowRules, pregnancyLimits } from './actNowRules.js';
import { ROUND_COMPARISONS as SIDE } from './comparisons.js';
import { ROUND_FIGURES as F } from './figures.js';
import type { KnownSigns } from './knownSigns.js';
import { isSevere } from './severe.js';

/** Whether the limits of the adult score hold. An age that is not known counts as adult. */
export function isScoredAsAdult({ ageMonths }: Pick<KnownSigns, 'ageMonths'>): boolean {
  return ageMonths === null || passes(ageMonths, SIDE.scoreAdultFromMonths, F.scoreAdultFromMonths.value);
}

/** Whether the slow pulse of a child is judged. An age that is not known counts as adult. */
export function isSlowPulseChild({ ageMonths }: Pick<KnownSigns, 'ageMonths'>): boolean {
  return ageMonths !== null && passes(ageMonths, SIDE.childSlowUnderMonths, F.childSlowUnderMonths.value);
}

/** Whether the limits of pressure of a child hold. Centiles of a child say so too where the age does not. */
export function isChild({ ageMonths, p95 }: Pick<KnownSigns, 'ageMonths' | 'p95'>): boolean {
  if (ageMonths === null) return p95 !== null;
  return passes(ageMonths, SIDE.adultFromMonths, F.adultFromMonths.value);
}

/** Whether the limits of pregnancy hold on after a birth. */
export function isSoonAfterBirth({ weeksAfterBirth }: KnownSigns, rules: ActNowRules): boolean {
  return weeksAfterBirth !== null && passes(weeksAfterBirth, SIDE.weeksAfterBirth, rules.weeksAfterBirth);
}

/** Whether a pressure is severe for somebody who is pregnant, or was until some weeks ago. */
export function isSevereForPregnancy(known: KnownSigns, rules: ActNowRules): boolean {
  const isConcerned = known.pregnant === true || isSoonAfterBirth(known, rules);
  return isConcerned && isSevere(known, pregnancyLimits(rules));
}
