import type { Outcome } from './outcome.js';
import { outcomeOf } from './outcome.js';
import type { PlanProtocol } from './planProtocol.js';
import { subjectOf } from './population.js';

/** What is summed of one number of one protocol: powers of the error, and how often it was within 5, 10 and 15. */
const OF_SIDE = ['error', 'square', 'cube', 'fourth', 'within5', 'within10', 'within15'] as const;
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

type Sums<Key extends string> = Record<Key, number>;
export type SideSums = Sums<(typeof OF_SIDE)[number]>;
export type ProtocolSums = Sums<(typeof OF_PROTOCOL)[number]> & { systolic: SideSums; diastolic: SideSums };
export type PairSums = Sums<(typeof OF_PAIR)[number]>;
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
  for (let index = piece * PIECE; index < to; index++) {
    const subject = subjectOf(plan.seed, index);
    const first = outcomeOf(subject, plan.protocol);
    addOutcome(sums.first, first);
    if (plan.against === null || sums.second === null || sums.pair === null) continue;
    const second = outcomeOf(subject, plan.against);
    addOutcome(sums.second, second);
    addPair(sums.pair, first, second);
  }
  return sums;
}

export function newSums(isPaired: boolean): PlanSums {
  return {
    first: newProtocolSums(),
    second: isPaired ? newProtocolSums() : null,
    pair: isPaired ? zeros(OF_PAIR) : null,
  };
}

/** Adds the sums of a piece to those of the pieces before it. */
export function addSums(into: PlanSums, more: PlanSums): void {
  addProtocol(into.first, more.first);
  if (into.second !== null && more.second !== null) addProtocol(into.second, more.second);
  if (into.pair !== null && more.pair !== null) addAll(OF_PAIR, into.pair, more.pair);
}

function zeros<Key extends string>(keys: readonly Key[]): Sums<Key> {
  return Object.fromEntries(keys.map((key) => [key, 0])) as Sums<Key>;
}

function newProtocolSums(): ProtocolSums {
  return { ...zeros(OF_PROTOCOL), systolic: zeros(OF_SIDE), diastolic: zeros(OF_SIDE) };
}

function addAll<Key extends string>(keys: readonly Key[], into: Sums<Key>, more: Sums<Key>): void {
  for (const key of keys) into[key] += more[key];
}

function addProtocol(into: ProtocolSums, more: ProtocolSums): void {
  addAll(OF_PROTOCOL, into, more);
  addAll(OF_SIDE, into.systolic, more.systolic);
  addAll(OF_SIDE, into.diastolic, more.diastolic);
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
