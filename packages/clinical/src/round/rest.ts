import { passes, settled } from '../contract/threshold.js';
import { ROUND_COMPARISONS as SIDE } from './comparisons.js';
import { PREPARATION, type Preparation } from './preparation.js';

/** Why nobody waited until the rest before a pressure was whole. Source: decision of this project. */
export const REST_SKIPPED_REASONS = ['urgent', 'already-rested', 'declined', 'no-time', 'other'] as const;
export type RestSkippedReason = (typeof REST_SKIPPED_REASONS)[number];

/** How long a person sat quietly before the pressure, in seconds of one clock, and why it was not longer. */
export type Rest = {
  readonly seconds: number;
  /** What the place asks for. */
  readonly neededSeconds: number;
  readonly skipped: { readonly reason: RestSkippedReason; readonly text: string | null } | null;
};

/** Whether a rest is as long as the place asks for. Source: bedside handbook 3.1. */
export function isRestWhole({ seconds, neededSeconds }: Pick<Rest, 'seconds' | 'neededSeconds'>): boolean {
  return passes(settled(seconds), SIDE.restSeconds, neededSeconds);
}

/**
 * What was not as it should be, held against the clock: a whole rest is no exception, and one that was not waited for is,
 * unless the person had rested before. Not looked at (null) stays so.
 */
export function exceptionsWithRest(
  exceptions: readonly Preparation[] | null,
  rest: Rest | null,
): readonly Preparation[] | null {
  if (exceptions === null || rest === null) return exceptions;
  const isRested = isRestWhole(rest) || rest.skipped?.reason === 'already-rested';
  return PREPARATION.filter((one) => (one === 'rested' ? !isRested : exceptions.includes(one)));
}

/**
 * Whether it is known if the person rested: a rest ran on the clock, somebody said that they had rested before or did not wait, or
 * that they had not rested is among the exceptions. That all else was looked at says nothing of it. Where nobody looked at anything
 * that is said instead.
 *
 * Source: none; that a rest which nobody began or answered for is not known, and not whole, is our decision.
 */
export function isRestKnown(exceptions: readonly Preparation[] | null, rest: Rest | null): boolean {
  return rest !== null || exceptions === null || exceptions.includes('rested');
}
