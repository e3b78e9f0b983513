import { type Refusal, refusal } from '@evenfall/clinical';
import {
  type ClassIdentity,
  type ClassSessionContent,
  classSessionGoneAt,
  type Entry,
} from '@evenfall/record';
import { type Kysely, sql, type Transaction } from 'kysely';
import type { Tables } from '../database/schema.js';
import { entryOf } from './rows.js';
import { type Incoming, type Taken, takeEntries } from './takeEntries.js';

/** A class session that is open. Instants RFC 3339. */
export type OpenSession = {
  readonly id: string;
  readonly title: string;
  readonly agent: string;
  readonly begunAt: string;
  readonly endsBy: string;
  readonly isOverdue: boolean;
  readonly goneAt: string;
  readonly persons: number;
  readonly rounds: number;
};

/** How much was deleted, and of how many people something stays. */
export type Deleted = {
  readonly deleted: { readonly persons: number; readonly rounds: number; readonly entries: number };
  readonly kept: { readonly persons: number };
};

const NOTHING_DELETED: Deleted = { deleted: { persons: 0, rounds: 0, entries: 0 }, kept: { persons: 0 } };

/** The sessions that were begun and not ended, oldest first. */
export async function openSessions(db: Kysely<Tables>, site: string, now: Date): Promise<OpenSession[]> {
  const rows = await db
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('kind', 'in', ['class-session', 'class-session-ended'])
    .where('session', 'is not', null)
    .orderBy('recorded_at')
    .orderBy('id')
    .execute();
  const ended = new Set(
    rows.filter(({ kind }) => kind === 'class-session-ended').map(({ session }) => session),
  );
  const begun = rows.filter(({ kind, session }) => kind === 'class-session' && !ended.has(session));
  const counts = await countsOf(db, site);
  return begun.map((row) => {
    const { title, endsBy } = (entryOf(row) as Entry).content as ClassSessionContent;
    const count = counts.get(row.id) ?? { persons: 0, rounds: 0 };
    return {
      id: row.id,
      title,
      agent: row.agent,
      begunAt: row.recorded_at.toISOString(),
      endsBy,
      isOverdue: Date.parse(endsBy) <= now.getTime(),
      goneAt: classSessionGoneAt(endsBy),
      ...count,
    };
  });
}

async function countsOf(db: Kysely<Tables>, site: string) {
  const rows = await db
    .selectFrom('entry')
    .select(['session'])
    .select(sql<number>`count(distinct person)::int`.as('persons'))
    .select(sql<number>`count(distinct round)::int`.as('rounds'))
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('session', 'is not', null)
    .groupBy('session')
    .execute();
  return new Map(rows.map(({ session, persons, rounds }) => [session, { persons, rounds }]));
}

/** An open session with its people; null where none is open under that id. */
export async function readSession(db: Kysely<Tables>, site: string, id: string, now: Date) {
  const session = (await openSessions(db, site, now)).find((one) => one.id === id);
  if (session === undefined) return null;
  const rows = await db
    .selectFrom('entry')
    .innerJoin('identity', (join) =>
      join
        .onRef('identity.site', '=', 'entry.site')
        .onRef('identity.book', '=', 'entry.book')
        .onRef('identity.person', '=', 'entry.person'),
    )
    .select(['entry.person', 'identity.content'])
    .select(sql<number>`count(distinct entry.round)::int`.as('rounds'))
    .where('entry.site', '=', site)
    .where('entry.book', '=', 'class')
    .where('entry.session', '=', id)
    .groupBy(['entry.person', 'identity.content'])
    .orderBy(sql`lower(identity.content ->> 'pseudonym')`)
    .execute();
  const persons = rows.map(({ person, content, rounds }) => ({
    id: person as string,
    classIdentity: content as ClassIdentity,
    rounds,
  }));
  return { session, persons };
}

/** Begins a session: the entry's id is the session's. Safe to send again. */
export async function beginSession(
  db: Kysely<Tables>,
  site: string,
  incoming: Incoming,
  program: string,
): Promise<Taken> {
  const wrong = ofKind(incoming.entry, 'class-session', '/entry');
  if (wrong.length > 0) return { outcome: 'refused', refusals: wrong };
  return await takeEntries(db, site, [incoming], program);
}

/**
 * Ends a session: everything of it is deleted, rows of the projection and identities with it, but what both teacher
 * and person agreed to keep. Where nobody's data stay, nothing at all of the session stays, not even that it was.
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
): Promise<{ outcome: 'ended'; deleted: Deleted } | Exclude<Taken, { outcome: 'taken' }>> {
  const refusals = [
    ...ofKind(ended.entry, 'class-session-ended', '/entry'),
    ...ofSession(ended.entry, session, '/entry'),
    ...keep.flatMap(({ entry }, index) => [
      ...ofKind(entry, 'kept-by-agreement', `/keep/${index}`),
      ...ofSession(entry, session, `/keep/${index}`),
    ]),
  ];
  if (refusals.length > 0) return { outcome: 'refused', refusals };
  if (keep.length > 0) {
    const strangers = await notOfSession(db, site, session, keep);
    if (strangers.length > 0) return { outcome: 'refused', refusals: strangers };
    let deleted = NOTHING_DELETED;
    const taken = await takeEntries(db, site, [...keep, ended], program, {
      // In one transaction: what is agreed to be kept is never deleted, and what is not never outlives the end.
      after: async (tx) => {
        const kept = keep.map(({ entry }) => entry.person ?? '');
        deleted = await deleteSession(await allowed(tx), site, session, kept);
        return [];
      },
    });
    return taken.outcome === 'taken' ? { outcome: 'ended', deleted } : taken;
  }
  const deleted = await deleting(db, (tx) => deleteSession(tx, site, session, []));
  return { outcome: 'ended', deleted };
}

/** Ends the sessions that nobody ended in time; nothing of them stays. Answers how many. */
export async function endForgotten(db: Kysely<Tables>, site: string, now: Date): Promise<number> {
  const gone = (await openSessions(db, site, now)).filter(
    ({ goneAt }) => Date.parse(goneAt) <= now.getTime(),
  );
  for (const { id } of gone) await deleting(db, (tx) => deleteSession(tx, site, id, []));
  return gone.length;
}

/** Deletes everything of a person of the class book, also what was kept by agreement. */
export async function withdraw(db: Kysely<Tables>, site: string, person: string): Promise<Deleted> {
  return await deleting(db, async (tx) => {
    const rows = await tx
      .deleteFrom('entry')
      .where('site', '=', site)
      .where('book', '=', 'class')
      .where('person', '=', person)
      .returning(['round'])
      .execute();
    const persons = await forgetPersons(tx, site, [person]);
    return deletedOf(rows, persons, 0);
  });
}

async function deleteSession(
  tx: Transaction<Tables>,
  site: string,
  session: string,
  kept: readonly string[],
): Promise<Deleted> {
  const people = await tx
    .selectFrom('entry')
    .select('person')
    .distinct()
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('session', '=', session)
    .where('person', 'is not', null)
    .execute();
  const gone = people.map(({ person }) => person as string).filter((person) => !kept.includes(person));
  let deletion = tx
    .deleteFrom('entry')
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('session', '=', session);
  if (kept.length > 0)
    deletion = deletion.where((is) =>
      is.and([is('person', 'is not', null), is('person', 'not in', [...kept])]),
    );
  const rows = await deletion.returning(['round']).execute();
  const persons = await forgetPersons(tx, site, gone);
  return deletedOf(rows, persons, kept.length);
}

/** Removes people of the class book of whom no entry is left, with who they were and what was projected of them. */
async function forgetPersons(
  tx: Transaction<Tables>,
  site: string,
  persons: readonly string[],
): Promise<number> {
  let forgotten = 0;
  for (const person of persons) {
    const left = await tx
      .selectFrom('entry')
      .select('id')
      .where('site', '=', site)
      .where('book', '=', 'class')
      .where('person', '=', person)
      .executeTakeFirst();
    if (left !== undefined) continue;
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

/** A transaction that may delete rows of the class book: it says so, and the database allows it to no other. */
async function deleting(
  db: Kysely<Tables>,
  work: (tx: Transaction<Tables>) => Promise<Deleted>,
): Promise<Deleted> {
  return await db.transaction().execute(async (tx) => {
    return await work(await allowed(tx));
  });
}

async function allowed(tx: Transaction<Tables>): Promise<Transaction<Tables>> {
  await sql`set local evenfall.class_session_ended = 'yes'`.execute(tx);
  return tx;
}

function deletedOf(rows: readonly { round: string | null }[], persons: number, kept: number): Deleted {
  const rounds = new Set(rows.flatMap(({ round }) => (round === null ? [] : [round]))).size;
  if (rows.length === 0 && persons === 0) return { ...NOTHING_DELETED, kept: { persons: kept } };
  return { deleted: { persons, rounds, entries: rows.length }, kept: { persons: kept } };
}

async function notOfSession(
  db: Kysely<Tables>,
  site: string,
  session: string,
  keep: readonly Incoming[],
): Promise<Refusal[]> {
  const rows = await db
    .selectFrom('entry')
    .select('person')
    .distinct()
    .where('site', '=', site)
    .where('book', '=', 'class')
    .where('session', '=', session)
    .execute();
  const known = new Set(rows.map(({ person }) => person));
  return keep.flatMap(({ entry }, index) =>
    known.has(entry.person)
      ? []
      : [refusal(`/keep/${index}/person`, 'unknown-id', 'person-of-session', entry.person)],
  );
}

function ofKind({ kind }: Entry, wanted: Entry['kind'], at: string): Refusal[] {
  return kind === wanted ? [] : [refusal(`${at}/kind`, 'contradicts', 'choice', kind, { choices: [wanted] })];
}

function ofSession(entry: Entry, session: string, at: string): Refusal[] {
  return entry.session === session
    ? []
    : [refusal(`${at}/session`, 'contradicts', 'same-session', entry.session)];
}
