import { type UsualKnown, usualOf } from './usualOf.js';

/** What a chance rests on besides the readings: nothing, the age and sex, or those and one office visit. */
export type ChancePrior = 'flat' | 'age-sex' | 'office';

/** How probable it is that the usual pressure is at or over a threshold (mmHg); 0 to 1, null where not known. */
export type ChanceOver = {
  readonly threshold: { readonly systolic: number; readonly diastolic: number };
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly prior: ChancePrior;
};

/** The chances over each threshold from the readings alone, then with an age and sex where that is known of them. */
export function chancesOver(thresholds: readonly ChanceOver['threshold'][], known: UsualKnown): ChanceOver[] {
  const flat = { ...known, ageYears: null, sex: null };
  const hasPrior = thresholds.some((one) => usualOf('systolic', known, one.systolic)?.prior != null);
  return [
    ...thresholds.map((one) => chanceOf(one, flat, 'flat')),
    ...(hasPrior ? thresholds.map((one) => chanceOf(one, known, 'age-sex')) : []),
  ];
}

/** The chances over each threshold with what an office visit came to as well (mmHg). */
export function chancesWithVisit(
  thresholds: readonly ChanceOver['threshold'][],
  known: UsualKnown,
  visit: ChanceOver['threshold'],
): ChanceOver[] {
  const together = withOfficeVisit(known, visit);
  return thresholds.map((one) => chanceOf(one, together, 'office'));
}

/** The same with a mean of the office, as one visit; on the scale of home, by an offset that is said. */
export function withOfficeVisit(
  known: UsualKnown,
  { systolic, diastolic }: ChanceOver['threshold'],
): UsualKnown {
  return {
    ...known,
    office: { systolic: { mean: systolic, visits: 1 }, diastolic: { mean: diastolic, visits: 1 } },
  };
}

function chanceOf(threshold: ChanceOver['threshold'], from: UsualKnown, prior: ChancePrior): ChanceOver {
  return {
    threshold,
    systolic: usualOf('systolic', from, threshold.systolic)?.probability ?? null,
    diastolic: usualOf('diastolic', from, threshold.diastolic)?.probability ?? null,
    prior,
  };
}
