import type { MeasuredBy } from '../circumstances/circumstances.js';
import { exp } from '../exact/exponential.js';
import { SLOW_FIGURES as F } from './figures.js';

const LN2_PER_SECOND = Math.LN2 / (60 * F.sittingHalfMinutes.value);
const FIRST_PER_SECOND = 1 / (60 * F.firstMinutes.value);
const RISE = 60 * F.coatRiseMinutes.value;
const HOLD = 60 * F.coatHoldMinutes.value;
const FALL = 60 * F.coatFallMinutes.value;

/** What is left of the excess of sitting down after so many seconds of sitting: 1 at 0, half at 5.8 minutes. */
export function sittingLeft(seconds: number): number {
  return seconds <= 0 ? 1 : exp(-LN2_PER_SECOND * seconds);
}

/** Course of the effect of the first inflation so many seconds after it began: 0 before, whole for the first reading. */
export function firstReadingCourse(seconds: number): number {
  if (seconds < 0) return 0;
  return seconds <= F.firstHoldSeconds.value ? 1 : firstReadingLeft(seconds - F.firstHoldSeconds.value);
}

/** What is left of that effect so many seconds after the first reading. */
export function firstReadingLeft(seconds: number): number {
  return exp(-FIRST_PER_SECOND * seconds);
}

/** Course of the effect of the person who measures, so many seconds after their coming in: 0, up to 1, and away. */
export function whiteCoatCourse(seconds: number): number {
  if (seconds <= 0) return 0;
  if (seconds < RISE) return (seconds / RISE) * exp(1 - seconds / RISE);
  return seconds <= HOLD ? 1 : exp((HOLD - seconds) / FALL);
}

/** How much of the full effect a kind of observer has. */
export function whiteCoatShare(by: MeasuredBy): number {
  if (by === 'doctor') return 1;
  return by === 'nurse' ? F.coatNurseShare.value : 0;
}
