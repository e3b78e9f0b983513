import { type Refusal, refusal } from '@evenfall/clinical';
import { CLASS_KINDS, type Entry } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';

/**
 * What is wrong with entries and their sessions: one of the class book is of a kind that a class keeps, stands in a
 * session that is open (its own beginning aside) and amends nothing of another; no other book has sessions. The
 * sessions named stay open until the end of the transaction: whoever ends one waits, and then deletes these too.
 */
export async function wrongSessions(
  tx: Kysely<Tables>,
  site: string,
  entries: readonly Entry[],
): Promise<Refusal[]> {
  const ofClass = entries.filter(({ book }) => book === 'class');
  const open = await heldOpen(
    tx,
    site,
    ofClass.map(({ session }) => session),
  );
  const isOut = ({ kind, session }: Entry) =>
    kind !== 'class-session' && (session === null || !open.has(session));
  // Sent again after the session was ended: what was kept of it by agreement is answered as ever.
  const out = ofClass.filter(isOut).map(({ id }) => id);
  const before = new Set(
    (await sessionsById(tx, site, out)).filter(({ session }) => session !== null).map(({ id }) => id),
  );
  const named = ofClass.flatMap(({ amends }) => (amends === null ? [] : [amends.entry]));
  const amended = new Map(
    [...ofClass, ...(await sessionsById(tx, site, named))].map(({ id, session }) => [id, session]),
  );
  return entries.flatMap((entry, index): Refusal[] => {
    const { book, kind, session, id, amends } = entry;
    const within = `/entries/${index}`;
    if (book !== 'class')
      return session === null ? [] : [refusal(`${within}/session`, 'contradicts', 'no-session', session)];
    if (!CLASS_KINDS.includes(kind)) return [refusal(`${within}/kind`, 'contradicts', 'kind-of-class', kind)];
    if (isOut(entry) && !before.has(id))
      return [
        refusal(`${within}/session`, session === null ? 'missing' : 'unknown-id', 'open-session', session),
      ];
    const other = amends === null ? undefined : amended.get(amends.entry);
    return other === undefined || other === session
      ? []
      : [refusal(`${within}/amends/entry`, 'contradicts', 'entry-of-session', amends?.entry)];
  });
}

async function heldOpen(
  tx: Kysely<Tables>,
  site: string,
  named: readonly (string | null)[],
): Promise<ReadonlySet<string>> {
  const sessions = [...new Set(named.filter((session) => session !== null))];
  if (sessions.length === 0) return new Set();
  const begun = await tx
    .selectFrom('entry')
    .select('id')
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('kind', '=', 'class-session')
    .where('id', 'in', sessions)
    .orderBy('id')
    .forShare()
    .execute();
  // Asked only once they are held: one that was ended while this waited is seen as ended.
  const ended = await tx
    .selectFrom('entry')
    .select('session')
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('kind', '=', 'class-session-ended')
    .where('session', 'in', sessions)
    .execute();
  const over = new Set(ended.map(({ session }) => session));
  return new Set(begun.flatMap(({ id }) => (over.has(id) ? [] : [id])));
}

async function sessionsById(tx: Kysely<Tables>, site: string, ids: readonly string[]) {
  if (ids.length === 0) return [];
  return await tx
    .selectFrom('entry')
    .select(['id', 'session'])
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('id', 'in', [...ids])
    .execute();
}
