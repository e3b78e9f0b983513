import { median } from '../statistics/median.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';

/**
 * What the other numbers of one kind usually are, where a number stands so far from them that a digit may have been left
 * out or typed twice; null where it does not, or where there are too few others. It is asked about and never changed.
 *
 * @param value systolic, diastolic or pulse, as typed
 * @param others the other numbers of the same kind on the page
 * Errors: none. Source: none; common practice (a number is looked at beside those around it), the share a decision.
 */
export function outOfLine(value: number, others: readonly number[]): number | null {
  const usual = median(others);
  if (usual === null || others.length < F.outOfLineLeastOthers.value) return null;
  const share = F.outOfLineShare.value;
  return value < share * usual || share * value > usual ? usual : null;
}
