import { ACT_NOW_CONDITIONS } from './actNowConditions.js';
import { isLowCondition } from './worstAlerts.js';

/**
 * The condition that is named where there is room for one alone: somebody who does not respond, then a pressure that is too low,
 * then the others in the order in which they are told; that one part of a score is bad says less than the
 * alert of its sign, and comes after it. One that is not among them comes last. Null of none.
 *
 * Source: none; that low comes before severe is common practice, as in `RECHECK_CLASSES`.
 */
export function mostUrgent(conditions: readonly string[]): string | null {
  const [first] = conditions.toSorted((a, b) => urgencyOf(a) - urgencyOf(b));
  return first ?? null;
}

function urgencyOf(condition: string): number {
  if (condition === 'unresponsive') return -2;
  if (isLowCondition(condition)) return -1;
  const told = ACT_NOW_CONDITIONS.length;
  if (condition === 'early-warning-single-part') return told;
  const at = ACT_NOW_CONDITIONS.findIndex(({ id }) => id === condition);
  return at === -1 ? told + 1 : at;
}
