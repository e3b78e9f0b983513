import { type CategoryResult, categoryIn, type Measured } from '../category/categoryIn.js';
import { type Bound, band, bound, type CategoryScheme } from '../category/scheme.js';
import { shownPressure } from '../contract/shownPressure.js';
import { passes } from '../contract/threshold.js';
import { CHILD_COMPARISONS as SIDE } from './comparisons.js';
import { CHILD_FIGURES as F } from './figures.js';
import { type Screening, screeningLimits, screeningOf } from './screening.js';
import type { Sex } from './sex.js';

export type ChildCategory = 'normal' | 'elevated' | 'stage-1' | 'stage-2';

/** The limits from 13 years on. Source: bedside handbook 6.2 (found). */
export const AAP_2017: CategoryScheme<'aap-2017', ChildCategory> = {
  id: 'aap-2017',
  source: F.aapStage1Systolic.source,
  status: F.aapStage1Systolic.sure,
  bands: [
    band('normal', 'usual', null, null),
    band('elevated', 'elevated', from('aapElevatedSystolic'), null),
    band('stage-1', 'raised', from('aapStage1Systolic'), from('aapStage1Diastolic')),
    band('stage-2', 'raised', from('aapStage2Systolic'), from('aapStage2Diastolic')),
  ],
};

/** A category with what the screening table says. */
export type ScreenedCategory = CategoryResult<ChildCategory> & { readonly screening: Screening | null };

/** Whether the limits depend on sex, age and height no longer. */
export function isStatic(ageYears: number): boolean {
  return passes(ageYears, SIDE.staticFromYears, F.staticFromYears.value);
}

/**
 * The category of a child by AAP 2017, from 1 year on: from 13 by its static limits; under 13 none, since the tables
 * of centiles are not included, but `screening` by sex and completed years.
 *
 * Source: AAP 2017 (bedside handbook 6.2, 6.3).
 */
export function aap2017(measured: Measured, ageYears: number, sex: Sex | null): ScreenedCategory {
  // From 13 years on the table is the same for both.
  const limits = sex === null && !isStatic(ageYears) ? null : screeningLimits(sex ?? 'f', ageYears);
  const screening = limits === null ? null : screeningOf(measured, limits);
  const placed = categoryIn(AAP_2017, measured);
  if (isStatic(ageYears)) return { ...placed, screening };
  const shown = (component: 'systolic' | 'diastolic') => {
    const mmHg = measured[component];
    const beside = limits === null ? [] : [{ comparison: '>=' as const, limit: limits[component] }];
    return mmHg === null ? null : shownPressure(mmHg, beside);
  };
  return {
    category: null,
    systolicCategory: null,
    diastolicCategory: null,
    isolated: null,
    atLeast: null,
    level: null,
    shown: { systolic: shown('systolic'), diastolic: shown('diastolic') },
    flags: [],
    why: [{ code: 'centiles-not-included', figures: {} }, ...placed.why],
    screening,
  };
}

function from(id: keyof typeof F & keyof typeof SIDE): Bound {
  return bound({ value: F[id].value, sure: F[id].sure }, SIDE[id]);
}
