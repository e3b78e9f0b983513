import { type Kysely, sql } from 'kysely';

/**
 * Who signs in, on which device, and how often somebody guessed. No account is ever deleted: one that is not used any more
 * is closed, so that its name in the charts stays that of one agent. Sign-ins and guesses are forgotten when they end.
 */
export async function up(db: Kysely<unknown>): Promise<void> {
  await sql`
    create table account (
      site uuid not null,
      id uuid not null,
      agent uuid not null,
      sign_in text not null,
      roles jsonb not null check (jsonb_array_length(roles) > 0),
      phrase text not null,
      is_own_phrase boolean not null,
      pin text,
      recorded_at timestamptz(3) not null default now(),
      closed_at timestamptz(3),
      primary key (site, id),
      unique (site, sign_in),
      unique (site, agent),
      foreign key (site, agent) references agent (site, id)
    )`.execute(db);
  await sql`
    create table sign_in (
      site uuid not null,
      device text not null,
      account uuid not null,
      is_current boolean not null,
      wrong_pins integer not null default 0 check (wrong_pins >= 0),
      signed_at timestamptz(3) not null,
      seen_at timestamptz(3) not null,
      primary key (site, device, account),
      foreign key (site, account) references account (site, id)
    )`.execute(db);
  await sql`create unique index sign_in_current on sign_in (site, device) where is_current`.execute(db);
  await sql`
    create table sign_in_guess (
      site uuid not null references site (id),
      name text not null,
      wrong integer not null check (wrong > 0),
      since timestamptz(3) not null,
      primary key (site, name)
    )`.execute(db);
}
