import type { Entry } from '@evenfall/record';
import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import { readableIn } from './rows.js';

/** The entry that another of its book names by id, in the same request or kept already. */
export async function entryHere(
  tx: Kysely<Tables>,
  site: string,
  { book }: Entry,
  id: string,
  entries: readonly Entry[],
): Promise<Entry | undefined> {
  const sent = entries.find((one) => one.id === id && one.book === book);
  if (sent !== undefined) return sent;
  const row = await tx
    .selectFrom('entry')
    .selectAll()
    .where('site', '=', site)
    .where('book', '=', book)
    .where('id', '=', id)
    .executeTakeFirst();
  return readableIn(row);
}
