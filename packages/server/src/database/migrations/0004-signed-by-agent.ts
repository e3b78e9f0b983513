import { type Kysely, sql } from 'kysely';

/** The newest thing that each agent signed is found without reading through the record. */
export async function up(db: Kysely<unknown>): Promise<void> {
  await sql`
    create index entry_signed_by on entry (site, agent, recorded_at)
    where kind in ('round', 'series') and amends is null`.execute(db);
}
