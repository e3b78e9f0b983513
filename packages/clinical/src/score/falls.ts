import { roundTo } from '../contract/rounding.js';
import { isPast } from './bands.js';
import type { ScoreLimit } from './comparisons.js';
import { SCORE_FIGURES as F } from './figures.js';
import type { StandingReading, StandingTest } from './standing.js';

/**
 * What changed from rest to one reading on the feet. A fall is rest minus standing, a rise standing minus rest; mmHg
 * and per minute. `isFall` is null where no number says so and one is missing. `isDelayed`: after 3 minutes.
 */
export type Fall = {
  readonly minutes: number;
  readonly systolicFall: number | null;
  readonly diastolicFall: number | null;
  readonly pulseRise: number | null;
  readonly isSystolicFall: boolean | null;
  readonly isDiastolicFall: boolean | null;
  readonly isFall: boolean | null;
  readonly isDelayed: boolean;
};

type Limits = { readonly systolic: ScoreLimit; readonly diastolic: ScoreLimit };

/** The limits of a test: from sitting its own; from lying, a higher one where the pressure is known to be high then. */
export function limitsOf({ from, supineHypertension }: StandingTest): Limits {
  if (from === 'sitting') return { systolic: 'sittingSystolicFall', diastolic: 'sittingDiastolicFall' };
  const systolic = supineHypertension === true ? 'standingHypertensiveFall' : 'standingSystolicFall';
  return { systolic, diastolic: 'standingDiastolicFall' };
}

/** The fall of each reading, in order of time. Source: bedside handbook 3.14. */
export function fallsOf(test: StandingTest): Fall[] {
  const limits = limitsOf(test);
  return test.readings.map((reading) => fallOf(test, reading, limits));
}

function fallOf({ baseline }: StandingTest, reading: StandingReading, limits: Limits): Fall {
  const systolicFall = difference(baseline.systolic, reading.systolic);
  const diastolicFall = difference(baseline.diastolic, reading.diastolic);
  const isSystolicFall = systolicFall === null ? null : isPast(systolicFall, limits.systolic);
  const isDiastolicFall = diastolicFall === null ? null : isPast(diastolicFall, limits.diastolic);
  return {
    minutes: reading.minutes,
    systolicFall,
    diastolicFall,
    pulseRise: difference(reading.pulse, baseline.pulse),
    isSystolicFall,
    isDiastolicFall,
    isFall: either(isSystolicFall, isDiastolicFall),
    isDelayed: !isPast(wholeMinutes(reading.minutes), 'standingWithinMinutes'),
  };
}

/** "About" so many minutes: to the whole one, half up, since a reading takes half a minute itself. */
export function wholeMinutes(minutes: number): number {
  return roundTo(minutes, 0);
}

export function isAtThird({ minutes }: { readonly minutes: number }): boolean {
  return wholeMinutes(minutes) === F.standingWithinMinutes.value;
}

export function isAtFirst({ minutes }: { readonly minutes: number }): boolean {
  return wholeMinutes(minutes) <= F.standingFirstMinutes.value;
}

function difference(from: number | null, minus: number | null): number | null {
  return from === null || minus === null ? null : from - minus;
}

function either(a: boolean | null, b: boolean | null): boolean | null {
  if (a === true || b === true) return true;
  return a === null || b === null ? null : false;
}
