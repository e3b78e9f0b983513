import type { PersonRow } from '@evenfall/api';
import { recheckUrgency } from '@evenfall/clinical';
import type { Stamp } from '@evenfall/record';
import { isLate } from './dueText.js';

/**
 * Whoever needs somebody first: an act-now that nobody has closed, then a recheck that is late, then one that is due,
 * the more urgent and then the earlier first; everybody else as they came.
 */
export function inOrder(rows: readonly PersonRow[], now: Stamp): readonly PersonRow[] {
  return rows.toSorted(
    (a, b) => rankOf(a, now) - rankOf(b, now) || urgencyOf(a) - urgencyOf(b) || dueAt(a) - dueAt(b),
  );
}

function rankOf({ latest: { actNow, recheck } }: PersonRow, now: Stamp): number {
  if (actNow > 0) return 0;
  if (recheck === null) return 3;
  return isLate(recheck, now) ? 1 : 2;
}

function urgencyOf({ latest: { actNow, recheck } }: PersonRow): number {
  return actNow === 0 && recheck === null ? 0 : recheckUrgency(recheck?.code ?? null);
}

/** When somebody is to be looked at again; the same for all of whom nothing is due, and where an alert comes first. */
function dueAt({ latest: { actNow, recheck } }: PersonRow): number {
  return actNow > 0 || recheck === null ? 0 : Date.parse(recheck.byAt ?? recheck.fromAt);
}
