import { CHILD_COMPARISONS } from '../child/comparisons.js';
import { CHILD_FIGURES } from '../child/figures.js';
import { SEXES } from '../child/sex.js';
import { type FieldReader, type NumberFault, readFields } from '../contract/fields.js';
import { inOrder } from '../contract/inOrder.js';
import { isBlank } from '../contract/numberText.js';
import { type Parsed, refusal } from '../contract/refusal.js';
import { passes } from '../contract/threshold.js';
import { optionalNumber } from '../deflation/readPressure.js';
import type { CategoryQuestion, GuidelineId } from './categoryOf.js';
import { CATEGORY_COMPARISONS as SIDE } from './comparisons.js';
import { CATEGORY_FIGURES as F } from './figures.js';
import { readMeasured } from './readMeasured.js';
import { ADULT_SCHEME_IDS, PREGNANCY_SCHEME_IDS } from './schemes.js';

const FIELDS = ['systolic', 'diastolic', 'guideline', 'ageYears', 'sex', 'isPregnant'] as const;

/** Every guideline that can be asked, in the order of the handbook. */
export const GUIDELINE_IDS: readonly GuidelineId[] = [
  ...ADULT_SCHEME_IDS,
  ...PREGNANCY_SCHEME_IDS,
  'aap-2017',
];

/**
 * Reads what is asked: `{ systolic, diastolic, guideline, ageYears, sex, isPregnant }`. One of the two pressures may
 * be absent. In pregnancy no other guideline need be named. AAP 2017 needs the age, and under 13 the sex.
 *
 * Errors, all together: `missing`, `not-a-number`, `not-whole`, `out-of-range` (an adult scheme under 18 years, AAP
 * 2017 outside 1 to 17), `unknown-id`, `not-below-systolic`, `unknown-field`.
 */
export function parseCategoryQuestion(input: unknown): Parsed<CategoryQuestion> {
  const reader = readFields(input, FIELDS);
  const measured = readMeasured(reader);
  const isPregnant = reader.raw('isPregnant') === true;
  const guideline = reader.choice('guideline', GUIDELINE_IDS, isPregnant ? 'pregnancy' : null);
  const isChild = guideline === 'aap-2017' && !isPregnant;
  const ageYears = readAge(reader, guideline, isPregnant);
  const sex = isBlank(reader.raw('sex')) ? null : reader.choice('sex', SEXES, null);
  const needsSex = isChild && ageYears !== null && ageYears < CHILD_FIGURES.staticFromYears.value;
  if (needsSex && isBlank(reader.raw('sex'))) {
    reader.refusals.push(refusal('/sex', 'missing', 'one-of', null, { choices: SEXES }));
  }
  if (reader.refusals.length > 0 || guideline === null) {
    return { ok: false, refusals: inOrder(reader.refusals, FIELDS) };
  }
  return { ok: true, value: { ...measured, guideline, ageYears, sex, isPregnant } };
}

function readAge(reader: FieldReader, guideline: GuidelineId | null, isPregnant: boolean): number | null {
  if (isPregnant || guideline === 'pregnancy' || guideline === null) {
    return optionalNumber(reader, 'ageYears', ageFault);
  }
  if (guideline === 'aap-2017')
    return reader.number('ageYears', (years) => ageFault(years) ?? childFault(years));
  return optionalNumber(reader, 'ageYears', (years) => ageFault(years) ?? adultFault(years));
}

function ageFault(years: number): NumberFault | null {
  const maximum = F.oldestYears.value;
  if (years < 0 || years > maximum) {
    return { code: 'out-of-range', expected: 'within-limits', figures: { minimum: 0, maximum } };
  }
  return Number.isInteger(years) ? null : { code: 'not-whole', expected: 'a-whole-number', figures: {} };
}

function adultFault(years: number): NumberFault | null {
  const adultFromYears = F.adultFromYears.value;
  if (passes(years, SIDE.adultFromYears, adultFromYears)) return null;
  return { code: 'out-of-range', expected: 'adult-years', figures: { adultFromYears } };
}

function childFault(years: number): NumberFault | null {
  const fromYears = CHILD_FIGURES.screeningFromYears.value;
  const adultFromYears = F.adultFromYears.value;
  const isOld = passes(years, SIDE.adultFromYears, adultFromYears);
  if (passes(years, CHILD_COMPARISONS.screeningFromYears, fromYears) && !isOld) return null;
  return { code: 'out-of-range', expected: 'child-years', figures: { fromYears, adultFromYears } };
}
