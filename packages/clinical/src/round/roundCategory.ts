import type {
  CategoryFlagCode,
  CategoryReasonCode,
  CategoryResult,
  Measured,
} from '../category/categoryIn.js';
import { categoryOf, type GuidelineId } from '../category/categoryOf.js';
import { type CategoryRules, NO_SCHEME } from '../category/rules.js';
import { type ChildFlagCode, childResult, FOURTH_REPORT_ID } from '../child/childResult.js';
import type { Screening } from '../child/screening.js';
import { completedYears } from '../child/years.js';
import type { Flag } from '../contract/flag.js';
import { isOfTables, knownChild } from './childLimits.js';
import type { RoundInput } from './roundInput.js';
import { isChild } from './whoseLimits.js';

export type RoundCategoryReasonCode =
  | CategoryReasonCode
  | 'child-sex-missing'
  | 'child-height-missing'
  | 'child-height-impossible'
  | 'under-age-of-scheme';

/** The category of one pressure, with the scheme that gave it; centiles only of a child by the Fourth Report. */
export type PlacedPressure = Omit<CategoryResult, 'flags' | 'why'> & {
  readonly guideline: GuidelineId | typeof FOURTH_REPORT_ID;
  readonly screening: Screening | null;
  readonly centiles: { readonly systolic: number | null; readonly diastolic: number | null } | null;
  readonly flags: readonly Flag<CategoryFlagCode | ChildFlagCode>[];
  readonly why: readonly Flag<RoundCategoryReasonCode>[];
};

const NOT_PLACED = {
  category: null,
  systolicCategory: null,
  diastolicCategory: null,
  isolated: null,
  atLeast: null,
  level: null,
  shown: { systolic: null, diastolic: null },
  screening: null,
  centiles: null,
  flags: [],
} as const;

/**
 * Puts a pressure of a round in the scheme of the place for this person: pregnant or up to the weeks after a birth
 * that count as pregnancy, child, or adult. Null where the place has no scheme for them.
 *
 * Errors: none. A child without sex or height is not classified, and `why` names each that is missing (handbook 7.5).
 * Source: bedside handbook 6.1 to 6.4; docs/conventions.md section 7.
 */
export function roundCategory(
  measured: Measured,
  input: Pick<RoundInput, 'heightCm' | 'facts'>,
  isPregnancy: boolean,
  rules: CategoryRules,
): PlacedPressure | null {
  const { ageMonths, sex } = input.facts;
  if (isPregnancy) {
    if (rules.pregnancyScheme === NO_SCHEME) return null;
    return { ...categoryOf({ ...measured, ...ADULT, guideline: 'pregnancy' }), centiles: null };
  }
  if (ageMonths !== null && isChild({ ageMonths, p95: null })) {
    if (rules.childScheme === NO_SCHEME) return null;
    if (rules.childScheme === FOURTH_REPORT_ID) return byFourthReport(measured, input);
    const ageYears = completedYears(ageMonths);
    const guideline = 'aap-2017' as const;
    if (ageYears < 1)
      return { guideline, ...NOT_PLACED, why: [{ code: 'under-age-of-scheme', figures: {} }] };
    const placed = categoryOf({ ...measured, ...ADULT, guideline, ageYears, sex });
    const why = sex === null && placed.screening === null && placed.category === null ? [SEX_MISSING] : [];
    return { ...placed, why: [...placed.why, ...why], centiles: null };
  }
  if (rules.adultScheme === NO_SCHEME) return null;
  const ageYears = ageMonths === null ? null : completedYears(ageMonths);
  return { ...categoryOf({ ...measured, ...ADULT, guideline: rules.adultScheme, ageYears }), centiles: null };
}

const SEX_MISSING = { code: 'child-sex-missing', figures: {} } as const;

/** What keeps a child from the tables of the Fourth Report: each that is missing, then its age, then its height. */
function notKnown({
  heightCm,
  facts,
}: Pick<RoundInput, 'heightCm' | 'facts'>): readonly Flag<RoundCategoryReasonCode>[] {
  const height = heightCm ?? facts.heightCm;
  const missing: Flag<RoundCategoryReasonCode>[] = [];
  if (facts.sex === null) missing.push(SEX_MISSING);
  if (height === null) missing.push({ code: 'child-height-missing', figures: {} });
  if (!isOfTables(facts.ageMonths)) return [{ code: 'under-age-of-scheme', figures: {} }];
  if (missing.length > 0 || height === null) return missing;
  return [{ code: 'child-height-impossible', figures: { heightCm: height } }];
}

const ADULT = { ageYears: null, sex: null, isPregnant: false } as const;

function byFourthReport(measured: Measured, input: Pick<RoundInput, 'heightCm' | 'facts'>): PlacedPressure {
  const child = knownChild(input);
  if (child === null) {
    return { guideline: FOURTH_REPORT_ID, ...NOT_PLACED, why: notKnown(input) };
  }
  const {
    systolic,
    diastolic,
    heightZ: _z,
    limits: _limits,
    lowSystolicMmHg: _low,
    ...placed
  } = childResult({
    ...child,
    ...measured,
  });
  return {
    ...placed,
    screening: null,
    centiles: { systolic: systolic?.centile ?? null, diastolic: diastolic?.centile ?? null },
  };
}
