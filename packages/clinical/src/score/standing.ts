import type { Flag } from '../contract/flag.js';

/** A pressure with its pulse; null is not known. mmHg and per minute; `diastolic` is that which averages use. */
export type StandingNumbers = {
  readonly systolic: number | null;
  readonly diastolic: number | null;
  readonly pulse: number | null;
};

/** A reading on the feet, so many minutes after standing up; 0 is at once. `symptoms` null is not asked. */
export type StandingReading = StandingNumbers & {
  readonly minutes: number;
  readonly symptoms: boolean | null;
};

/**
 * A standing test: the numbers at rest, lying or sitting, and the readings on the feet in order of time. Null of
 * what else is known is "not known". Only `parseStandingTest` makes one from outside.
 */
export type StandingTest = {
  readonly from: 'lying' | 'sitting';
  readonly baseline: StandingNumbers;
  readonly readings: readonly StandingReading[];
  readonly age: number | null;
  /** Whether the person's pressure is known to be high when lying. */
  readonly supineHypertension: boolean | null;
  readonly sinusRhythm: boolean | null;
  readonly pacemaker: boolean | null;
  /** A drug that slows the heart. */
  readonly rateSlowingDrug: boolean | null;
};

export type StandingFlagCode =
  | 'fall-on-standing'
  | 'fall-delayed'
  | 'fall-recovered'
  | 'standing-systolic-low'
  | 'symptoms-on-standing'
  | 'heart-rate-ratio-low'
  | 'rise-without-fall'
  | 'hypertensive-fall-limit'
  | 'initial-fall-not-seen'
  | 'first-minute-not-measured';

export type StandingReasonCode =
  | 'third-minute-not-measured'
  | 'fall-not-comparable'
  | 'no-systolic-fall'
  | 'ratio-needs-lying'
  | 'no-pulse-with-fall'
  | 'rhythm-not-known'
  | 'rhythm-not-sinus'
  | 'has-pacemaker'
  | 'takes-rate-slowing-drug';

export type StandingFlag = Flag<StandingFlagCode>;
