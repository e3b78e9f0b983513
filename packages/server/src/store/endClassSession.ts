import { type Refusal, refusal } from '@evenfall/clinical';
import { type Kysely, sql, type Transaction } from 'kysely';
import type { Tables } from '../database/schema.js';
import { ofKind, ofSession, openSessions } from './classSessions.js';
import { type Incoming, type Taken, takeEntries } from './takeEntries.js';

/** How much was deleted, and of how many people something stays. */
export type Deleted = {
  readonly deleted: { readonly persons: number; readonly rounds: number; readonly entries: number };
  readonly kept: { readonly persons: number };
};

type Tx = Transaction<Tables>;

/**
 * Ends a session: everything of it is deleted, rows of the projection and identities with it, but what both teacher
 * and person agreed to keep. Where nobody's data stay, nothing at all of the session stays, not even that it was.
 * Sent again, it deletes nothing more.
 *
 * Errors: refusals for entries of another kind or session, and for a person who is not of it.
 */
export async function endSession(
  db: Kysely<Tables>,
  site: string,
  session: string,
  ended: Incoming,
  keep: readonly Incoming[],
  program: string,
): Promise<{ outcome: 'ended'; deleted: Deleted; already: boolean } | Exclude<Taken, { outcome: 'taken' }>> {
  const refusals = [
    ...ofKind(ended.entry, 'class-session-ended', '/entry'),
    ...ofSession(ended.entry, session, '/entry'),
    ...keep.flatMap(({ entry }, index) => [
      ...ofKind(entry, 'kept-by-agreement', `/keep/${index}`),
      ...ofSession(entry, session, `/keep/${index}`),
    ]),
    ...twice(keep),
    ...(await notOfSession(db, site, session, keep)),
  ];
  if (refusals.length > 0) return { outcome: 'refused', refusals };
  const kept = keep.map(({ entry }) => entry.person ?? '');
  let deleted: Deleted | null = null;
  const taken = await takeEntries(db, site, [...keep, ended], program, {
    before: async (tx) => {
      await holdSession(tx, site, session);
    },
    // In one transaction: what is agreed to be kept is never deleted, and what is not never outlives the end.
    after: async (tx) => {
      deleted = await deleteSession(tx, site, session, kept);
      return [];
    },
  });
  if (taken.outcome !== 'taken')
    return { ...taken, refusals: taken.refusals.map((one) => inBody(one, keep.length)) };
  const nothing = deletedOf([], 0, kept.length);
  return { outcome: 'ended', deleted: deleted ?? nothing, already: deleted === null };
}

/** Ends the sessions that nobody ended in time; nothing of them stays. Answers how much that was, one for each. */
export async function endForgotten(db: Kysely<Tables>, site: string, now: Date): Promise<Deleted[]> {
  const done: Deleted[] = [];
  for (const { id, goneAt } of await openSessions(db, site, now)) {
    if (Date.parse(goneAt) > now.getTime()) continue;
    const deleted = await db.transaction().execute(async (tx) => {
      // Another server, or the teacher at last, may have been faster.
      return (await holdSession(tx, site, id)) ? await deleteSession(tx, site, id, []) : null;
    });
    if (deleted !== null) done.push(deleted);
  }
  return done;
}

/**
 * Deletes everything of a person of a class session, also what was kept by agreement and what is of other sessions;
 * null for nobody of that session. With the last person of an ended session goes what was left of it.
 */
export async function withdraw(
  db: Kysely<Tables>,
  site: string,
  session: string,
  person: string,
): Promise<Deleted | null> {
  return await db.transaction().execute(async (tx) => {
    const sessions = await sessionsOf(tx, site, person);
    if (!sessions.includes(session)) return null;
    for (const one of sessions) await holdSession(tx, site, one);
    await allowDeleting(tx);
    const rows = await tx
      .deleteFrom('entry')
      .where('site', '=', site)
      .where('book', '=', 'class')
      .where('person', '=', person)
      .returning(['kind', 'round'])
      .execute();
    const persons = await forgetPersons(tx, site, [person]);
    for (const one of sessions) await deleteIfEmpty(tx, site, one);
    return deletedOf(rows, persons, 0);
  });
}

/**
 * Holds a session until the end of the transaction: whoever signs in it has either committed, and is seen, or waits
 * and finds it ended (see `wrongSessions`). Answers whether it is open.
 */
export async function holdSession(tx: Tx, site: string, session: string): Promise<boolean> {
  const row = await tx
    .selectFrom('entry')
    .select('id')
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('kind', '=', 'class-session')
    .where('id', '=', session)
    .forUpdate()
    .executeTakeFirst();
  return row !== undefined && !(await isEnded(tx, site, session));
}

async function isEnded(tx: Tx, site: string, session: string): Promise<boolean> {
  const row = await tx
    .selectFrom('entry')
    .select('id')
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('session', '=', session)
    .where('kind', '=', 'class-session-ended')
    .executeTakeFirst();
  return row !== undefined;
}

async function deleteSession(
  tx: Tx,
  site: string,
  session: string,
  kept: readonly string[],
): Promise<Deleted> {
  const people = await peopleOf(tx, site, session);
  await allowDeleting(tx);
  let deletion = tx
    .deleteFrom('entry')
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('session', '=', session);
  if (kept.length > 0)
    deletion = deletion.where((is) =>
      is.and([is('person', 'is not', null), is('person', 'not in', [...kept])]),
    );
  const rows = await deletion.returning(['kind', 'round']).execute();
  const gone = people.filter((person) => !kept.includes(person));
  return deletedOf(rows, await forgetPersons(tx, site, gone), kept.length);
}

/** What is about nobody in an ended session goes when nobody of it is left. */
async function deleteIfEmpty(tx: Tx, site: string, session: string): Promise<void> {
  const isLeft = (await peopleOf(tx, site, session)).length > 0;
  if (!isLeft && (await isEnded(tx, site, session))) await deleteSession(tx, site, session, []);
}

/** Removes people of the class book of whom no entry is left, with who they were and what was projected of them. */
async function forgetPersons(tx: Tx, site: string, persons: readonly string[]): Promise<number> {
  let forgotten = 0;
  for (const person of [...persons].sort()) {
    // Held first: whoever projects anew of this person is done, or waits and finds nobody.
    await tx
      .selectFrom('person')
      .select('id')
      .where('site', '=', site)
      .where('book', '=', 'class')
      .where('id', '=', person)
      .forUpdate()
      .execute();
    if ((await sessionsOf(tx, site, person)).length > 0) continue;
    for (const table of ['latest', 'identity'] as const) {
      await tx
        .deleteFrom(table)
        .where('site', '=', site)
        .where('book', '=', 'class')
        .where('person', '=', person)
        .execute();
    }
    const gone = await tx
      .deleteFrom('person')
      .where('site', '=', site)
      .where('book', '=', 'class')
      .where('id', '=', person)
      .returning('id')
      .execute();
    forgotten += gone.length;
  }
  return forgotten;
}

/** From here on this transaction may delete rows of the class book; the database allows it to no other. */
async function allowDeleting(tx: Tx): Promise<void> {
  await sql`set local evenfall.class_session_ended = 'yes'`.execute(tx);
}

async function peopleOf(db: Kysely<Tables>, site: string, session: string): Promise<string[]> {
  const rows = await db
    .selectFrom('entry')
    .select('person')
    .distinct()
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('session', '=', session)
    .execute();
  return rows.flatMap(({ person }) => (person === null ? [] : [person]));
}

/** The sessions in which something is kept of a person; in order, so that two who hold them never wait in a ring. */
async function sessionsOf(db: Kysely<Tables>, site: string, person: string): Promise<string[]> {
  const rows = await db
    .selectFrom('entry')
    .select('session')
    .distinct()
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('person', '=', person)
    .orderBy('session')
    .execute();
  return rows.map(({ session }) => session ?? '');
}

type Row = { readonly kind: string; readonly round: string | null };

/** Counts of what was deleted; the entry that said so is not one of them. */
function deletedOf(rows: readonly Row[], persons: number, kept: number): Deleted {
  const rounds = new Set(rows.flatMap(({ round }) => (round === null ? [] : [round]))).size;
  const entries = rows.filter(({ kind }) => kind !== 'class-session-ended').length;
  return { deleted: { persons, rounds, entries }, kept: { persons: kept } };
}

async function notOfSession(
  db: Kysely<Tables>,
  site: string,
  session: string,
  keep: readonly Incoming[],
): Promise<Refusal[]> {
  if (keep.length === 0) return [];
  const known = new Set(await peopleOf(db, site, session));
  return keep.flatMap(({ entry: { person } }, index) =>
    person !== null && known.has(person)
      ? []
      : [refusal(`/keep/${index}/person`, 'unknown-id', 'person-of-session', person)],
  );
}

function twice(keep: readonly Incoming[]): Refusal[] {
  const persons = keep.map(({ entry }) => entry.person);
  return persons.flatMap((person, index) =>
    persons.indexOf(person) === index
      ? []
      : [refusal(`/keep/${index}/person`, 'repeated', 'person-once', person)],
  );
}

/** What is refused of the entries taken together, at its place in the request. */
function inBody(refused: Refusal, kept: number): Refusal {
  const field = refused.field.replace(/^\/entries\/(\d+)/, (_, index: string) =>
    Number(index) < kept ? `/keep/${index}` : '/entry',
  );
  return { ...refused, field };
}
