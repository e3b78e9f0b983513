import {
  type Book,
  type ClassIdentity,
  type Identity,
  type Latest,
  projectLatest,
  type RulesOf,
} from '@evenfall/record';
import { type Kysely, sql } from 'kysely';
import type { Tables } from '../database/schema.js';
import { entriesOf } from './persons.js';
import { keptProtocols } from './protocols.js';

/** Grows whenever `projectLatest` would give something else from the same entries; older rows are then rebuilt. */
export const LATEST_PROJECTION = 19;

/** A person of a book with the newest value of each sign. */
export type ListedPerson = {
  readonly id: string;
  readonly identity: Identity | null;
  readonly classIdentity: ClassIdentity | null;
  readonly latest: Latest;
  /** How many of their entries cannot be read, and are left out of `latest`. */
  readonly unreadable: number;
};

/** What is kept of a projection. How many entries were left out stands beside it where there are any. */
type Projected = Latest & { readonly unreadable?: number };

/** The people of a book by name, those without one last. Rows of the projection that are missing are rebuilt first. */
export async function listPersons(db: Kysely<Tables>, site: string, book: Book): Promise<ListedPerson[]> {
  await rebuildLatest(db, site, book);
  const { rows } = await sql<{ id: string; identity: unknown; latest: Projected | null }>`
    select person.id, identity.content as identity, latest.content as latest
    from person
    left join latest on latest.site = person.site and latest.book = person.book and latest.person = person.id
    left join lateral (
      select content from identity
      where identity.site = person.site and identity.book = person.book and identity.person = person.id
      order by version desc limit 1
    ) identity on true
    where person.site = ${site} and person.book = ${book}
    order by lower(coalesce(identity.content ->> 'name', identity.content ->> 'pseudonym')) nulls last, person.id`.execute(
    db,
  );
  const listed: ListedPerson[] = [];
  for (const { id, identity, latest } of rows) {
    // Written to between the two queries: what is projected is gone again, and is made here for this once.
    const made = latest ?? (await projected(db, { site, book, person: id }, NO_RULES)).latest;
    const { unreadable = 0, ...newest } = made;
    listed.push({
      id,
      identity: book === 'class' ? null : (identity as Identity | null),
      classIdentity: book === 'class' ? (identity as ClassIdentity | null) : null,
      latest: newest,
      unreadable,
    });
  }
  return listed;
}

/** No version is at hand before it is asked for. */
const NO_RULES: RulesOf = () => null;

/**
 * What is kept of a person, each round judged by the protocol that it names; and from how many entries.
 *
 * @param known rules that are at hand; of a version that is not among them they are asked for
 */
async function projected(
  db: Kysely<Tables>,
  where: { site: string; book: Book; person: string },
  known: RulesOf,
): Promise<{ latest: Projected; entries: number }> {
  const { entries, unreadable } = await entriesOf(db, where);
  const named = entries.flatMap((entry) => {
    if (entry.kind === 'series') return [entry.content.computedBy.presetVersion];
    return entry.kind === 'round' ? [entry.content.protocolVersion] : [];
  });
  const isAtHand = named.every((version) => known(version) !== null);
  const rulesOf = isAtHand ? known : await keptProtocols(db, where.site, named);
  const latest = projectLatest(entries, rulesOf);
  return { latest: unreadable === 0 ? latest : { ...latest, unreadable }, entries: entries.length };
}

/**
 * Rebuilds what is missing or older than this program of the projection, from entries alone. A write removes the
 * row of its person before it commits, and rebuilding waits for it (see `takeEntries`), so a row that is there is true.
 */
export async function rebuildLatest(db: Kysely<Tables>, site: string, book: Book): Promise<number> {
  const stale = await db
    .selectFrom('person')
    .leftJoin('latest', (join) =>
      join
        .onRef('latest.site', '=', 'person.site')
        .onRef('latest.book', '=', 'person.book')
        .onRef('latest.person', '=', 'person.id')
        .on('latest.projection', '=', LATEST_PROJECTION),
    )
    .select('person.id')
    .where('person.site', '=', site)
    .where('person.book', '=', book)
    .where('latest.person', 'is', null)
    .orderBy('person.id')
    .execute();
  // Protocols never change: they are read once for all people.
  const known = stale.length === 0 ? NO_RULES : await keptProtocols(db, site);
  for (const { id } of stale) await rebuildOne(db, { site, book, person: id }, known);
  return stale.length;
}

async function rebuildOne(
  db: Kysely<Tables>,
  where: { site: string; book: Book; person: string },
  known: RulesOf,
): Promise<void> {
  const { site, book, person } = where;
  await db.transaction().execute(async (tx) => {
    const held = await tx
      .selectFrom('person')
      .select('id')
      .where('site', '=', site)
      .where('book', '=', book)
      .where('id', '=', person)
      .forUpdate()
      .executeTakeFirst();
    // Gone with a class session that was ended meanwhile.
    if (held === undefined) return;
    const { latest, entries } = await projected(tx, where, known);
    const content = JSON.stringify(latest);
    await tx
      .insertInto('latest')
      .values({ site, book, person, entries, projection: LATEST_PROJECTION, content })
      .onConflict((conflict) =>
        conflict
          .columns(['site', 'book', 'person'])
          .doUpdateSet({ entries, projection: LATEST_PROJECTION, content }),
      )
      .execute();
  });
}
