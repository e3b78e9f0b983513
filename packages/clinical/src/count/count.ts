export type CountOf = 'pulse' | 'breaths';

/** How the clock was started: on a felt beat (or a breath's start), or at any moment. */
export type CountClock = 'beat' | 'any';

/** What the first beat was called. */
export type CountFirst = 0 | 1;

/**
 * So many beats or breaths in so many seconds, as counted. Only `parseCount` makes one from outside.
 * What was counted is never corrected; how it was counted decides the range in which the rate lies.
 */
export type Count = {
  readonly of: CountOf;
  readonly n: number;
  readonly windowSeconds: number;
  readonly clock: CountClock;
  readonly first: CountFirst;
};

/** The version of the rules of this folder, as kept beside each value they make. */
export const COUNT_RULE = 'count-1';
