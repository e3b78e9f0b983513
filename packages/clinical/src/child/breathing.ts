import type { Figure, Sureness } from '../contract/figure.js';
import { passes } from '../contract/threshold.js';
import { CHILD_COMPARISONS as SIDE } from './comparisons.js';
import { CHILD_FIGURES as F } from './figures.js';

/** From this rate on breathing is fast for the age, a minute, with where that comes from. */
export type FastLimit = { readonly limitPerMinute: number; readonly source: string; readonly sure: Sureness };

/**
 * The limit of fast breathing of a child with cough or difficult breathing; null from 60 months on, where the scheme
 * has none. A rate at the limit is fast.
 *
 * Source: WHO, Integrated Management of Childhood Illness (bedside handbook 2.4).
 */
export function fastBreathingLimit(ageMonths: number): FastLimit | null {
  if (passes(ageMonths, SIDE.fastYoungestUnderMonths, F.fastYoungestUnderMonths.value))
    return asLimit(F.fastUnder2MonthsPerMinute);
  if (passes(ageMonths, SIDE.fastInfantUnderMonths, F.fastInfantUnderMonths.value))
    return asLimit(F.fastUnder12MonthsPerMinute);
  if (passes(ageMonths, SIDE.fastChildUnderMonths, F.fastChildUnderMonths.value))
    return asLimit(F.fastUnder60MonthsPerMinute);
  return null;
}

/** Whether a child breathes fast for its age; null where the scheme has no limit. */
export function isFastBreathing(perMinute: number, ageMonths: number): boolean | null {
  const limit = fastBreathingLimit(ageMonths);
  return limit === null ? null : passes(perMinute, SIDE.fastUnder2MonthsPerMinute, limit.limitPerMinute);
}

/**
 * The rate that 95 of 100 children of that age do not reach, a minute; null over 36 months.
 *
 * Source: Rusconi 1994 (bedside handbook 2.4): log10(rate) = a + b months + c months^2.
 */
export function breaths95thCentile(ageMonths: number, state: 'awake' | 'asleep'): number | null {
  if (!passes(ageMonths, SIDE.rusconiToMonths, F.rusconiToMonths.value)) return null;
  const [constant, linear, square] =
    state === 'awake'
      ? [F.rusconiAwakeConstant, F.rusconiAwakeLinear, F.rusconiAwakeSquare]
      : [F.rusconiAsleepConstant, F.rusconiAsleepLinear, F.rusconiAsleepSquare];
  return Math.exp(Math.LN10 * (constant.value + linear.value * ageMonths + square.value * ageMonths ** 2));
}

function asLimit({ value, source, sure }: Figure): FastLimit {
  return { limitPerMinute: value, source, sure };
}
