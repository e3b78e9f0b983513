import { type Kysely, sql } from 'kysely';
import type { Tables } from '../database/schema.js';
import { MARKING } from './figures.js';

/**
 * Counts one more try of an account to join by a code, before it is looked at. Answers how many seconds to wait; 0 when it
 * may be looked at.
 */
export async function countTry(db: Kysely<Tables>, site: string, asker: string, now: Date): Promise<number> {
  const since = new Date(now.getTime() - MARKING.wrongCodesWithinMinutes * 60_000);
  await db.deleteFrom('marking_guess').where('site', '=', site).where('since', '<=', since).execute();
  const row = await db
    .insertInto('marking_guess')
    .values({ site, asker, wrong: 1, since: now })
    .onConflict((conflict) =>
      conflict.columns(['site', 'asker']).doUpdateSet({ wrong: sql<number>`marking_guess.wrong + 1` }),
    )
    .returning(['wrong', 'since'])
    .executeTakeFirstOrThrow();
  if (row.wrong <= MARKING.wrongCodesAtMost) return 0;
  const until = row.since.getTime() + MARKING.wrongCodesWithinMinutes * 60_000;
  return Math.max(1, Math.ceil((until - now.getTime()) / 1000));
}

/** The code was right: this try was no guess. Those before it still count. */
export async function uncountTry(db: Kysely<Tables>, site: string, asker: string): Promise<void> {
  await db
    .updateTable('marking_guess')
    .set({ wrong: sql<number>`greatest(wrong - 1, 0)` })
    .where('site', '=', site)
    .where('asker', '=', asker)
    .execute();
}
