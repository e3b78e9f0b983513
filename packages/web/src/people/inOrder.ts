import type { PersonRow } from '@evenfall/api';
import type { Stamp } from '@evenfall/record';
import { isLate } from './dueText.js';
import { isGrave, NO_TIME, urgencyOf } from './urgencyOf.js';
import { type BegunAlarms, NO_ALARMS } from './useBegunAlarms.js';

/**
 * Whoever needs somebody first: an act-now that nobody has closed, or an alarm of a round that nobody signed, then a recheck
 * that is late or of a severe pressure, then one that is due, the more urgent and then the earlier first; everybody else as they came.
 */
export function inOrder(
  rows: readonly PersonRow[],
  now: Stamp,
  begun: BegunAlarms = NO_ALARMS,
): readonly PersonRow[] {
  const rankOf = ({ id, latest }: PersonRow) => {
    const { actNow, recheck } = latest;
    if (actNow > 0 || begun.has(id)) return 0;
    if (recheck === null) return 3;
    return isLate(recheck, now) || isGrave(latest, undefined) ? 1 : 2;
  };
  /** Of all of whom nothing is due the same. */
  const urgency = (row: PersonRow) => (rankOf(row) === 3 ? 0 : urgencyOf(row.latest, begun.get(row.id)));
  /** When somebody is to be looked at again. */
  const dueAt = (row: PersonRow) => {
    const { recheck } = row.latest;
    return recheck === null ? NO_TIME : Date.parse(recheck.byAt ?? recheck.fromAt);
  };
  return rows.toSorted((a, b) => rankOf(a) - rankOf(b) || urgency(a) - urgency(b) || dueAt(a) - dueAt(b));
}
