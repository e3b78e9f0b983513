import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';

/** Whether anything was ever kept in a record; a new one holds its own site and nothing else. */
export async function holdsAnything(db: Kysely<Tables>): Promise<boolean> {
  for (const table of ['agent', 'person', 'entry', 'protocol'] as const) {
    const row = await db.selectFrom(table).select('site').limit(1).executeTakeFirst();
    if (row !== undefined) return true;
  }
  return false;
}
