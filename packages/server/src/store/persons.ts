import { type Refusal, refusal } from '@evenfall/clinical';
import {
  type AccountRole,
  type Book,
  CLASS_IDENTIFIERS,
  type ClassIdentity,
  type Entry,
  type Identity,
  identifiersOf,
  type StoredEntry,
  standingByRoles,
} from '@evenfall/record';
import { type Kysely, sql, type Transaction } from 'kysely';
import type { Tables } from '../database/schema.js';
import { contentHash } from './canonical.js';
import { holdSession } from './endClassSession.js';
import { frameOf, type ReadRows, readRows } from './rows.js';
import { type Incoming, type Taken, takeEntries } from './takeEntries.js';
import { wrongPseudonym } from './wrongPseudonym.js';

/** Where a person is kept: the site, the book, the id. */
export type Where = { readonly site: string; readonly book: Book; readonly person: string };

/**
 * Everything of one person that can be read, and how many entries cannot; null when there is no such person in this
 * book. `identity` is null once erased.
 */
export async function readPerson(db: Kysely<Tables>, where: Where) {
  const { site, book, person } = where;
  const found = await db
    .selectFrom('person')
    .select('id')
    .where('site', '=', site)
    .where('book', '=', book)
    .where('id', '=', person)
    .executeTakeFirst();
  if (found === undefined) return null;
  const { entries, unreadable } = await entriesOf(db, where);
  const agents = await agentsOf(db, site, entries);
  return { id: person, book, ...(await identitiesOf(db, where)), entries, unreadable, agents };
}

/** Who made entries, by name, and what the account of each says that they are. */
async function agentsOf(db: Kysely<Tables>, site: string, entries: readonly StoredEntry[]) {
  if (entries.length === 0) return [];
  const rows = await db
    .selectFrom('agent')
    .leftJoin('account', (join) =>
      join.onRef('account.site', '=', 'agent.site').onRef('account.agent', '=', 'agent.id'),
    )
    .select(['agent.id', 'agent.name', 'account.roles'])
    .where('agent.site', '=', site)
    .where('agent.id', 'in', [...new Set(entries.map(({ agent }) => agent))])
    .orderBy('agent.name')
    .orderBy('account.recorded_at', 'desc')
    .execute();
  // Of two accounts of one agent the newer one says what they are.
  const newest = new Map(rows.toReversed().map((one) => [one.id, one]));
  return rows
    .filter((one) => newest.get(one.id) === one)
    .map(({ id, name, roles }) => ({
      id,
      name,
      standing: roles === null ? null : standingByRoles(roles as AccountRole[]),
    }));
}

/** A person's entries in order of recording, and how many cannot be read. */
export async function entriesOf(db: Kysely<Tables>, { site, book, person }: Where): Promise<ReadRows> {
  const rows = await db
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', book)
    .where('person', '=', person)
    .orderBy('recorded_at')
    .orderBy('id')
    .execute();
  return readRows(rows);
}

/** A person's readable entries as they were sent, in order of recording. */
export async function framesOf(db: Kysely<Tables>, { site, book, person }: Where) {
  const rows = await db
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', book)
    .where('person', '=', person)
    .orderBy('recorded_at')
    .orderBy('id')
    .execute();
  return rows.map((row) => ({ frame: frameOf(row), recordedAt: row.recorded_at.toISOString() }));
}

/** Who a person is, as their book has it: two identifiers or more, or in the class book a pseudonym. */
async function identitiesOf(db: Kysely<Tables>, where: Where) {
  const newest = await newestIdentity(db, where);
  const isClass = where.book === 'class';
  return {
    identity: isClass ? null : (newest as Identity | null),
    classIdentity: isClass ? (newest as ClassIdentity | null) : null,
  };
}

/** Who a person is by the newest version of their identity; null once erased. */
export async function newestIdentity(
  db: Kysely<Tables>,
  { site, book, person }: Where,
): Promise<Identity | ClassIdentity | null> {
  const row = await db
    .selectFrom('identity')
    .select('content')
    .where('site', '=', site)
    .where('book', '=', book)
    .where('person', '=', person)
    .orderBy('version', 'desc')
    .executeTakeFirst();
  return row === undefined ? null : (row.content as Identity | ClassIdentity);
}

/** Adds a person: who they are, and the entry that says they exist. Safe to send again. */
export async function addPerson(
  db: Kysely<Tables>,
  where: Where,
  identity: Identity,
  incoming: Incoming,
  program: string,
): Promise<Taken> {
  return await addKnown(db, where, identity, identifiersOf(identity), incoming, program);
}

/** Adds a person of a class session, under a pseudonym and nothing else. Safe to send again. */
export async function addClassPerson(
  db: Kysely<Tables>,
  where: Where,
  session: string,
  identity: ClassIdentity,
  incoming: Incoming,
  program: string,
): Promise<Taken> {
  const { entry } = incoming;
  if (entry.session !== session) {
    const refusals = [refusal('/entry/session', 'contradicts', 'same-session', entry.session)];
    return { outcome: 'refused', refusals };
  }
  return await addKnown(db, where, identity, CLASS_IDENTIFIERS, incoming, program, {
    // One at a time: two people of a session never get one pseudonym.
    hold: (tx) => holdSession(tx, where.site, session),
    wrong: (tx) => wrongPseudonym(tx, where.site, session, where.person, identity),
  });
}

async function addKnown(
  db: Kysely<Tables>,
  where: Where,
  identity: Identity | ClassIdentity,
  identifiers: readonly string[],
  incoming: Incoming,
  program: string,
  also: {
    hold?: (tx: Transaction<Tables>) => Promise<unknown>;
    wrong?: (tx: Transaction<Tables>) => Promise<readonly Refusal[]>;
  } = {},
): Promise<Taken> {
  const refusals = [
    ...misplaced(where, incoming.entry, 'person'),
    ...(incoming.entry.kind === 'person'
      ? unlike(incoming.entry.content.identifiers, identifiers, 'identifiers')
      : []),
  ];
  if (refusals.length > 0) return { outcome: 'refused', refusals };
  const { site, book, person } = where;
  let isNew = false;
  const before = async (tx: Transaction<Tables>) => {
    await also.hold?.(tx);
    const made = await tx
      .insertInto('person')
      .values({ site, book, id: person })
      .onConflict((conflict) => conflict.columns(['site', 'book', 'id']).doNothing())
      .returning('id')
      .executeTakeFirst();
    isNew = made !== undefined;
  };
  const after = async (tx: Transaction<Tables>) => {
    // Who somebody is changes by a correction that says so, not by being added again.
    if (!isNew) return [refusal('/entry/person', 'repeated', 'new-id', person)];
    await keepIdentity(tx, where, identity);
    return (await also.wrong?.(tx)) ?? [];
  };
  const taken = await takeEntries(db, site, [incoming], program, { before, after });
  if (taken.outcome !== 'taken' || taken.entries.every(({ already }) => !already)) return taken;
  return (await isFirstIdentity(db, where, identity)) ? taken : clash('/identity');
}

/**
 * Puts an identity right: a new version beside the old, and the entry that says which parts changed. One that was
 * erased stays erased, also when a correction made before arrives after it from a device that was offline.
 */
export async function correctIdentity(
  db: Kysely<Tables>,
  where: Where,
  identity: Identity,
  incoming: Incoming,
  program: string,
): Promise<Taken> {
  const refusals = misplaced(where, incoming.entry, 'identity-corrected');
  if (refusals.length > 0) return { outcome: 'refused', refusals };
  const after = async (tx: Transaction<Tables>) => {
    if ((await newestIdentity(tx, where)) === null)
      return [refusal('/identity', 'contradicts', 'identity-not-erased', null)];
    await keepIdentity(tx, where, identity);
    return [];
  };
  return await takeEntries(db, where.site, [incoming], program, {
    before: (tx) => holdPerson(tx, where),
    after,
  });
}

/** Erases every version of an identity. The entries stay, and the entry that says it was done. */
export async function eraseIdentity(
  db: Kysely<Tables>,
  where: Where,
  incoming: Incoming,
  program: string,
): Promise<Taken> {
  const refusals = misplaced(where, incoming.entry, 'identity-erased');
  if (refusals.length > 0) return { outcome: 'refused', refusals };
  const { site, book, person } = where;
  const after = async (tx: Transaction<Tables>) => {
    await tx
      .deleteFrom('identity')
      .where('site', '=', site)
      .where('book', '=', book)
      .where('person', '=', person)
      .execute();
    return [];
  };
  return await takeEntries(db, site, [incoming], program, { before: (tx) => holdPerson(tx, where), after });
}

/** One change of an identity at a time: a correction never slips past an erasure under way, nor two into one version. */
async function holdPerson(tx: Transaction<Tables>, { site, book, person }: Where): Promise<void> {
  await tx
    .selectFrom('person')
    .select('id')
    .where('site', '=', site)
    .where('book', '=', book)
    .where('id', '=', person)
    .forUpdate()
    .execute();
}

/** Keeps a version of who a person is beside those before it. */
export async function keepIdentity(
  tx: Transaction<Tables>,
  { site, book, person }: Where,
  identity: Identity | ClassIdentity,
): Promise<void> {
  await tx
    .insertInto('identity')
    .values({
      site,
      book,
      person,
      version: sql<number>`(select coalesce(max(version), 0) + 1 from identity
        where site = ${site} and book = ${book} and person = ${person})`,
      content: JSON.stringify(identity),
    })
    .execute();
}

/** Whether the identity first kept is this one; also true when it was erased since, for then nothing can tell. */
async function isFirstIdentity(
  db: Kysely<Tables>,
  { site, book, person }: Where,
  identity: Identity | ClassIdentity,
): Promise<boolean> {
  const row = await db
    .selectFrom('identity')
    .select('content')
    .where('site', '=', site)
    .where('book', '=', book)
    .where('person', '=', person)
    .orderBy('version')
    .executeTakeFirst();
  return row === undefined || contentHash(row.content) === contentHash(identity);
}

function misplaced({ book, person }: Where, entry: Entry, kind: Entry['kind']): Refusal[] {
  const refusals: Refusal[] = [];
  if (entry.kind !== kind)
    refusals.push(refusal('/entry/kind', 'contradicts', 'choice', entry.kind, { choices: [kind] }));
  if (entry.book !== book)
    refusals.push(refusal('/entry/book', 'contradicts', 'choice', entry.book, { choices: [book] }));
  if (entry.person !== person)
    refusals.push(refusal('/entry/person', 'contradicts', 'same-person', entry.person));
  return refusals;
}

function unlike(given: readonly string[], had: readonly string[], field: string): Refusal[] {
  return [...given].sort().join() === [...had].sort().join()
    ? []
    : [refusal(`/entry/content/${field}`, 'contradicts', 'identifiers-of-identity', given, { choices: had })];
}

function clash(field: string): Taken {
  return { outcome: 'conflict', refusals: [refusal(field, 'contradicts', 'same-content', null)] };
}
