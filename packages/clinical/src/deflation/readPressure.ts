import type { FieldReader, NumberFault } from '../contract/fields.js';
import { isBlank } from '../contract/numberText.js';
import { passes } from '../contract/threshold.js';
import { DEFLATION_COMPARISONS as SIDE } from './comparisons.js';
import { DEFLATION_FIGURES as F } from './figures.js';

/** What is wrong with a pressure in mmHg: it lies on the scale of a gauge, 0 to its top. */
export function pressureFault(mmHg: number): NumberFault | null {
  const maximum = F.gaugeTopMmHg.value;
  if (mmHg >= 0 && mmHg <= maximum) return null;
  return { code: 'out-of-range', expected: 'within-limits', figures: { minimum: 0, maximum } };
}

/** What is wrong with the pressure at which a sound or the pulse came: it is over 0. */
export function systolicFault(mmHg: number): NumberFault | null {
  return mmHg === 0 ? { code: 'out-of-range', expected: 'over-zero', figures: {} } : pressureFault(mmHg);
}

/** What is wrong with a pulse per minute: it is at least 1, and not over the ceiling. */
export function pulseFault(perMinute: number): NumberFault | null {
  if (perMinute < 1) return { code: 'out-of-range', expected: 'at-least', figures: { minimum: 1 } };
  const ceilingPerMinute = F.ceilingPerMinute.value;
  if (!passes(perMinute, SIDE.ceilingPerMinute, ceilingPerMinute)) return null;
  return { code: 'impossible', expected: 'at-most-per-minute', figures: { perMinute, ceilingPerMinute } };
}

/** What is wrong with a graduation in mmHg. */
export function stepFault(mmHg: number): NumberFault | null {
  const maximum = F.coarsestStepMmHg.value;
  if (mmHg > 0 && mmHg <= maximum) return null;
  return { code: 'out-of-range', expected: 'over-zero-at-most', figures: { maximum } };
}

export function timeFault(seconds: number): NumberFault | null {
  return seconds < 0 ? { code: 'out-of-range', expected: 'not-negative', figures: { minimum: 0 } } : null;
}

/** A number that may be left out; null if it was, or if it was refused. */
export function optionalNumber(
  reader: FieldReader,
  key: string,
  check: (value: number) => NumberFault | null,
): number | null {
  return isBlank(reader.raw(key)) ? null : reader.number(key, check);
}

/**
 * A diastolic that something is computed from, mmHg; null if it was left out or refused. One of 0 was heard to zero
 * with no muffling noted: it measures nothing and counts as not known. Source: docs/conventions.md section 6.
 */
export function usableDiastolic(reader: FieldReader, key: string): number | null {
  const mmHg = optionalNumber(reader, key, pressureFault);
  return mmHg === 0 ? null : mmHg;
}
