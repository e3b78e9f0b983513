import type { Measured } from '../category/categoryIn.js';
import { passes } from '../contract/threshold.js';
import { isStatic } from './aap2017.js';
import { CHILD_COMPARISONS as SIDE } from './comparisons.js';
import { CHILD_FIGURES as F } from './figures.js';
import type { Centiles } from './fourthReport.js';
import { completedYears } from './years.js';

/** The limits of one child, or null where its height is not known. */
export type ChildLimits = { readonly systolic: Centiles; readonly diastolic: Centiles };

/**
 * Whether a child's pressure is so high that it needs care at once: further than 30 above the 95th centile, or over
 * 180/120, the limit of adolescents, which lies above that of any younger child too. Null where nothing known says so
 * and the 95th centile is not known. From memory.
 *
 * Source: bedside handbook 3.16.
 */
export function isChildSevere(
  { systolic, diastolic }: Measured,
  ageMonths: number,
  limits: ChildLimits | null,
): boolean | null {
  if (isOver(systolic, 'severeAdolescentSystolic') || isOver(diastolic, 'severeAdolescentDiastolic'))
    return true;
  if (limits === null) return isStatic(completedYears(ageMonths)) ? false : null;
  return isFarAbove(systolic, limits.systolic) || isFarAbove(diastolic, limits.diastolic);
}

function isOver(mmHg: number | null, id: 'severeAdolescentSystolic' | 'severeAdolescentDiastolic'): boolean {
  return mmHg !== null && passes(mmHg, SIDE[id], F[id].value);
}

function isFarAbove(mmHg: number | null, { p95 }: Centiles): boolean {
  return mmHg !== null && passes(mmHg - p95, SIDE.severeAbove95, F.severeAbove95.value);
}
