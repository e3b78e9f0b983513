import type { PersonRow } from '@evenfall/api';
import { type Countdown, countdown, type Stamp } from '@evenfall/record';

/** A person whose pressure is to be looked at again, and where that is now. */
export type DueRow = {
  readonly row: PersonRow;
  readonly recheck: NonNullable<PersonRow['latest']['recheck']>;
  readonly countdown: Countdown;
};

/**
 * Everybody who is to be looked at again: whoever has an alert that nobody closed first, then what is late, what may
 * be taken, what is ahead; each by its time.
 */
export function dueRows(rows: readonly PersonRow[], now: Stamp): DueRow[] {
  const nowMs = Date.parse(now.at);
  return rows
    .flatMap((row): DueRow[] => {
      const { recheck } = row.latest;
      return recheck === null ? [] : [{ row, recheck, countdown: countdown(recheck, nowMs) }];
    })
    .sort((a, b) => rank(a) - rank(b) || timeOf(a) - timeOf(b));
}

function rank({ row, countdown: { is } }: DueRow): number {
  if (row.latest.actNow > 0) return -1;
  return is === 'late' ? 0 : is === 'ahead' ? 2 : 1;
}

/** The time that the countdown of a row runs to, or ran from. */
function timeOf({ recheck: { fromAt, byAt }, countdown: { is } }: DueRow): number {
  return Date.parse(is === 'ahead' ? fromAt : (byAt ?? fromAt));
}
