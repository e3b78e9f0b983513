import { type Kysely, type Migration, Migrator } from 'kysely';
import * as record from './0001-record.js';
import * as accounts from './0002-accounts.js';
import * as markings from './0003-markings.js';
import * as signedByAgent from './0004-signed-by-agent.js';

/** Every migration by number. One that has landed never changes; the next change gets the next number. */
const MIGRATIONS: Record<string, Migration> = {
  '0001-record': record,
  '0002-accounts': accounts,
  '0003-markings': markings,
  '0004-signed-by-agent': signedByAgent,
};

/** The newest schema of the database, as backups and refusals name it. */
export const NEWEST_MIGRATION = Object.keys(MIGRATIONS).at(-1) as string;

/**
 * Brings the database up to date. Several servers may call it at once: it takes the migrator's lock.
 *
 * Errors: throws when a migration fails or when the database was made by a newer program.
 */
export async function migrate<T>(db: Kysely<T>): Promise<void> {
  const migrator = new Migrator({ db, provider: { getMigrations: async () => MIGRATIONS } });
  const { error } = await migrator.migrateToLatest();
  if (error !== undefined) throw error;
}
