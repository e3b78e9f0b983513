import type { PersonRow } from '@evenfall/api';
import { Link, useLocation } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { shortStampText, stampParts } from '../app/times.js';
import { localDate } from '../ports/stampAt.js';
import { beginRound } from '../round/rounds.js';
import { actNowText } from './actNowText.js';
import { begunText } from './begunText.js';
import { type Due, type DueRow, dueRows } from './dueRows.js';
import type { BegunAlarms } from './useBegunAlarms.js';
import { useTick } from './useTick.js';

/** The times are said anew every second. */
const EVERY_MS = 1000;
const MINUTES_PER_DAY = 1440;

/**
 * Of whom an alert is open, and whose pressure is to be looked at again, why, and in how many minutes; one touch leads
 * to the round. It says that a page that is closed cannot ring.
 */
export function DueList({
  rows,
  begun,
}: {
  readonly rows: readonly PersonRow[];
  readonly begun: BegunAlarms;
}) {
  const { words, clock } = useApp();
  useTick(EVERY_MS);
  const due = dueRows(rows, clock.stamp(), begun);
  if (due.length === 0) return null;
  const now = due.filter((one) => one.due !== null && one.due.countdown.is !== 'ahead');
  const names = words.say.allOf(now.map(({ row }) => nameOf(row)));
  return (
    <section className="due" aria-labelledby="due">
      <h2 id="due">{words.sentence('people.dueTitle')}</h2>
      <ul className="due-list">
        {due.map((one) => (
          <DueLine key={one.row.id} {...one} />
        ))}
      </ul>
      <p className="small soft">{words.sentence('people.cannotRing')}</p>
      <p className="unseen" role="status">
        {now.length === 0 ? null : words.sentence('people.dueSaid', { names })}
      </p>
    </section>
  );

  function nameOf({ identity }: PersonRow): string {
    return identity?.name ?? words.sentence('people.erased');
  }
}

function DueLine({ row, due, begun }: DueRow) {
  const app = useApp();
  const { words } = app;
  const [, go] = useLocation();
  const hasDraft = useKept(({ kept }) => kept.drafts[row.id] !== undefined);
  const name = row.identity?.name ?? words.sentence('people.erased');
  const { actNow, actNowFirst } = row.latest;
  const isUrgent = begun !== undefined || (due !== null && due.countdown.is !== 'ahead');
  return (
    <li className="due-line">
      <div className="due-who">
        <span className="due-name" id={`due-${row.id}`}>
          {name}
        </span>
        {actNow === 0 ? null : (
          <Link href={`/people/${row.id}`} className="person-alert" aria-describedby={`due-${row.id}`}>
            {actNowText(actNow, actNowFirst, words)}
          </Link>
        )}
        {begun === undefined ? null : <strong className="person-alert">{begunText(begun, words)}</strong>}
        {due === null ? null : <CountdownText due={due} />}
      </div>
      {row.identity === null || (due === null && begun === undefined) ? null : (
        <button
          type="button"
          className={isUrgent ? 'button button-first' : 'button'}
          onClick={() => {
            beginRound(app, row.id);
            go(`/people/${row.id}/round`);
          }}
        >
          {words.sentence(hasDraft ? 'people.dueGoOn' : 'people.dueTake')}
          <span className="unseen">: {name}</span>
        </button>
      )}
    </li>
  );
}

/** In how many minutes, how many are left, or since when; and why. */
function CountdownText({ due }: { readonly due: Due }) {
  const { words, clock } = useApp();
  const { code, fromAt, byAt, countdown } = due;
  const today = localDate(clock.stamp());
  const isLast = countdown.is === 'now' || countdown.is === 'late';
  const at = isLast ? (byAt ?? fromAt) : fromAt;
  // A clock says more than a day does, also when midnight lies between.
  const text =
    countdown.minutes < MINUTES_PER_DAY ? stampParts({ at }, words).time : shortStampText(at, today, words);
  return (
    <>
      <span className={countdown.is === 'ahead' ? '' : 'person-mark'}>
        {words.sentence(`people.${SAID[countdown.is]}`, { minutes: countdown.minutes, text })}
      </span>
      <span className="small soft">{words.title('recheckReason', code)}</span>
    </>
  );
}

const SAID = { ahead: 'dueAhead', now: 'dueNow', late: 'dueLate', since: 'dueSince' } as const;
