import { passes } from '../contract/threshold.js';
import { DEFLATION_COMPARISONS as SIDE } from './comparisons.js';
import type { DeflationRules } from './rules.js';

/**
 * Whether the cuff is let down by the beat and not by the second: always, never, or at a slow or irregular pulse, as the
 * protocol says. A pulse that is not known is not slow. Source: bedside handbook 3.6.
 */
export function isLetDownPerBeat(
  pulsePerMinute: number | null,
  isIrregular: boolean,
  { perBeatWhen, slowPulsePerMinute }: Pick<DeflationRules, 'perBeatWhen' | 'slowPulsePerMinute'>,
): boolean {
  if (perBeatWhen !== 'slow-or-irregular') return perBeatWhen === 'always';
  const isSlow =
    pulsePerMinute !== null && passes(pulsePerMinute, SIDE.slowPulsePerMinute, slowPulsePerMinute);
  return isSlow || isIrregular;
}
