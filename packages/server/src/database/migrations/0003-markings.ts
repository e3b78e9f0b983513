import { type Kysely, sql } from 'kysely';

/**
 * What a second person marks on another device while the cuff is let down, on its way to the device of the observer, and
 * how often somebody typed a wrong code. All of it is forgotten within minutes: what stays is in the run that is signed.
 */
export async function up(db: Kysely<unknown>): Promise<void> {
  await sql`
    create table marking (
      site uuid not null references site (id),
      id uuid not null,
      code text not null,
      marker uuid,
      turn integer not null default 0 check (turn >= 0),
      version integer not null default 0 check (version >= 0),
      marks jsonb not null default '[]',
      run_at_ms double precision,
      begun_at timestamptz(3) not null,
      heard_at timestamptz(3),
      primary key (site, id),
      unique (site, code),
      unique (site, marker)
    )`.execute(db);
  await sql`
    create table marking_guess (
      site uuid not null references site (id),
      asker text not null,
      wrong integer not null check (wrong >= 0),
      since timestamptz(3) not null,
      primary key (site, asker)
    )`.execute(db);
}
