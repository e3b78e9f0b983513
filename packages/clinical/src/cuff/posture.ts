import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import { CUFF_COMPARISONS as SIDE } from './comparisons.js';
import { holdsOn, type PlaceFacts } from './facts.js';
import type { Posture } from './places.js';
import type { CuffRules } from './rules.js';

export type PostureReasonCode = 'late-pregnancy-not-flat' | 'cannot-stand';

/** The posture to take, and why it is not the one wanted. */
export type PostureChoice = { readonly posture: Posture; readonly why: readonly Flag<PostureReasonCode>[] };

/**
 * The posture in place of the one wanted on a day (`YYYY-MM-DD`, local): late in pregnancy, or in a pregnancy of
 * weeks not known, on the left side and never flat on the back; sitting for whoever cannot stand.
 * Source: from memory (see the figure of the weeks).
 */
export function postureChoice(
  wanted: Posture,
  facts: PlaceFacts,
  day: string,
  rules: CuffRules,
): PostureChoice {
  const holds = (kind: string) => facts.person.some((fact) => fact.kind === kind && holdsOn(fact, day));
  if (wanted === 'stand' && holds('cannot-stand')) {
    return { posture: 'sit', why: [{ code: 'cannot-stand', figures: {} }] };
  }
  const { latePregnancyFromWeeks } = rules;
  const { pregnancyWeeks } = facts;
  const isLate =
    (holds('pregnancy') || pregnancyWeeks !== null) &&
    (pregnancyWeeks === null || passes(pregnancyWeeks, SIDE.latePregnancyFromWeeks, latePregnancyFromWeeks));
  if (wanted !== 'lie' || !isLate) return { posture: wanted, why: [] };
  return {
    posture: 'lie-left',
    why: [{ code: 'late-pregnancy-not-flat', figures: { latePregnancyFromWeeks } }],
  };
}
