import {
  COUNT_GROUPS,
  COUNTED,
  type CountErrors,
  type CountGroup,
  countableOf,
  countErrorsOf,
} from './counts.js';
import type { Outcome } from './outcome.js';
import { outcomeOf } from './outcome.js';
import type { PlanProtocol } from './planProtocol.js';
import { subjectOf } from './population.js';

/** What is summed of one number of one protocol: powers of the error, and how often it was within 5, 10 and 15. */
const OF_SIDE = ['error', 'square', 'cube', 'fourth', 'within5', 'within10', 'within15'] as const;
/** The same of a count, within 2 and 4 a minute. */
const OF_COUNT = ['people', 'error', 'square', 'cube', 'fourth', 'within2', 'within4'] as const;
const OF_PROTOCOL = ['people', 'without', 'up', 'down', 'minutes', 'minutesSquare', 'readings'] as const;
/** Of the first beside the second in one person: difference of errors and of their sizes, wrong categories of one alone. */
const OF_PAIR = [
  'people',
  'systolic',
  'systolicSquare',
  'systolicSize',
  'systolicSizeSquare',
  'diastolic',
  'diastolicSquare',
  'diastolicSize',
  'diastolicSizeSquare',
  'onlyFirst',
  'onlySecond',
  'minutes',
  'minutesSquare',
] as const;

/** Of the counts of both in one person. */
const OF_COUNT_PAIR = ['people', 'error', 'square', 'size', 'sizeSquare'] as const;

type Sums<Key extends string> = Record<Key, number>;
export type SideSums = Sums<(typeof OF_SIDE)[number]>;
export type CountSums = Sums<(typeof OF_COUNT)[number]>;
export type CountsSums = Record<(typeof COUNTED)[number], Record<CountGroup, CountSums>>;
export type ProtocolSums = Sums<(typeof OF_PROTOCOL)[number]> & {
  systolic: SideSums;
  diastolic: SideSums;
  counts: CountsSums;
};
export type CountPairSums = Sums<(typeof OF_COUNT_PAIR)[number]>;
export type PairSums = Sums<(typeof OF_PAIR)[number]> & {
  counts: Record<(typeof COUNTED)[number], CountPairSums>;
};
/** All that a result is made of; sums of other people can be added. */
export type PlanSums = { first: ProtocolSums; second: ProtocolSums | null; pair: PairSums | null };

/** What is to be tried, on whom: people by index from 0, of a seed. */
export type Plan = {
  readonly protocol: PlanProtocol;
  readonly against: PlanProtocol | null;
  readonly people: number;
  readonly seed: number;
};

/** People are summed in pieces of so many, and the pieces in their order: the same whoever sums which piece. */
export const PIECE = 500;

export function piecesOf({ people }: Plan): number {
  return Math.ceil(people / PIECE);
}

/** The sums of one piece of the people, from 0. */
export function pieceOf(plan: Plan, piece: number): PlanSums {
  const sums = newSums(plan.against !== null);
  const to = Math.min(plan.people, (piece + 1) * PIECE);
  const tried = plan.against === null ? [plan.protocol] : [plan.protocol, plan.against];
  for (let index = piece * PIECE; index < to; index++) {
    const subject = subjectOf(plan.seed, index);
    const countable = countableOf(subject, tried);
    const first = outcomeOf(subject, plan.protocol);
    addOutcome(sums.first, first);
    const firstCounts = countErrorsOf(subject, countable, plan.protocol);
    addCounts(sums.first.counts, firstCounts);
    if (plan.against === null || sums.second === null || sums.pair === null) continue;
    const second = outcomeOf(subject, plan.against);
    addOutcome(sums.second, second);
    addPair(sums.pair, first, second);
    const secondCounts = countErrorsOf(subject, countable, plan.against);
    addCounts(sums.second.counts, secondCounts);
    addCountPair(sums.pair, firstCounts, secondCounts);
  }
  return sums;
}

export function newSums(isPaired: boolean): PlanSums {
  return {
    first: newProtocolSums(),
    second: isPaired ? newProtocolSums() : null,
    pair: isPaired ? { ...zeros(OF_PAIR), counts: ofCounted(() => zeros(OF_COUNT_PAIR)) } : null,
  };
}

/** Adds the sums of a piece to those of the pieces before it. */
export function addSums(into: PlanSums, more: PlanSums): void {
  addProtocol(into.first, more.first);
  if (into.second !== null && more.second !== null) addProtocol(into.second, more.second);
  if (into.pair === null || more.pair === null) return;
  addAll(OF_PAIR, into.pair, more.pair);
  for (const of of COUNTED) addAll(OF_COUNT_PAIR, into.pair.counts[of], more.pair.counts[of]);
}

function ofCounted<One>(make: () => One): Record<(typeof COUNTED)[number], One> {
  return { pulse: make(), breaths: make() };
}

function ofGroups(): Record<CountGroup, CountSums> {
  return { regular: zeros(OF_COUNT), slow: zeros(OF_COUNT), irregular: zeros(OF_COUNT) };
}

/** The sums of all kinds of people together. */
export function allGroups(groups: Readonly<Record<CountGroup, CountSums>>): CountSums {
  const all = zeros(OF_COUNT);
  for (const group of COUNT_GROUPS) addAll(OF_COUNT, all, groups[group]);
  return all;
}

function zeros<Key extends string>(keys: readonly Key[]): Sums<Key> {
  return Object.fromEntries(keys.map((key) => [key, 0])) as Sums<Key>;
}

function newProtocolSums(): ProtocolSums {
  return {
    ...zeros(OF_PROTOCOL),
    systolic: zeros(OF_SIDE),
    diastolic: zeros(OF_SIDE),
    counts: ofCounted(ofGroups),
  };
}

function addAll<Key extends string>(keys: readonly Key[], into: Sums<Key>, more: Sums<Key>): void {
  for (const key of keys) into[key] += more[key];
}

function addProtocol(into: ProtocolSums, more: ProtocolSums): void {
  addAll(OF_PROTOCOL, into, more);
  addAll(OF_SIDE, into.systolic, more.systolic);
  addAll(OF_SIDE, into.diastolic, more.diastolic);
  for (const of of COUNTED)
    for (const group of COUNT_GROUPS) addAll(OF_COUNT, into.counts[of][group], more.counts[of][group]);
}

function addCounts(sums: CountsSums, errors: CountErrors): void {
  for (const of of COUNTED) {
    const made = errors[of];
    if (made === null) continue;
    const { error } = made;
    const into = sums[of][made.group];
    into.people += 1;
    into.error += error;
    into.square += error ** 2;
    into.cube += error ** 3;
    into.fourth += error ** 4;
    if (Math.abs(error) <= 2) into.within2 += 1;
    if (Math.abs(error) <= 4) into.within4 += 1;
  }
}

function addCountPair({ counts }: PairSums, first: CountErrors, second: CountErrors): void {
  for (const of of COUNTED) {
    const [one, other] = [first[of], second[of]];
    if (one === null || other === null) continue;
    const apart = one.error - other.error;
    const size = Math.abs(one.error) - Math.abs(other.error);
    const into = counts[of];
    into.people += 1;
    into.error += apart;
    into.square += apart ** 2;
    into.size += size;
    into.sizeSquare += size ** 2;
  }
}

function addOutcome(sums: ProtocolSums, { error, shift, minutes, readings }: Outcome): void {
  sums.minutes += minutes;
  sums.minutesSquare += minutes ** 2;
  sums.readings += readings;
  if (error === null) {
    sums.without += 1;
    return;
  }
  sums.people += 1;
  if (shift > 0) sums.up += 1;
  if (shift < 0) sums.down += 1;
  addError(sums.systolic, error.systolic);
  addError(sums.diastolic, error.diastolic);
}

function addError(sums: SideSums, error: number): void {
  const size = Math.abs(error);
  sums.error += error;
  sums.square += error ** 2;
  sums.cube += error ** 3;
  sums.fourth += error ** 4;
  if (size <= 5) sums.within5 += 1;
  if (size <= 10) sums.within10 += 1;
  if (size <= 15) sums.within15 += 1;
}

function addPair(sums: PairSums, first: Outcome, second: Outcome): void {
  if (first.error === null || second.error === null) return;
  sums.people += 1;
  for (const side of ['systolic', 'diastolic'] as const) {
    const apart = first.error[side] - second.error[side];
    const size = Math.abs(first.error[side]) - Math.abs(second.error[side]);
    sums[side] += apart;
    sums[`${side}Square`] += apart ** 2;
    sums[`${side}Size`] += size;
    sums[`${side}SizeSquare`] += size ** 2;
  }
  if (first.shift !== 0 && second.shift === 0) sums.onlyFirst += 1;
  if (first.shift === 0 && second.shift !== 0) sums.onlySecond += 1;
  sums.minutes += first.minutes - second.minutes;
  sums.minutesSquare += (first.minutes - second.minutes) ** 2;
}
