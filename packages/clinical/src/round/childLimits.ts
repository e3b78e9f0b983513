import { isStatic } from '../child/aap2017.js';
import { CHILD_COMPARISONS as SIDE } from '../child/comparisons.js';
import { CHILD_FIGURES as F } from '../child/figures.js';
import { type Centiles, centilesOf } from '../child/fourthReport.js';
import { heightZ, isHeightPossible } from '../child/heightZ.js';
import { SEXES } from '../child/sex.js';
import { completedYears } from '../child/years.js';
import { passes } from '../contract/threshold.js';
import type { ReadingsCircumstances } from './furtherReading.js';
import type { RoundInput } from './roundInput.js';
import { isChild } from './whoseLimits.js';

/** The limits of a child's pressure at its age, sex and height, mmHg. */
export type LimitsOfChild = { readonly systolic: Centiles; readonly diastolic: Centiles };

/** A child of whom sex, age and height are known, in the range of the tables. */
export type KnownChild = { readonly sex: 'f' | 'm'; readonly ageMonths: number; readonly heightCm: number };

/** The child as the tables need it; null without sex, age or a height that can be, or outside their ages. */
export function knownChild({ heightCm, facts }: Pick<RoundInput, 'heightCm' | 'facts'>): KnownChild | null {
  const { sex, ageMonths } = facts;
  const height = heightCm ?? facts.heightCm;
  if (sex === null || ageMonths === null || height === null) return null;
  const isKnown = isOfTables(ageMonths) && isHeightPossible(sex, ageMonths, height);
  return isKnown ? { sex, ageMonths, heightCm: height } : null;
}

/** Whether the tables of the Fourth Report have that age. */
export function isOfTables(ageMonths: number | null): boolean {
  return (
    ageMonths !== null &&
    passes(ageMonths, SIDE.fourthFromMonths, F.fourthFromMonths.value) &&
    passes(ageMonths, SIDE.fourthUnderMonths, F.fourthUnderMonths.value)
  );
}

/** The centiles of the Fourth Report for a known child. Source: bedside handbook 6.4. */
export function limitsOfChild({ sex, ageMonths, heightCm }: KnownChild): LimitsOfChild {
  const grown = { sex, ageMonths, heightZ: heightZ(sex, ageMonths, heightCm) };
  return { systolic: centilesOf(grown, 'systolic'), diastolic: centilesOf(grown, 'diastolic') };
}

/**
 * From where a first reading of a child is raised, mmHg: its 90th centiles, and from 13 years to under 18 the limits
 * that need no height. Null where neither is known, and for an adult. Source: AAP 2017 (bedside handbook 3.10, 6.2).
 */
export function raisedFromOf(
  { ageMonths }: Pick<RoundInput['facts'], 'ageMonths'>,
  limits: LimitsOfChild | null,
): ReadingsCircumstances['raisedFrom'] {
  if (ageMonths !== null && isChild({ ageMonths, p95: null }) && isStatic(completedYears(ageMonths))) {
    return { systolic: F.aapElevatedSystolic.value, diastolic: F.aapStage1Diastolic.value };
  }
  return limits === null ? null : { systolic: limits.systolic.p90, diastolic: limits.diastolic.p90 };
}

/** The pressure, mmHg, from which a child is looked at for a crisis. */
export type ChildP95 = { readonly systolic: number; readonly diastolic: number };

/**
 * The 95th centiles that alerts of a child go by. Where its height (or sex) is not known they are those of a short
 * child, the lower of both sexes, from 1 year on: a fact that nobody found never hides a crisis, and an alert may come
 * a little early. Null under 1 year, from 18 on, and where the age is not known.
 *
 * Source: bedside handbook 6.4; the short child is our decision, as the screening of AAP 2017 does (6.3).
 */
export function p95ToActBy(facts: RoundInput['facts'], limits: LimitsOfChild | null): ChildP95 | null {
  if (limits !== null) return { systolic: limits.systolic.p95, diastolic: limits.diastolic.p95 };
  const { ageMonths, sex } = facts;
  if (ageMonths === null) return null;
  const isInRange =
    passes(ageMonths, SIDE.regressionFromMonths, F.regressionFromMonths.value) &&
    passes(ageMonths, SIDE.fourthUnderMonths, F.fourthUnderMonths.value);
  if (!isInRange) return null;
  const short = SEXES.filter((one) => sex === null || one === sex).map((one) => ({
    sex: one,
    ageMonths,
    heightZ: F.shortHeightZ.value,
  }));
  return {
    systolic: Math.min(...short.map((child) => centilesOf(child, 'systolic').p95)),
    diastolic: Math.min(...short.map((child) => centilesOf(child, 'diastolic').p95)),
  };
}
