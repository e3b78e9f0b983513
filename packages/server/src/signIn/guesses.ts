import { createHash } from 'node:crypto';
import { type Kysely, sql } from 'kysely';
import type { Tables } from '../database/schema.js';
import { SIGN_IN } from './figures.js';

/**
 * Counts one more try to sign in with a name, before it is looked at, whether or not anybody has that name. Answers how many
 * seconds to wait; 0 when it may be looked at. Names are kept as hashes: a pass phrase may have been typed for one.
 */
export async function countGuess(db: Kysely<Tables>, site: string, name: string, now: Date): Promise<number> {
  const since = new Date(now.getTime() - SIGN_IN.wrongPhrasesWithinMinutes * 60_000);
  await db.deleteFrom('sign_in_guess').where('site', '=', site).where('since', '<=', since).execute();
  const row = await db
    .insertInto('sign_in_guess')
    .values({ site, name: hashed(name), wrong: 1, since: now })
    .onConflict((conflict) =>
      conflict.columns(['site', 'name']).doUpdateSet({ wrong: sql<number>`sign_in_guess.wrong + 1` }),
    )
    .returning(['wrong', 'since'])
    .executeTakeFirstOrThrow();
  if (row.wrong <= SIGN_IN.wrongPhrasesAtMost) return 0;
  const until = row.since.getTime() + SIGN_IN.wrongPhrasesWithinMinutes * 60_000;
  return Math.max(1, Math.ceil((until - now.getTime()) / 1000));
}

/** The right pass phrase was given: the wrong ones before it do not count any more. */
export async function forgetGuesses(db: Kysely<Tables>, site: string, name: string): Promise<void> {
  await db.deleteFrom('sign_in_guess').where('site', '=', site).where('name', '=', hashed(name)).execute();
}

const hashed = (name: string) => createHash('sha256').update(name.toLowerCase()).digest('hex');
