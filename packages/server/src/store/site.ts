import { type Kysely, sql } from 'kysely';
import type { Tables } from '../database/schema.js';
import { StartRefused } from '../start/startRefused.js';

/** The place whose record this is. `invented` marks a demo: nobody in it is real, and every page says so. */
export type Site = { readonly id: string; readonly name: string; readonly invented: boolean };

/**
 * The database's site, made at the first start with the id given.
 *
 * Errors: `site-other-purpose` when a record of invented people is opened as a real one or the other way round.
 */
export async function openSite(db: Kysely<Tables>, wanted: Site): Promise<Site> {
  const kept = await readSite(db);
  const site = kept ?? (await createSite(db, wanted));
  if (site.invented !== wanted.invented) {
    throw new StartRefused('site-other-purpose', '--demo');
  }
  return site;
}

/** The site kept in this database; null before the first start. */
export async function readSite(db: Kysely<Tables>): Promise<Site | null> {
  const row = await db
    .selectFrom('site')
    .select(['id', 'name', 'invented'])
    .orderBy('recorded_at')
    .executeTakeFirst();
  return row ?? null;
}

async function createSite(db: Kysely<Tables>, wanted: Site): Promise<Site> {
  // Two servers that start at once on one database must agree on one site.
  return await db.transaction().execute(async (tx) => {
    await sql`lock table site in exclusive mode`.execute(tx);
    const kept = await readSite(tx);
    if (kept !== null) return kept;
    await tx
      .insertInto('site')
      .values({ ...wanted })
      .execute();
    return wanted;
  });
}
