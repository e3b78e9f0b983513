import { type Refusal, refusal } from '@evenfall/clinical';
import type { Entry } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';

/**
 * What is wrong with entries and their sessions: one of the class book stands in a session that is open (its own
 * beginning and end aside), and no other book has sessions.
 */
export async function wrongSessions(
  db: Kysely<Tables>,
  site: string,
  entries: readonly Entry[],
): Promise<Refusal[]> {
  const named = entries.filter(({ book, kind }) => book === 'class' && kind !== 'class-session');
  const rows =
    named.length === 0
      ? []
      : await db
          .selectFrom('entry')
          .select(['kind', 'session'])
          .where('site', '=', site)
          .where('book', '=', 'class')
          .where('kind', 'in', ['class-session', 'class-session-ended'])
          .execute();
  const begun = new Set(rows.filter(({ kind }) => kind === 'class-session').map(({ session }) => session));
  for (const { kind, session } of rows) if (kind === 'class-session-ended') begun.delete(session);
  return entries.flatMap((entry, index): Refusal[] => {
    const { book, kind, session } = entry;
    const field = `/entries/${index}/session`;
    if (book !== 'class')
      return session === null ? [] : [refusal(field, 'contradicts', 'no-session', session)];
    if (kind === 'class-session' || begun.has(session)) return [];
    return [refusal(field, session === null ? 'missing' : 'unknown-id', 'open-session', session)];
  });
}
