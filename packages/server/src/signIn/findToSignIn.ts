import type { Kysely } from 'kysely';
import type { Tables } from '../database/schema.js';
import type { Checked } from './signIns.js';

/** The account that has that name to sign in with, and the hash of its pass phrase; null for nobody, or a closed one. */
export async function findToSignIn(db: Kysely<Tables>, site: string, name: string): Promise<Checked | null> {
  const row = await db
    .selectFrom('account')
    .select(['id', 'phrase'])
    .where('site', '=', site)
    .where('sign_in', '=', name.toLowerCase())
    .where('closed_at', 'is', null)
    .executeTakeFirst();
  return row ?? null;
}
