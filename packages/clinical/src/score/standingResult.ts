import { monthsOf } from '../child/years.js';
import type { Flag } from '../contract/flag.js';
import { type Fall, fallsOf, isAtFirst, isAtThird, limitsOf } from './falls.js';
import { SCORE_FIGURES as F } from './figures.js';
import { type HeartRateRatio, heartRateRatio } from './heartRateRatio.js';
import { lowUprightLimit } from './lowUpright.js';
import { riseWithoutFall } from './riseWithoutFall.js';
import type { StandingFlag, StandingReading, StandingReasonCode, StandingTest } from './standing.js';

/** What a standing test is missing. */
export type StandingMissing = 'standing1' | 'standing3' | 'systolic' | 'diastolic' | 'pulse';

/**
 * What a standing test shows. `positive`: a fall to the limits within about 3 minutes; it is false only where a whole
 * reading at 3 minutes says so, else null. `delayed`: no such fall, but one after 3 minutes; null if nothing was
 * measured then. `riseToReport`: the pulse rose to its limit without a fall. Words of a chart, no diagnosis.
 */
export type StandingResult = {
  readonly positive: boolean | null;
  readonly bySystolic: boolean | null;
  readonly byDiastolic: boolean | null;
  readonly delayed: boolean | null;
  readonly limits: { readonly systolicFall: number; readonly diastolicFall: number };
  readonly falls: readonly Fall[];
  readonly heartRateRatio: number | null;
  readonly heartRatePattern: HeartRateRatio['heartRatePattern'];
  /** The greatest within 10 minutes, per minute. */
  readonly pulseRise: number | null;
  readonly riseToReport: boolean | null;
  readonly missing: readonly StandingMissing[];
  readonly flags: readonly StandingFlag[];
  readonly why: readonly Flag<StandingReasonCode>[];
};

/**
 * The standing (orthostatic) test.
 *
 * Units: mmHg, per minute, minutes on the feet. Errors: none; a {@link StandingTest} has been parsed.
 * Limits: 20 / 10 mmHg from lying (30 where the pressure is known to be high when lying), 15 / 7 from sitting.
 * A fall in the first seconds cannot be seen with a cuff. A systolic on the feet is low under the limit of the person's age.
 * Source: bedside handbook 3.14, 3.17.
 *
 * @param ageMonths completed months that a child's low limit goes by; null takes an adult's
 * @example standingResult(test) // lying 148/84, pulse 68; at 3 min 112/70, pulse 76: positive, ratio 0.22
 */
export function standingResult(
  test: StandingTest,
  ageMonths: number | null = test.age === null ? null : monthsOf(test.age),
): StandingResult {
  const falls = fallsOf(test);
  const within = falls.filter(({ isDelayed }) => !isDelayed);
  const positive = isPositive(within);
  const limits = limitsOf(test);
  const delayed = delayedOf(falls, positive);
  const ratio = heartRateRatio(test, falls);
  const rise = riseWithoutFall(test, falls, positive === true || delayed === true);
  return {
    positive,
    bySystolic: anyOf(within, 'isSystolicFall'),
    byDiastolic: anyOf(within, 'isDiastolicFall'),
    delayed,
    limits: { systolicFall: F[limits.systolic].value, diastolicFall: F[limits.diastolic].value },
    falls,
    heartRateRatio: ratio.heartRateRatio,
    heartRatePattern: ratio.heartRatePattern,
    pulseRise: rise.pulseRise,
    riseToReport: rise.riseToReport,
    missing: missingOf(test),
    flags: [...fallFlags(test, falls, positive, delayed, ageMonths), ...ratioFlags(ratio), ...rise.flags, ...doubts(test, positive)], // biome-ignore format: in the order told
    why: [...reasons(within, positive), ...ratio.why],
  };
}

/** True by any fall within 3 minutes; false only by a whole reading at 3 minutes with no doubt before it. */
function isPositive(within: readonly Fall[]): boolean | null {
  if (within.some(({ isFall }) => isFall === true)) return true;
  const isMeasured = within.some((fall) => isAtThird(fall)) && within.every(({ isFall }) => isFall === false);
  return isMeasured ? false : null;
}

function delayedOf(falls: readonly Fall[], positive: boolean | null): boolean | null {
  const later = falls.filter(({ isDelayed }) => isDelayed);
  if (positive === true) return false;
  if (later.some(({ isFall }) => isFall === true)) return true;
  return later.length > 0 && later.every(({ isFall }) => isFall === false) ? false : null;
}

function anyOf(falls: readonly Fall[], key: 'isSystolicFall' | 'isDiastolicFall'): boolean | null {
  if (falls.some((fall) => fall[key] === true)) return true;
  return falls.length > 0 && falls.every((fall) => fall[key] === false) ? false : null;
}

function missingOf({ baseline, readings }: StandingTest): StandingMissing[] {
  const missing: StandingMissing[] = [];
  if (!readings.some(isAtFirst)) missing.push('standing1');
  if (!readings.some(isAtThird)) missing.push('standing3');
  for (const key of ['systolic', 'diastolic', 'pulse'] as const) {
    if ([baseline, ...readings].some((numbers) => numbers[key] === null)) missing.push(key);
  }
  return missing;
}

function reasons(within: readonly Fall[], positive: boolean | null): Flag<StandingReasonCode>[] {
  if (positive !== null) return [];
  const code = within.some(isAtThird) ? 'fall-not-comparable' : 'third-minute-not-measured';
  return [{ code, figures: { minutes: F.standingWithinMinutes.value } }];
}

function fallFlags(
  test: StandingTest,
  falls: readonly Fall[],
  positive: boolean | null,
  delayed: boolean | null,
  ageMonths: number | null,
): StandingFlag[] {
  const flags: StandingFlag[] = [];
  const first = falls.find(({ isFall, isDelayed }) => isFall === true && isDelayed === (positive !== true));
  if (first !== undefined) {
    flags.push({ code: delayed === true ? 'fall-delayed' : 'fall-on-standing', figures: figuresOf(first) });
  }
  const last = falls.findLast(({ isDelayed }) => !isDelayed);
  if (positive === true && last?.isFall === false) {
    flags.push({ code: 'fall-recovered', figures: { minutes: last.minutes } });
  }
  const lowest = lowestOf(test.readings);
  const limitMmHg = lowest === null ? null : lowUprightLimit(lowest.systolic, ageMonths);
  if (lowest !== null && limitMmHg !== null)
    flags.push({ code: 'standing-systolic-low', figures: { ...lowest, limitMmHg } });
  const unwell = test.readings.find(({ symptoms }) => symptoms === true);
  if (unwell !== undefined)
    flags.push({ code: 'symptoms-on-standing', figures: { minutes: unwell.minutes } });
  return flags;
}

/** The lowest systolic on the feet, and when. */
function lowestOf(readings: readonly StandingReading[]): { systolic: number; minutes: number } | null {
  let lowest: { systolic: number; minutes: number } | null = null;
  for (const { systolic, minutes } of readings) {
    if (systolic !== null && (lowest === null || systolic < lowest.systolic)) lowest = { systolic, minutes };
  }
  return lowest;
}

/** The numbers of a fall that are known. */
function figuresOf({ minutes, systolicFall, diastolicFall }: Fall): Record<string, number> {
  return {
    minutes,
    ...(systolicFall === null ? {} : { systolicFall }),
    ...(diastolicFall === null ? {} : { diastolicFall }),
  };
}

function ratioFlags({ heartRateRatio: ratio, heartRatePattern }: HeartRateRatio): StandingFlag[] {
  if (ratio === null || heartRatePattern !== 'neurogenic') return [];
  return [{ code: 'heart-rate-ratio-low', figures: { ratio, limit: F.heartRateRatio.value } }];
}

/** What the test could not see. */
function doubts(test: StandingTest, positive: boolean | null): StandingFlag[] {
  const flags: StandingFlag[] = [];
  if (test.from === 'lying' && test.supineHypertension === true) {
    flags.push({ code: 'hypertensive-fall-limit', figures: { limitMmHg: F.standingHypertensiveFall.value } });
  }
  if (positive === true) return flags;
  if (!test.readings.some(isAtFirst)) {
    flags.push({
      code: 'first-minute-not-measured',
      figures: { minutes: F.standingFirstMinutes.value },
    });
  }
  return [...flags, { code: 'initial-fall-not-seen', figures: {} }];
}
