import { type Kysely, sql, type Transaction } from 'kysely';
import type { Tables } from './schema.js';

/** Runs in a transaction of its own, or as a part of the one that is open, which goes on where that part failed. */
export async function within<T>(
  db: Kysely<Tables>,
  work: (tx: Transaction<Tables>) => Promise<T>,
): Promise<T> {
  if (!db.isTransaction) return await db.transaction().execute(work);
  const tx = db as Transaction<Tables>;
  await sql`savepoint part`.execute(tx);
  try {
    const done = await work(tx);
    await sql`release savepoint part`.execute(tx);
    return done;
  } catch (error) {
    await sql`rollback to savepoint part`.execute(tx);
    throw error;
  }
}
