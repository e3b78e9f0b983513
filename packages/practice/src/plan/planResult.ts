import { COUNT_GROUPS, type CountGroup } from './counts.js';
import {
  allGroups,
  type CountPairSums,
  type CountSums,
  type PairSums,
  type PlanSums,
  type ProtocolSums,
  type SideSums,
} from './sums.js';

/** How far averages lie from the usual level, mmHg; shares 0 to 1. Null: nobody had a number. */
export type SideResult = {
  readonly bias: number | null;
  readonly sd: number | null;
  readonly within5: number | null;
  readonly within10: number | null;
  readonly within15: number | null;
};

/** How far counts lie from the true rate, per minute; shares 0 to 1. Null: nobody, or for an SD one alone. */
type CountNumbers = {
  readonly bias: number | null;
  readonly sd: number | null;
  readonly within2: number | null;
  readonly within4: number | null;
};
export type CountResultOf = CountNumbers & { readonly people: number; readonly standardErrors: CountNumbers };
/** Counts of all who are counted (one in four of the people), and of those whose pulse or breathing is regular, slow or irregular. */
export type CountsResult = CountResultOf & Readonly<Record<CountGroup, CountResultOf>>;

/** What a protocol gets wrong. `standardErrors` are Monte Carlo errors: of the study, not of the protocol. */
export type ProtocolResult = {
  readonly people: number;
  /** Share of the people for whom the protocol gave no number. */
  readonly without: number;
  readonly systolic: SideResult;
  readonly diastolic: SideResult;
  /** Share whose category is higher (lower) than that of the usual level. */
  readonly misclassified: { readonly up: number | null; readonly down: number | null };
  /** Of the clinician, a person; and readings. */
  readonly minutes: number;
  readonly readings: number;
  /** `breaths` is null where the protocol counts none. */
  readonly counts: { readonly pulse: CountsResult; readonly breaths: CountsResult | null };
  readonly standardErrors: {
    readonly systolic: SideResult;
    readonly diastolic: SideResult;
    readonly misclassified: { readonly up: number | null; readonly down: number | null };
    readonly minutes: number;
  };
};

/** A mean difference with its Monte Carlo error. */
export type Apart = { readonly mean: number; readonly standardError: number };

/** The first protocol beside the second on the same people: first minus second. */
export type PairResult = {
  readonly people: number;
  readonly systolic: { readonly bias: Apart; readonly size: Apart };
  readonly diastolic: { readonly bias: Apart; readonly size: Apart };
  /** Share whom only the first (only the second) put in a wrong category, and the difference. */
  readonly misclassified: { readonly onlyFirst: number; readonly onlySecond: number; readonly apart: Apart };
  readonly minutes: Apart;
  /** Per minute: counts, and sizes of their errors. Null where not both count them. */
  readonly counts: { readonly pulse: CountPair | null; readonly breaths: CountPair | null };
};
export type CountPair = { readonly bias: Apart; readonly size: Apart };

export type PlanResult = {
  readonly protocol: ProtocolResult;
  readonly against: ProtocolResult | null;
  readonly paired: PairResult | null;
};

/** What sums come to. */
export function planResult({ first, second, pair }: PlanSums): PlanResult {
  return {
    protocol: protocolResult(first),
    against: second === null ? null : protocolResult(second),
    paired: pair === null || pair.people === 0 ? null : pairResult(pair),
  };
}

function protocolResult(sums: ProtocolSums): ProtocolResult {
  const n = sums.people;
  const all = n + sums.without;
  const share = (count: number) => (n === 0 ? null : count / n);
  return {
    people: all,
    without: sums.without / all,
    systolic: sideResult(sums.systolic, n),
    diastolic: sideResult(sums.diastolic, n),
    misclassified: { up: share(sums.up), down: share(sums.down) },
    minutes: sums.minutes / all,
    readings: sums.readings / all,
    counts: {
      pulse: countsResult(sums.counts.pulse),
      breaths: allGroups(sums.counts.breaths).people === 0 ? null : countsResult(sums.counts.breaths),
    },
    standardErrors: {
      systolic: sideErrors(sums.systolic, n),
      diastolic: sideErrors(sums.diastolic, n),
      misclassified: { up: shareError(sums.up, n), down: shareError(sums.down, n) },
      minutes: errorOfMean(sums.minutes, sums.minutesSquare, all),
    },
  };
}

function countsResult(groups: Readonly<Record<CountGroup, CountSums>>): CountsResult {
  const [regular, slow, irregular] = COUNT_GROUPS.map((group) => countResultOf(groups[group])) as [
    CountResultOf,
    CountResultOf,
    CountResultOf,
  ];
  return { ...countResultOf(allGroups(groups)), regular, slow, irregular };
}

function countResultOf(sums: CountSums): CountResultOf {
  const { people: n, error, square, within2, within4 } = sums;
  const share = (count: number) => (n === 0 ? null : count / n);
  return {
    people: n,
    bias: share(error),
    sd: n < 2 ? null : Math.sqrt(varianceOf(error, square, n)),
    within2: share(within2),
    within4: share(within4),
    standardErrors: {
      bias: n < 2 ? null : errorOfMean(error, square, n),
      sd: n < 2 ? null : errorOfSd(sums, n),
      within2: shareError(within2, n),
      within4: shareError(within4, n),
    },
  };
}

function sideResult(sums: SideSums, n: number): SideResult {
  if (n === 0) return NOTHING;
  return {
    bias: sums.error / n,
    sd: n < 2 ? null : Math.sqrt(varianceOf(sums.error, sums.square, n)),
    within5: sums.within5 / n,
    within10: sums.within10 / n,
    within15: sums.within15 / n,
  };
}

const NOTHING: SideResult = { bias: null, sd: null, within5: null, within10: null, within15: null };

function sideErrors(sums: SideSums, n: number): SideResult {
  if (n < 2) return NOTHING;
  return {
    bias: errorOfMean(sums.error, sums.square, n),
    sd: errorOfSd(sums, n),
    within5: shareError(sums.within5, n),
    within10: shareError(sums.within10, n),
    within15: shareError(sums.within15, n),
  };
}

function varianceOf(sum: number, square: number, n: number): number {
  return Math.max(0, (square - sum ** 2 / n) / (n - 1));
}

function errorOfMean(sum: number, square: number, n: number): number {
  return n < 2 ? 0 : Math.sqrt(varianceOf(sum, square, n) / n);
}

type Powers = Pick<SideSums, 'error' | 'square' | 'cube' | 'fourth'>;

/** Large-sample error of an SD, by the fourth moment: errors are not normal where a gap is missed (from memory). */
function errorOfSd({ error, square, cube, fourth }: Powers, n: number): number {
  const mean = error / n;
  const second = square / n - mean ** 2;
  if (second <= 0) return 0;
  const fourthCentral = fourth / n - (4 * mean * cube) / n + (6 * mean ** 2 * square) / n - 3 * mean ** 4;
  return Math.sqrt(Math.max(0, fourthCentral - second ** 2) / (4 * n * second));
}

function shareError(count: number, n: number): number | null {
  if (n === 0) return null;
  // None of n, or all of them, is no proof that it never happens: as if two more had, and two more had not (Agresti and
  // Coull 1998, from memory).
  const share = count === 0 || count === n ? (count + 2) / (n + 4) : count / n;
  return Math.sqrt((share * (1 - share)) / n);
}

function pairResult(sums: PairSums): PairResult {
  const n = sums.people;
  const apart = (sum: number, square: number): Apart => ({
    mean: sum / n,
    standardError: errorOfMean(sum, square, n),
  });
  const difference = sums.onlyFirst - sums.onlySecond;
  return {
    people: n,
    systolic: {
      bias: apart(sums.systolic, sums.systolicSquare),
      size: apart(sums.systolicSize, sums.systolicSizeSquare),
    },
    diastolic: {
      bias: apart(sums.diastolic, sums.diastolicSquare),
      size: apart(sums.diastolicSize, sums.diastolicSizeSquare),
    },
    misclassified: {
      onlyFirst: sums.onlyFirst / n,
      onlySecond: sums.onlySecond / n,
      apart: apart(difference, sums.onlyFirst + sums.onlySecond),
    },
    minutes: apart(sums.minutes, sums.minutesSquare),
    counts: { pulse: countPair(sums.counts.pulse), breaths: countPair(sums.counts.breaths) },
  };
}

function countPair({ people, error, square, size, sizeSquare }: CountPairSums): CountPair | null {
  if (people === 0) return null;
  const apart = (sum: number, of: number): Apart => ({
    mean: sum / people,
    standardError: errorOfMean(sum, of, people),
  });
  return { bias: apart(error, square), size: apart(size, sizeSquare) };
}
