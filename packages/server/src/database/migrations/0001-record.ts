import { type Kysely, sql } from 'kysely';

/**
 * The record: entries that never change, identities that can be erased, protocols by hash, and the one
 * projection. The database itself refuses to change or delete an entry.
 */
export async function up(db: Kysely<unknown>): Promise<void> {
  await sql`
    create table site (
      id uuid primary key,
      name text not null,
      invented boolean not null,
      recorded_at timestamptz(3) not null default now()
    )`.execute(db);
  await sql`
    create table agent (
      site uuid not null references site (id),
      id uuid not null,
      name text not null,
      recorded_at timestamptz(3) not null default now(),
      primary key (site, id)
    )`.execute(db);
  await sql`
    create table person (
      site uuid not null references site (id),
      book text not null check (book in ('care', 'class', 'simulated')),
      id uuid not null,
      recorded_at timestamptz(3) not null default now(),
      primary key (site, book, id)
    )`.execute(db);
  await sql`
    create table identity (
      site uuid not null,
      book text not null,
      person uuid not null,
      version integer not null check (version > 0),
      content jsonb not null,
      recorded_at timestamptz(3) not null default now(),
      primary key (site, book, person, version),
      foreign key (site, book, person) references person (site, book, id)
    )`.execute(db);
  await sql`
    create table entry (
      site uuid not null,
      book text not null check (book in ('care', 'class', 'simulated')),
      id uuid not null,
      frame integer not null default 1 check (frame > 0),
      kind text not null,
      schema integer not null check (schema > 0),
      person uuid,
      round uuid,
      session uuid,
      agent uuid not null,
      role text not null,
      device uuid not null,
      sequence bigint not null check (sequence >= 0),
      measured_at timestamptz(3) not null,
      measured_text text not null,
      zone text not null,
      as_entered text,
      written_at timestamptz(3) not null,
      written_text text not null,
      amends uuid,
      amends_reason text,
      amends_text text,
      content jsonb not null,
      sha256 text not null,
      recorded_at timestamptz(3) not null default now(),
      primary key (site, book, id),
      foreign key (site) references site (id),
      foreign key (site, book, person) references person (site, book, id),
      foreign key (site, agent) references agent (site, id),
      foreign key (site, book, amends) references entry (site, book, id) deferrable initially immediate,
      check ((amends is null) = (amends_reason is null))
    )`.execute(db);
  await sql`create index entry_by_person on entry (site, book, person, measured_at)`.execute(db);
  await sql`create index entry_of_place on entry (site, book, kind, recorded_at) where person is null`.execute(
    db,
  );
  await sql`create index entry_of_session on entry (site, book, session) where session is not null`.execute(
    db,
  );
  await sql`
    create table protocol (
      site uuid not null references site (id),
      version text not null,
      content jsonb not null,
      recorded_at timestamptz(3) not null default now(),
      primary key (site, version)
    )`.execute(db);
  await sql`
    create table latest (
      site uuid not null,
      book text not null,
      person uuid not null,
      entries integer not null,
      projection integer not null,
      content jsonb not null,
      primary key (site, book, person),
      foreign key (site, book, person) references person (site, book, id)
    )`.execute(db);

  // A row of the class book may be deleted at the end of its session, by a transaction that says so.
  await sql`
    create function evenfall_append_only() returns trigger language plpgsql as $$
    begin
      if tg_op = 'DELETE' and tg_table_name in ('entry', 'person') then
        if old.book = 'class' and current_setting('evenfall.class_session_ended', true) = 'yes' then
          return old;
        end if;
      end if;
      raise exception 'evenfall: % of % is refused; a correction is an amendment', lower(tg_op), tg_table_name
        using errcode = 'restrict_violation';
    end $$`.execute(db);
  for (const table of ['entry', 'protocol', 'person']) {
    await sql`
      create trigger append_only before update or delete on ${sql.table(table)}
      for each row execute function evenfall_append_only()`.execute(db);
    await sql`
      create trigger append_only_whole before truncate on ${sql.table(table)}
      for each statement execute function evenfall_append_only()`.execute(db);
  }
  // An identity is never changed in place either; erasing one deletes all its versions.
  await sql`
    create trigger append_only before update on identity
    for each row execute function evenfall_append_only()`.execute(db);
}
