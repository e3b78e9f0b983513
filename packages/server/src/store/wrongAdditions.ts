import type { Refusal } from '@evenfall/clinical';
import { barredAdding, type Entry, type StoredEntry } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import { LAST, readRows } from './rows.js';
import type { Incoming } from './takeEntries.js';

/**
 * What is wrong with series that go on with another, as `barredAdding` says. What comes from another record was let in there; and
 * one that is kept already is answered as ever, whatever was added to it since.
 */
export async function wrongAdditions(
  tx: Kysely<Tables>,
  site: string,
  incoming: readonly Incoming[],
): Promise<Refusal[]> {
  const refusals: Refusal[] = [];
  for (const [index, { entry, recordedAt }] of incoming.entries()) {
    if (entry.kind !== 'series' || entry.amends === null || recordedAt !== undefined) continue;
    const kept = await ofPerson(tx, site, entry);
    if (kept.some(({ id }) => id === entry.id)) continue;
    const sent = incoming
      .slice(0, index)
      .filter(({ entry: { book, person } }) => book === entry.book && person === entry.person)
      .map((one): StoredEntry => ({ ...one.entry, recordedAt: LAST }));
    const barred = barredAdding(entry, [...kept, ...sent]);
    refusals.push(...barred.map((one) => ({ ...one, field: `/entries/${index}${one.field}` })));
  }
  return refusals;
}

async function ofPerson(tx: Kysely<Tables>, site: string, { book, person }: Entry) {
  const rows = await tx
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', book)
    .where('person', '=', person)
    .where('kind', 'in', ['series', 'countersigned', 'entered-in-error'])
    .execute();
  return readRows(rows).entries;
}
