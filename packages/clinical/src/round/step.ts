/** The signs that a round can hold, in the order in which a round takes them. */
export const ROUND_SIGNS = [
  'pulse',
  'breaths',
  'pressure',
  'temperature',
  'oxygen-saturation',
  'pain',
  'consciousness',
  'weight',
  'height',
] as const;
export type RoundSign = (typeof ROUND_SIGNS)[number];

/**
 * The steps of a round. `repeat`, `other-arm`, `lying` and `standing` are readings of the pressure after the first
 * one; the rest have the name of their sign, or of what prepares for it.
 */
export const ROUND_STEPS = [
  'prepare',
  'pulse',
  'breaths',
  'cuff',
  'palpate',
  'listen',
  'repeat',
  'other-arm',
  'lying',
  'standing',
  'temperature',
  'oxygen-saturation',
  'pain',
  'consciousness',
  'weight',
  'height',
  'review',
] as const;
export type RoundStep = (typeof ROUND_STEPS)[number];

/** Why a sign was not done. Source: bedside handbook 7.1 (common practice, no source). A blank is not allowed. */
export const NOT_DONE_REASONS = [
  'declined',
  'away',
  'asleep',
  'arm-barred',
  'no-equipment',
  'not-possible',
  'other',
] as const;
export type NotDoneReason = (typeof NOT_DONE_REASONS)[number];
