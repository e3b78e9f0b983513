import { type PlanResult, planResult } from './planResult.js';
import { addSums, newSums, type Plan, pieceOf, piecesOf } from './sums.js';

/**
 * A whole plan in this thread. `onward` is asked after every piece with the share done, 0 to 1, and ends the study early
 * where it says false: then the result is null.
 */
export function runPlan(plan: Plan, onward: (done: number) => boolean = () => true): PlanResult | null {
  const sums = newSums(plan.against !== null);
  const pieces = piecesOf(plan);
  for (let piece = 0; piece < pieces; piece++) {
    addSums(sums, pieceOf(plan, piece));
    if (!onward((piece + 1) / pieces)) return null;
  }
  return planResult(sums);
}
