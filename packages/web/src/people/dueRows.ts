import type { PersonRow } from '@evenfall/api';
import { recheckUrgency } from '@evenfall/clinical';
import { type Countdown, countdown, type Stamp } from '@evenfall/record';

/** A person of whom an alert is open, or whose pressure is to be looked at again, and where that is now. */
export type DueRow = {
  readonly row: PersonRow;
  readonly due: Due | null;
};

export type Due = NonNullable<PersonRow['latest']['recheck']> & { readonly countdown: Countdown };

/**
 * Everybody who needs somebody: whoever has an alert that nobody closed first, then what is late or may be taken, then what
 * is ahead; each by how urgent it is, and then by its time.
 */
export function dueRows(rows: readonly PersonRow[], now: Stamp): DueRow[] {
  const nowMs = Date.parse(now.at);
  return rows
    .flatMap((row): DueRow[] => {
      const { recheck, actNow } = row.latest;
      if (recheck !== null) return [{ row, due: { ...recheck, countdown: countdown(recheck, nowMs) } }];
      return actNow > 0 ? [{ row, due: null }] : [];
    })
    .sort(
      (a, b) =>
        rank(a) - rank(b) ||
        urgencyOf(a) - urgencyOf(b) ||
        lateness(a) - lateness(b) ||
        timeOf(a) - timeOf(b),
    );
}

function rank({ row, due }: DueRow): number {
  if (row.latest.actNow > 0) return -1;
  return due?.countdown.is === 'ahead' ? 1 : 0;
}

function urgencyOf({ due }: DueRow): number {
  return recheckUrgency(due?.code ?? null);
}

/** Of equal urgency what is late comes before what may be taken. */
function lateness({ due }: DueRow): number {
  return due?.countdown.is === 'late' ? 0 : 1;
}

/** The time that the countdown of a row runs to, or ran from; nothing but an alert comes before any. */
function timeOf({ due }: DueRow): number {
  if (due === null) return 0;
  const { fromAt, byAt, countdown: at } = due;
  return Date.parse(at.is === 'ahead' ? fromAt : (byAt ?? fromAt));
}
