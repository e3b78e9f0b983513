import { passes, settled } from '../contract/threshold.js';
import { COUNT_COMPARISONS as SIDE } from './comparisons.js';
import type { Count } from './count.js';
import type { CountRules } from './rules.js';

const MINUTE = 60;

/**
 * Whether a number typed for a count may be the rate a minute: over a window under a minute it would make a rate that is very fast,
 * and as a rate it is neither very slow nor very fast. It is asked about and never changed; the limits are those of an adult.
 *
 * Source: none; that a rate is typed where a count is asked for is common practice, the limits are those of looking at the person first.
 * @example mayBeRate({ of: 'pulse', n: 76, windowSeconds: 15, ... }, rules) // 304 a minute: true
 */
export function mayBeRate({ of, n, windowSeconds }: Count, rules: CountRules): boolean {
  if (windowSeconds >= MINUTE) return false;
  const isPulse = of === 'pulse';
  const slow = isPulse ? rules.verySlowPulsePerMinute : rules.verySlowBreathsPerMinute;
  const fast = isPulse ? rules.veryFastPulsePerMinute : rules.veryFastBreathsPerMinute;
  const slowSide = isPulse ? SIDE.verySlowPulsePerMinute : SIDE.verySlowBreathsPerMinute;
  const fastSide = isPulse ? SIDE.veryFastPulsePerMinute : SIDE.veryFastBreathsPerMinute;
  const isUsual = !passes(n, slowSide, slow) && !passes(n, fastSide, fast);
  return isUsual && passes(settled((MINUTE * n) / windowSeconds), fastSide, fast);
}
