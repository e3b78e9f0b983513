import { type UsualKnown, usualOf } from './usualOf.js';

/** What a chance rests on besides the readings: nothing, the age and sex, or those and office visits. */
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

/** The mean of so many visits to the office, mmHg. */
export type VisitsMean = {
  readonly systolic: number;
  readonly diastolic: number;
  readonly visits: number;
};

/** The chances over each threshold with what office visits came to as well. */
export function chancesWithVisits(
  thresholds: readonly ChanceOver['threshold'][],
  known: UsualKnown,
  office: VisitsMean,
): ChanceOver[] {
  const together = withOfficeVisits(known, office);
  return thresholds.map((one) => chanceOf(one, together, 'office'));
}

/**
 * The same with a mean of the office, which is as sure as its visits are many; on the scale of home, by an offset that is said.
 * Source: out-of-office handbook 17.4.
 */
export function withOfficeVisits(known: UsualKnown, { systolic, diastolic, visits }: VisitsMean): UsualKnown {
  return {
    ...known,
    office: { systolic: { mean: systolic, visits }, diastolic: { mean: diastolic, visits } },
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
