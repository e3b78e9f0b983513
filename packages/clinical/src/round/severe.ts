import { passes } from '../contract/threshold.js';
import type { Difference } from './averagingRules.js';

/** A limit of pressure, mmHg, with its side. */
export type PressureLimit = Difference;

/** Either number over its limit makes a pressure severe. */
export type SevereLimits = { readonly systolic: PressureLimit; readonly diastolic: PressureLimit };

/** A pressure of which parts may not be known, mmHg. */
export type KnownPressure = { readonly systolic: number | null; readonly diastolic: number | null };

/** Whether either part that is known is on the wrong side of its limit; a part that is not known hides nothing. */
export function isPressureSevere({ systolic, diastolic }: KnownPressure, limits: SevereLimits): boolean {
  return isPast(systolic, limits.systolic) || isPast(diastolic, limits.diastolic);
}

/** Whether a value is known and on the side of the limit that counts. */
export function isPast(value: number | null, { comparison, limit }: PressureLimit): boolean {
  return value !== null && passes(value, comparison, limit);
}
