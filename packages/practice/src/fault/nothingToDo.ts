import { SIDES, type Side } from './base.js';
import type { Cost, Costs } from './cost.js';
import { FAULT_FIGURES as F } from './figures.js';
import { sizeOfCost } from './sizeOfCost.js';

/**
 * Why there is no one thing to do differently: what moved the numbers was nothing that there was time to mend (`excused`), a number
 * is not accepted and no fault, or none of these alone, tells why (`unexplained`), what was wrong is less than a gauge shows (`small`), nothing was (`none`).
 */
export type NothingToDo = 'excused' | 'unexplained' | 'small' | 'none';

/**
 * What is said where `oneThingOf` finds nothing: praise for no number that is off.
 *
 * @param accepted whether each number is accepted; null: there is none
 * Source: assessment handbook 14 (one thing to change); that nobody is praised for a number that is off: decision of this project.
 */
export function nothingToDo(
  { costs, left }: Pick<Costs, 'costs' | 'left'>,
  accepted: { readonly systolic: boolean | null; readonly diastolic: boolean | null },
): NothingToDo {
  const isOff = (side: Side) => accepted[side] === false;
  // What nobody excuses moved the number out of what is accepted by itself.
  const isMore = (side: Side) =>
    isOff(side) && Math.abs(restOf({ costs, left }, side)) >= F.outOfAcceptedMmHg.value;
  const isExcused = costs.some((one) => isExcusable(one) && sizeOfCost(one) >= F.oneThingMmHg.value);
  if (isExcused && !SIDES.some(isMore)) return 'excused';
  if (SIDES.some(isOff)) return 'unexplained';
  return costs.length > 0 ? 'small' : 'none';
}

function isExcusable({ doInstead }: Cost): boolean {
  return doInstead === 'no-time-for-that';
}

/** How far off a number is without what there was no time to mend, mmHg; 0 where it cannot be shared out. */
function restOf({ costs, left }: Pick<Costs, 'costs' | 'left'>, side: Side): number {
  const others = costs.filter((one) => !isExcusable(one));
  return others.reduce((sum, one) => sum + (one[side] ?? 0), left?.[side] ?? 0);
}
