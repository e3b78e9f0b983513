import { isChild } from '../category/isChild.js';
import type { Sureness } from '../contract/figure.js';
import { passes } from '../contract/threshold.js';
import { OUT_OF_OFFICE_COMPARISONS as SIDE } from './comparisons.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';

/** A mean that a guideline aims at under treatment: both numbers under these, mmHg, at these ages (completed years; null for no end). */
export type TreatmentTarget = {
  readonly fromYears: number | null;
  /** The first age that it is no longer for. */
  readonly untilYears: number | null;
  readonly comparison: '<';
  readonly systolic: number;
  readonly diastolic: number;
  readonly source: string;
  readonly sure: Sureness;
};

/** The targets of a rule set for whom it is, and whether a mean meets its target; null for `isMet` where that is not to be said. */
export type TargetBeside = {
  /** The guideline that has them. */
  readonly guideline: 'nice-ng136';
  /** One where the age is known, else every one. */
  readonly targets: readonly TreatmentTarget[];
  readonly isMet: boolean | null;
};

type For = {
  readonly ageYears: number | null;
  readonly isPregnant: boolean;
  /** Whether the person takes medicine for the pressure; null is not known. */
  readonly isTreated: boolean | null;
  /** Whether the rule set calls the mean enough to judge. */
  readonly isValid: boolean;
};

type Pair = { readonly systolic: number | null; readonly diastolic: number | null };

/**
 * What the guideline of a rule set aims at under treatment, for a mean at home or by day; null where it names none, and of
 * children and pregnancy. It judges no illness: of who takes nothing, or nobody knows whether, it is not said to be met.
 *
 * Source: out-of-office handbook 8.1 (NICE, from memory).
 */
export function targetBeside(
  rules: string | null,
  mean: Pair,
  { ageYears, isPregnant, isTreated, isValid }: For,
): TargetBeside | null {
  if (rules !== 'nice-ng136' || isChild(ageYears) || isPregnant) return null;
  const targets = NICE_TARGETS.filter(
    ({ fromYears, untilYears }) =>
      ageYears === null ||
      ((fromYears === null || ageYears >= fromYears) && (untilYears === null || ageYears < untilYears)),
  );
  const [only] = targets;
  const isAsked = isTreated === true && isValid && targets.length === 1;
  return { guideline: rules, targets, isMet: isAsked && only !== undefined ? meets(mean, only) : null };
}

/** Both numbers under the target; null where one is not known. */
function meets({ systolic, diastolic }: Pair, target: TreatmentTarget): boolean | null {
  if (systolic === null || diastolic === null) return null;
  return (
    passes(systolic, target.comparison, target.systolic) &&
    passes(diastolic, target.comparison, target.diastolic)
  );
}

const older = F.niceOlderFromYears.value;

const NICE_TARGETS: readonly TreatmentTarget[] = [
  {
    fromYears: null,
    untilYears: older,
    comparison: SIDE.niceTargetSystolic,
    systolic: F.niceTargetSystolic.value,
    diastolic: F.niceTargetDiastolic.value,
    source: F.niceTargetSystolic.source,
    sure: F.niceTargetSystolic.sure,
  },
  {
    fromYears: older,
    untilYears: null,
    comparison: SIDE.niceOlderTargetSystolic,
    systolic: F.niceOlderTargetSystolic.value,
    diastolic: F.niceOlderTargetDiastolic.value,
    source: F.niceOlderTargetSystolic.source,
    sure: F.niceOlderTargetSystolic.sure,
  },
];
