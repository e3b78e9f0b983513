import type { PersonRow } from '@evenfall/api';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { dayOfYearText } from '../app/times.js';
import { localDate } from '../ports/stampAt.js';
import { diariesDue } from './diariesDue.js';

/** Each diary that is due back: today or before. */
export function DiariesDue({ rows }: { readonly rows: readonly PersonRow[] }) {
  const { words, clock } = useApp();
  const today = localDate(clock.stamp());
  const due = diariesDue(rows, today);
  if (due.length === 0) return null;
  return (
    <section className="due" aria-labelledby="diaries-due">
      <h2 id="diaries-due">{words.sentence('diary.dueTitle')}</h2>
      <ul className="due-list">
        {due.map(({ id, identity, entry, dueOn, from }) => (
          <li key={entry}>
            <Link href={`/people/${id}`} className="due-diary">
              {words.sentence('diary.dueLine', {
                name: identity?.name ?? words.sentence('people.erased'),
                day: dueOn === today ? '' : dayOfYearText(dueOn, words),
                from: due.filter((one) => one.id === id).length > 1 ? dayOfYearText(from, words) : '',
              })}
            </Link>
          </li>
        ))}
      </ul>
    </section>
  );
}
