import type { Costs } from './cost.js';
import { FAULT_FIGURES as F } from './figures.js';
import { sizeOfCost } from './sizeOfCost.js';

/**
 * Why there is no one thing to do differently: what moved the numbers was nothing that there was time to mend (`excused`), a number
 * is not accepted and no fault tells why (`unexplained`), what was wrong is less than a gauge shows (`small`), nothing was (`none`).
 */
export type NothingToDo = 'excused' | 'unexplained' | 'small' | 'none';

/**
 * What is said where `oneThingOf` finds nothing: praise for no number that is off.
 *
 * @param accepted whether each number is accepted; null: there is none
 * Source: assessment handbook 14 (one thing to change); that nobody is praised for a number that is off: decision of this project.
 */
export function nothingToDo(
  { costs }: Pick<Costs, 'costs'>,
  accepted: { readonly systolic: boolean | null; readonly diastolic: boolean | null },
): NothingToDo {
  const isExcused = costs.some(
    (one) => one.doInstead === 'no-time-for-that' && sizeOfCost(one) >= F.oneThingMmHg.value,
  );
  if (isExcused) return 'excused';
  if (accepted.systolic === false || accepted.diastolic === false) return 'unexplained';
  return costs.length > 0 ? 'small' : 'none';
}
