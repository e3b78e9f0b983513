import { passes } from '../contract/threshold.js';
import { OUT_OF_OFFICE_COMPARISONS as SIDE } from './comparisons.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';

/** A stretch of measuring, by local days as days since 1970-01-01, both with a reading. */
export type Stretch = { readonly firstDay: number; readonly lastDay: number };

/**
 * Whether readings at home go on with a stretch: they begin on one of its days or after it, with no more days without a
 * reading between than the rule bears. Source: decision of this project, beside out-of-office handbook 3.
 */
export function followsOn(before: Stretch, firstDay: number): boolean {
  if (firstDay < before.firstDay) return false;
  const missed = firstDay - before.lastDay - 1;
  return missed <= 0 || passes(missed, SIDE.continuesWithinDays, F.continuesWithinDays.value);
}
