import type { PersonRow } from '@evenfall/api';
import { useLocation } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { shortStampText } from '../app/times.js';
import { localDate } from '../ports/stampAt.js';
import { beginRound } from '../round/rounds.js';
import { type DueRow, dueRows } from './dueRows.js';
import { useTick } from './useTick.js';

/** The times are said anew every second. */
const EVERY_MS = 1000;

/**
 * Whose pressure is to be looked at again, why, and in how many minutes; one touch leads to the round. It says that a
 * page that is closed cannot ring.
 */
export function DueList({ rows }: { readonly rows: readonly PersonRow[] }) {
  const { words, clock } = useApp();
  useTick(EVERY_MS);
  const due = dueRows(rows, clock.stamp());
  if (due.length === 0) return null;
  const now = due.filter(({ countdown }) => countdown.is !== 'ahead');
  const names = words.say.allOf(now.map(({ row }) => nameOf(row)));
  return (
    <section className="due" aria-labelledby="due">
      <h2 id="due">{words.sentence('people.dueTitle')}</h2>
      <ul className="due-list">
        {due.map((one) => (
          <DueLine key={one.row.id} due={one} />
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

function DueLine({ due }: { readonly due: DueRow }) {
  const app = useApp();
  const { words } = app;
  const [, go] = useLocation();
  const { row, recheck, countdown } = due;
  const hasDraft = useKept(({ kept }) => kept.drafts[row.id] !== undefined);
  const name = row.identity?.name ?? words.sentence('people.erased');
  const isUrgent = countdown.is !== 'ahead';
  return (
    <li className="due-line">
      <div className="due-who">
        <span className="due-name">{name}</span>
        <span className={isUrgent ? 'person-mark' : ''}>{useCountdownText(due)}</span>
        <span className="small soft">{words.title('recheckReason', recheck.code)}</span>
      </div>
      {row.identity === null ? null : (
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

/** In how many minutes, how many are left, or since when. */
function useCountdownText({ recheck: { fromAt, byAt }, countdown: { is, minutes } }: DueRow): string {
  const { words, clock } = useApp();
  const today = localDate(clock.stamp());
  const from = shortStampText(fromAt, today, words);
  const by = shortStampText(byAt ?? fromAt, today, words);
  switch (is) {
    case 'ahead':
      return words.sentence('people.dueAhead', { minutes, text: from });
    case 'now':
      return words.sentence('people.dueNow', { minutes, text: by });
    case 'late':
      return words.sentence('people.dueLate', { minutes, text: by });
    case 'since':
      return words.sentence('people.dueSince', { minutes, text: from });
  }
}
