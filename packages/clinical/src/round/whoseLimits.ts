import { CATEGORY_FIGURES } from '../category/figures.js';
import { CHILD_FIGURES } from '../child/figures.js';
import { completedYears } from '../child/years.js';
import { passes } from '../contract/threshold.js';
import { COUNT_COMPARISONS } from '../count/comparisons.js';
import { COUNT_FIGURES } from '../count/figures.js';
import { ACT_NOW_LIMITS as LIMITS } from './actNowLimits.js';
import { type ActNowRules, pregnancyLimits } from './actNowRules.js';
import { ROUND_COMPARISONS as SIDE } from './comparisons.js';
import { ROUND_FIGURES as F } from './figures.js';
import type { KnownSigns } from './knownSigns.js';
import type { RoundFacts } from './roundFacts.js';
import { isPressureSevere } from './severe.js';

/** Whether the limits of the adult score hold. An age that is not known counts as adult. */
export function isScoredAsAdult({ ageMonths }: Pick<KnownSigns, 'ageMonths'>): boolean {
  const fromMonths = COUNT_FIGURES.adultFromMonths.value;
  return ageMonths === null || passes(ageMonths, COUNT_COMPARISONS.adultFromMonths, fromMonths);
}

/**
 * Whether the slow pulse of a child is judged: up to 13 years, the age at which a child is measured by the limits of
 * adults (no source names one for this). An age that is not known counts as adult.
 */
export function isSlowPulseChild({ ageMonths }: Pick<KnownSigns, 'ageMonths'>): boolean {
  const underYears = CHILD_FIGURES.staticFromYears.value;
  return ageMonths !== null && passes(completedYears(ageMonths), SIDE.childSlowUnderYears, underYears);
}

/** Whether the limits of pressure of a child hold. Centiles of a child say so too where the age does not. */
export function isChild({ ageMonths, p95 }: Pick<KnownSigns, 'ageMonths' | 'p95'>): boolean {
  if (ageMonths === null) return p95 !== null;
  return passes(completedYears(ageMonths), SIDE.childUnderYears, CATEGORY_FIGURES.adultFromYears.value);
}

/** Whether the limits of pregnancy hold on after a birth. */
export function isSoonAfterBirth(
  { weeksAfterBirth }: Pick<KnownSigns, 'weeksAfterBirth'>,
  rules: ActNowRules,
): boolean {
  return (
    weeksAfterBirth !== null &&
    passes(weeksAfterBirth, LIMITS.weeksAfterBirth.comparison, rules.weeksAfterBirth)
  );
}

/** Whether a pressure is severe for somebody who is pregnant, or was until some weeks ago. */
export function isSevereForPregnancy(known: KnownSigns, rules: ActNowRules): boolean {
  const isConcerned = known.pregnant === true || isSoonAfterBirth(known, rules);
  return isConcerned && isPressureSevere(known, pregnancyLimits(rules));
}

/** Whether a severe pressure asks for pregnancy: not of whom the tables of men are used, nor far outside its ages. */
export function mayBePregnant({ sex, ageMonths }: Pick<RoundFacts, 'sex' | 'ageMonths'>): boolean {
  if (sex === 'm') return false;
  if (ageMonths === null) return true;
  return (
    passes(ageMonths, SIDE.pregnancyAskFromMonths, F.pregnancyAskFromMonths.value) &&
    passes(ageMonths, SIDE.pregnancyAskUnderMonths, F.pregnancyAskUnderMonths.value)
  );
}
