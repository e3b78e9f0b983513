import type { Cost } from './cost.js';

/** How much a fault moved the number that it moved more, mmHg; where it left nothing to be heard, without end. */
export function sizeOfCost({ systolic, diastolic }: Pick<Cost, 'systolic' | 'diastolic'>): number {
  if (systolic === null && diastolic === null) return Infinity;
  return Math.max(Math.abs(systolic ?? 0), Math.abs(diastolic ?? 0));
}
