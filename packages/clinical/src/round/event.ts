import type { CountOf } from '../count/count.js';
import type { Preparation } from './preparation.js';
import type { ReadingPlace, RoundReading } from './roundReading.js';
import type { NotDoneReason, RoundSign } from './step.js';

/** A rate of a round; `perMinute` is null for what was broken off or too short to give one. */
export type RoundRate = {
  readonly id: string;
  readonly of: CountOf;
  readonly perMinute: number | null;
  readonly isFeltIrregular: boolean | null;
  /** The window that the count's own rules ask for next; null for none. */
  readonly nextWindowSeconds: number | null;
};

/** One of the signs that are neither rate nor pressure. */
export type RoundMeasure = {
  readonly id: string;
  readonly of: Exclude<RoundSign, CountOf | 'pressure'>;
};

/** A value of a round. Ids tell values apart; they are never read as times. */
export type RoundValue = RoundRate | RoundMeasure | (RoundReading & { readonly of: 'pressure' });

/** The pressure at which the pulse was lost, felt before the sounds are listened for. mmHg. */
export type Estimate = ReadingPlace & {
  readonly lostMmHg: number;
  readonly atSeconds: number | null;
};

/** What somebody wants of one round: a sign, the other arm, or the pressure lying and then standing. */
export type Wanted = RoundSign | 'other-arm' | 'lying-and-standing';

/** What can happen in a round. Any of them may come at any time, in any order. */
export type RoundEvent =
  /** The person was made ready; what was not as it should be, none for "all was". */
  | { readonly what: 'prepared'; readonly exceptions: readonly Preparation[] }
  /** The cuff is on. */
  | { readonly what: 'placed'; readonly place: ReadingPlace }
  | { readonly what: 'estimated'; readonly estimate: Estimate }
  | { readonly what: 'taken'; readonly value: RoundValue }
  /** More is wanted of this round than the protocol asks for. */
  | { readonly what: 'wanted'; readonly wanted: Wanted }
  /** A slip undone before signing. */
  | { readonly what: 'taken-out'; readonly id: string }
  | { readonly what: 'not-done'; readonly sign: RoundSign; readonly reason: NotDoneReason }
  | { readonly what: 'after-all'; readonly sign: RoundSign }
  /** The person wants no more of it: every sign without a value is declined. */
  | { readonly what: 'declined' }
  | { readonly what: 'reviewed' };
