import { type Kysely, sql } from 'kysely';
import type { Tables } from '../database/schema.js';

/** Whether somebody may be asked to sign in: an account that is an owner's and is not closed. */
export async function hasOwner(db: Kysely<Tables>): Promise<boolean> {
  const { rows } = await sql<{ found: boolean }>`select exists(
    select 1 from account where roles @> '["owner"]' and closed_at is null) as found`.execute(db);
  return rows[0]?.found === true;
}
