import { type ActFirstCode, actFirst } from '../category/actFirst.js';
import type { Flag } from '../contract/flag.js';

type Pressures = { readonly systolic: number | null; readonly diastolic: number | null };

/** A reading that somebody must act on, whatever the mean; used or not. */
export type ActFirstIn<Row> = { readonly row: Row; readonly flag: Flag<ActFirstCode> };

/**
 * Readings that may be an emergency or are very low, also of rows that are left out or refused, in the order given. Pressures
 * that stand the wrong way round are looked at the right way round: 121/182 is no low pressure. A child's low pressure has other
 * limits, which need a height.
 *
 * Errors: none. Source: bedside handbook 3.16; docs/hazards.md.
 */
export function actFirstIn<Row extends Pressures>(
  rows: readonly Row[],
  isPregnant: boolean,
  isChild: boolean,
): ActFirstIn<Row>[] {
  const found: ActFirstIn<Row>[] = [];
  for (const given of rows) {
    const row = upright(given);
    for (const flag of actFirst(row, isPregnant))
      if (flag.code === 'severe-reading' || !isChild) found.push({ row, flag });
  }
  return found;
}

/** The two numbers the right way round, where they stand the wrong way: nobody's diastolic is over the systolic. */
export function upright<Row extends Pressures>(row: Row): Row {
  const { systolic, diastolic } = row;
  return systolic !== null && diastolic !== null && diastolic > systolic
    ? { ...row, systolic: diastolic, diastolic: systolic }
    : row;
}
