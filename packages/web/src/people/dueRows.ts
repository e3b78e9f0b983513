import type { PersonRow } from '@evenfall/api';
import { type Countdown, countdown, type Stamp } from '@evenfall/record';
import type { BegunAlarm } from '../round/begunAlarm.js';
import { isGrave, NO_TIME, urgencyOf } from './urgencyOf.js';
import { type BegunAlarms, NO_ALARMS } from './useBegunAlarms.js';

/** A person of whom an alert is open, or whose pressure is to be looked at again, and where that is now. */
export type DueRow = {
  readonly row: PersonRow;
  readonly due: Due | null;
  /** What a round that was begun here and not signed asks for at once; absent where there is none. */
  readonly begun?: BegunAlarm;
};

export type Due = NonNullable<PersonRow['latest']['recheck']> & { readonly countdown: Countdown };

/**
 * Everybody who needs somebody: whoever has an alert that nobody closed, or of whom a round alarms that nobody signed, first,
 * then what is late, may be taken or is severe, then what is ahead; each by the more urgent of alert and repeat, and then by its time.
 */
export function dueRows(rows: readonly PersonRow[], now: Stamp, alarms: BegunAlarms = NO_ALARMS): DueRow[] {
  const nowMs = Date.parse(now.at);
  return rows
    .flatMap((row): DueRow[] => {
      const { recheck, actNow } = row.latest;
      const begun = alarms.get(row.id);
      const more = begun === undefined ? {} : { begun };
      if (recheck !== null)
        return [{ row, due: { ...recheck, countdown: countdown(recheck, nowMs) }, ...more }];
      return actNow > 0 || begun !== undefined ? [{ row, due: null, ...more }] : [];
    })
    .sort(
      (a, b) =>
        rank(a) - rank(b) || urgency(a) - urgency(b) || lateness(a) - lateness(b) || timeOf(a) - timeOf(b),
    );
}

function rank({ row, due, begun }: DueRow): number {
  if (row.latest.actNow > 0 || begun !== undefined) return -1;
  return due?.countdown.is === 'ahead' && !isGrave(row.latest, begun) ? 1 : 0;
}

function urgency({ row, begun }: DueRow): number {
  return urgencyOf(row.latest, begun);
}

/** Of equal urgency what is late comes before what may be taken, and that before what is ahead. */
function lateness({ due }: DueRow): number {
  if (due?.countdown.is === 'late') return 0;
  return due === null || due.countdown.is === 'ahead' ? 2 : 1;
}

/** The time that the countdown of a row runs to, or ran from; nothing but an alert has none. */
function timeOf({ due }: DueRow): number {
  if (due === null) return NO_TIME;
  const { fromAt, byAt, countdown: at } = due;
  return Date.parse(at.is === 'ahead' ? fromAt : (byAt ?? fromAt));
}
