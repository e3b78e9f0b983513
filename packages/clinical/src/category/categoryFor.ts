import { aap2017, isStatic } from '../child/aap2017.js';
import { type ChildResult, childResult } from '../child/childResult.js';
import { CHILD_COMPARISONS } from '../child/comparisons.js';
import { CHILD_FIGURES } from '../child/figures.js';
import type { Sex } from '../child/sex.js';
import { completedYears } from '../child/years.js';
import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import type { Measured } from './categoryIn.js';
import { type Category, categoryOf } from './categoryOf.js';
import { CATEGORY_COMPARISONS as SIDE } from './comparisons.js';
import { CATEGORY_FIGURES as F } from './figures.js';
import { type CategoryRules, NO_SCHEME } from './rules.js';

/** What a category needs of the person whose pressure it is; null is not known. */
export type Categorised = {
  readonly ageMonths: number | null;
  readonly sex: Sex | null;
  readonly heightCm: number | null;
  /** Pregnant now, or in the six weeks after. */
  readonly isPregnant: boolean;
};

export type NoCategoryCode =
  | 'no-scheme'
  | 'age-not-known'
  | 'sex-not-known'
  | 'height-not-known'
  | 'age-outside-scheme';

/** The category of a person by the schemes a place has chosen; null with the reason where there is none. */
export type CategoryFor = {
  readonly result: Category | ChildResult | null;
  readonly why: readonly Flag<NoCategoryCode>[];
};

/**
 * Chooses the scheme for a person and puts the pressure, in mmHg and not rounded, into it: pregnancy first, then by
 * age. Nothing is assumed: without an age there is no category, and a child's needs what its scheme needs.
 *
 * Source: bedside handbook 6, 7.5; docs/conventions.md section 7.
 */
export function categoryFor(measured: Measured, person: Categorised, rules: CategoryRules): CategoryFor {
  const { ageMonths, isPregnant } = person;
  if (isPregnant) {
    if (rules.pregnancyScheme === NO_SCHEME) return none('no-scheme');
    return found(
      categoryOf({ ...measured, guideline: rules.pregnancyScheme, ageYears: null, sex: null, isPregnant }),
    );
  }
  if (ageMonths === null) {
    const isNoneChosen = rules.adultScheme === NO_SCHEME && rules.childScheme === NO_SCHEME;
    return none(isNoneChosen ? 'no-scheme' : 'age-not-known');
  }
  const ageYears = completedYears(ageMonths);
  if (!passes(ageYears, SIDE.adultFromYears, F.adultFromYears.value)) {
    return childFor(measured, { ...person, ageMonths }, rules);
  }
  if (rules.adultScheme === NO_SCHEME) return none('no-scheme');
  return found(categoryOf({ ...measured, guideline: rules.adultScheme, ageYears, sex: null, isPregnant }));
}

function childFor(
  measured: Measured,
  { ageMonths, sex, heightCm }: Categorised & { readonly ageMonths: number },
  { childScheme }: CategoryRules,
): CategoryFor {
  if (childScheme === NO_SCHEME) return none('no-scheme');
  const ageYears = completedYears(ageMonths);
  if (childScheme === 'aap-2017') {
    const { screeningFromYears } = CHILD_FIGURES;
    if (!passes(ageYears, CHILD_COMPARISONS.screeningFromYears, screeningFromYears.value)) {
      return none('age-outside-scheme');
    }
    if (sex === null && !isStatic(ageYears)) return none('sex-not-known');
    return found({ guideline: 'aap-2017', ...aap2017(measured, ageYears, sex) });
  }
  if (!passes(ageMonths, CHILD_COMPARISONS.fourthFromMonths, CHILD_FIGURES.fourthFromMonths.value)) {
    return none('age-outside-scheme');
  }
  const missing: NoCategoryCode[] = [];
  if (sex === null) missing.push('sex-not-known');
  if (heightCm === null) missing.push('height-not-known');
  if (sex === null || heightCm === null) return none(...missing);
  return found(childResult({ ...measured, sex, ageMonths, heightCm }));
}

function found(result: Category | ChildResult): CategoryFor {
  return { result, why: [] };
}

function none(...codes: NoCategoryCode[]): CategoryFor {
  return { result: null, why: codes.map((code) => ({ code, figures: {} })) };
}
