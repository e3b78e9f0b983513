import type { Measured } from '../category/categoryIn.js';
import type { Pressure } from '../category/scheme.js';
import { SCREENING } from './screeningTable.js';
import type { Sex } from './sex.js';

/** What the screening table says: at or above it a full assessment is due. It is no diagnosis. */
export type Screening = 'below' | 'at-or-above';

/** The numbers of the table for a child of 1 year or more, in completed years; the last row is for all older ones. */
export function screeningLimits(sex: Sex, ageYears: number): Pressure | null {
  const row = SCREENING.rows.findLast(({ years }) => years <= Math.floor(ageYears));
  if (row === undefined) return null;
  return sex === 'm'
    ? { systolic: row.boysSystolic, diastolic: row.boysDiastolic }
    : { systolic: row.girlsSystolic, diastolic: row.girlsDiastolic };
}

/**
 * Whether a pressure in mmHg, not rounded, reaches either number. One number not known: the other alone can say
 * "at or above", and never "below" (null).
 *
 * Source: AAP 2017, simplified table (bedside handbook 6.3).
 */
export function screeningOf({ systolic, diastolic }: Measured, limits: Pressure): Screening | null {
  const known = { systolic, diastolic: diastolic === 0 ? null : diastolic };
  const isReached = (['systolic', 'diastolic'] as const).some((component) => {
    const mmHg = known[component];
    return mmHg !== null && mmHg >= limits[component];
  });
  if (isReached) return 'at-or-above';
  return known.systolic === null || known.diastolic === null ? null : 'below';
}
