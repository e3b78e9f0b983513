import type { Flag } from '../contract/flag.js';
import { passes, settled } from '../contract/threshold.js';
import type { Circumstances } from './circumstances.js';
import type { CountFlagCode } from './codes.js';
import { COUNT_COMPARISONS as SIDE } from './comparisons.js';
import type { Count } from './count.js';
import type { CountRules } from './rules.js';

/**
 * An adult rate at which one looks at the person before anything else. Nothing counted at all has its own reason
 * (`none-counted`). The limits are for adults: with an age that says a child nothing is flagged, with an unknown age they
 * hold. A place may switch them off. They are limits of single signs, no score and no category.
 */
export function farOutFlags(
  count: Count,
  { ageMonths }: Circumstances,
  rules: CountRules,
): Flag<CountFlagCode>[] {
  const isChild = ageMonths !== null && !passes(ageMonths, SIDE.adultFromMonths, rules.adultFromMonths);
  if (!rules.lookFirstWhenFarOut || isChild || count.n === 0) return [];
  const perMinute = settled((60 * count.n) / count.windowSeconds);
  const isPulse = count.of === 'pulse';
  const slow = isPulse ? rules.verySlowPulsePerMinute : rules.verySlowBreathsPerMinute;
  const fast = isPulse ? rules.veryFastPulsePerMinute : rules.veryFastBreathsPerMinute;
  const slowSide = isPulse ? SIDE.verySlowPulsePerMinute : SIDE.verySlowBreathsPerMinute;
  const fastSide = isPulse ? SIDE.veryFastPulsePerMinute : SIDE.veryFastBreathsPerMinute;
  if (passes(perMinute, slowSide, slow))
    return [{ code: 'very-slow', figures: { perMinute, limitPerMinute: slow } }];
  if (passes(perMinute, fastSide, fast))
    return [{ code: 'very-fast', figures: { perMinute, limitPerMinute: fast } }];
  return [];
}
