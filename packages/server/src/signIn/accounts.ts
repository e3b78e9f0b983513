import { type Refusal, refusal } from '@evenfall/clinical';
import { type AccountRole, id } from '@evenfall/record';
import { type Kysely, sql, type Transaction } from 'kysely';
import type { Tables } from '../database/schema.js';
import { addAgent } from '../store/agents.js';
import { hashOf } from './secret.js';
import { wrongPhrase } from './secretRules.js';
import type { Checked } from './signIns.js';

/** An account as everybody who administers may see it: never its secrets. */
export type Account = {
  readonly id: string;
  readonly agent: { readonly id: string; readonly name: string };
  readonly signIn: string;
  readonly roles: readonly AccountRole[];
  /** False until its user chose a pass phrase of their own. */
  readonly isOwnPhrase: boolean;
  readonly hasPin: boolean;
  readonly madeAt: string;
  readonly closedAt: string | null;
};

/** A new account, for an agent that is kept already or for a new one. */
export type NewAccount = {
  readonly id: string;
  readonly agent: { readonly id: string; readonly name: string };
  readonly signIn: string;
  readonly roles: readonly AccountRole[];
  readonly passPhrase: string;
};

/** What may be changed of an account by an owner; what is absent stays. */
export type AccountChange = {
  readonly roles?: readonly AccountRole[];
  readonly isClosed?: boolean;
  /** A first pass phrase again: its user chooses another at the next sign-in. */
  readonly passPhrase?: string;
};

export type Changed =
  | { readonly ok: true; readonly account: Account; readonly already: boolean }
  | { readonly ok: false; readonly status: 404 | 409 | 422; readonly refusals: readonly Refusal[] };

type Db = Kysely<Tables>;

/** Whether anybody has to sign in here: an account was made that is not closed. */
export async function needsSignIn(db: Db, site: string): Promise<boolean> {
  const row = await db
    .selectFrom('account')
    .select('id')
    .where('site', '=', site)
    .where('closed_at', 'is', null)
    .limit(1)
    .executeTakeFirst();
  return row !== undefined;
}

/** Every account, by name; closed ones too. */
export async function listAccounts(db: Db, site: string): Promise<Account[]> {
  const rows = await accountRows(db, site).orderBy('agent.name').orderBy('account.id').execute();
  return rows.map(accountOf);
}

export async function readAccount(db: Db, site: string, id: string): Promise<Account | null> {
  const row = await accountRows(db, site).where('account.id', '=', id).executeTakeFirst();
  return row === undefined ? null : accountOf(row);
}

/** The accounts among these that are closed. */
export async function closedAmong(db: Db, site: string, ids: readonly string[]): Promise<string[]> {
  const wanted = ids.filter((one) => id.safeParse(one).success);
  if (wanted.length === 0) return [];
  const rows = await db
    .selectFrom('account')
    .select('id')
    .where('site', '=', site)
    .where('id', 'in', wanted)
    .where('closed_at', 'is not', null)
    .orderBy('id')
    .execute();
  return rows.map((row) => row.id);
}

/**
 * Makes an account. The same id with the same content is answered with what is kept.
 *
 * Errors: the agent's id with another name (409), a name to sign in with or an agent that has an account (409), the first
 * account without the role of owner (422), a pass phrase that may not be one (422).
 */
export async function addAccount(db: Db, site: string, wanted: NewAccount): Promise<Changed> {
  const signIn = wanted.signIn.toLowerCase();
  const wrong = wrongPhrase(wanted.passPhrase, [wanted.signIn, wanted.agent.name], '/passPhrase');
  if (wrong.length > 0) return { ok: false, status: 422, refusals: wrong };
  const phrase = await hashOf(wanted.passPhrase);
  return await alone(db, async (tx) => {
    const kept = await readAccount(tx, site, wanted.id);
    if (kept !== null) {
      const isSame = kept.signIn === signIn && kept.agent.id === wanted.agent.id;
      return isSame
        ? { ok: true, account: kept, already: true }
        : refused(409, '/id', 'contradicts', 'same-content', wanted.id);
    }
    if (!wanted.roles.includes('owner') && !(await hasOwners(tx, site, null)))
      return refused(422, '/roles', 'contradicts', 'an-owner-first', wanted.roles.join(', '));
    const others = await accountRows(tx, site)
      .where((is) => is.or([is('account.sign_in', '=', signIn), is('account.agent', '=', wanted.agent.id)]))
      .execute();
    if (others.some((one) => one.sign_in === signIn))
      return refused(409, '/signIn', 'repeated', 'new-sign-in-name', wanted.signIn);
    if (others.length > 0)
      return refused(409, '/agent/id', 'repeated', 'agent-without-account', wanted.agent.name);
    if ((await addAgent(tx, site, wanted.agent)) === 'conflict')
      return refused(409, '/agent/name', 'contradicts', 'same-content', wanted.agent.name);
    await tx
      .insertInto('account')
      .values({
        site,
        id: wanted.id,
        agent: wanted.agent.id,
        sign_in: signIn,
        roles: JSON.stringify(wanted.roles),
        phrase,
        is_own_phrase: false,
        pin: null,
      })
      .execute();
    return changed(tx, site, wanted.id);
  });
}

/**
 * Changes an account; a closed one, or one with a new first pass phrase, is signed out everywhere.
 *
 * Errors: no such account (404); the last owner cannot lose the role or be closed (409); a pass phrase that may not be one.
 */
export async function changeAccount(
  db: Db,
  site: string,
  id: string,
  change: AccountChange,
): Promise<Changed> {
  const was = await readAccount(db, site, id);
  if (was === null) return { ok: false, status: 404, refusals: [] };
  const { passPhrase } = change;
  const wrong =
    passPhrase === undefined ? [] : wrongPhrase(passPhrase, [was.signIn, was.agent.name], '/passPhrase');
  if (wrong.length > 0) return { ok: false, status: 422, refusals: wrong };
  const phrase = passPhrase === undefined ? null : await hashOf(passPhrase);
  return await alone(db, async (tx) => {
    const now = await readAccount(tx, site, id);
    if (now === null) return { ok: false, status: 404, refusals: [] };
    const roles = change.roles ?? now.roles;
    const isClosed = change.isClosed ?? now.closedAt !== null;
    const staysOwner = roles.includes('owner') && !isClosed;
    if (!staysOwner && !(await hasOwners(tx, site, id)))
      return refused(409, isClosed ? '/isClosed' : '/roles', 'contradicts', 'an-owner-left', now.signIn);
    await tx
      .updateTable('account')
      .set({
        roles: JSON.stringify(roles),
        ...(isClosed === (now.closedAt !== null) ? {} : { closed_at: isClosed ? sql<string>`now()` : null }),
        ...(phrase === null ? {} : { phrase, is_own_phrase: false, pin: null }),
      })
      .where('site', '=', site)
      .where('id', '=', id)
      .execute();
    if (isClosed || phrase !== null) await endSignIns(tx, site, id);
    return changed(tx, site, id);
  });
}

/**
 * Keeps a pass phrase that its own user chose, in the place of the one they just gave. False where an owner closed the
 * account, or gave it another first pass phrase, since: the one that was given opens nothing any more.
 */
export async function keepOwnPhrase(db: Db, site: string, given: Checked, phrase: string): Promise<boolean> {
  return await keepSecret(db, site, given, { phrase: await hashOf(phrase), is_own_phrase: true });
}

/** Keeps a PIN; null takes it away. False as for a pass phrase. */
export async function keepPin(db: Db, site: string, given: Checked, pin: string | null): Promise<boolean> {
  return await keepSecret(db, site, given, { pin: pin === null ? null : await hashOf(pin) });
}

type Secrets = { readonly phrase: string; readonly is_own_phrase: boolean } | { readonly pin: string | null };

async function keepSecret(db: Db, site: string, { id, phrase }: Checked, secrets: Secrets): Promise<boolean> {
  const row = await db
    .updateTable('account')
    .set(secrets)
    .where('site', '=', site)
    .where('id', '=', id)
    .where('phrase', '=', phrase)
    .where('closed_at', 'is', null)
    .returning('id')
    .executeTakeFirst();
  return row !== undefined;
}

/** The agents among these who sign in themselves, or did: the name of a closed account is nobody else’s either. */
export async function agentsWithAccount(
  db: Db,
  site: string,
  agents: readonly string[],
): Promise<Set<string>> {
  if (agents.length === 0) return new Set();
  const rows = await db
    .selectFrom('account')
    .select('agent')
    .where('site', '=', site)
    .where('agent', 'in', [...agents])
    .execute();
  return new Set(rows.map(({ agent }) => agent));
}

/** Who charted which of these entries, by id. */
export async function agentsOfEntries(
  db: Db,
  site: string,
  ids: readonly string[],
): Promise<Map<string, string>> {
  if (ids.length === 0) return new Map();
  const rows = await db
    .selectFrom('entry')
    .select(['id', 'agent'])
    .where('site', '=', site)
    .where('book', '=', 'care')
    .where('id', 'in', [...ids])
    .execute();
  return new Map(rows.map(({ id, agent }) => [id, agent]));
}

function accountRows(db: Db, site: string) {
  return db
    .selectFrom('account')
    .innerJoin('agent', (join) =>
      join.onRef('agent.site', '=', 'account.site').onRef('agent.id', '=', 'account.agent'),
    )
    .select([
      'account.id',
      'account.agent',
      'agent.name',
      'account.sign_in',
      'account.roles',
      'account.is_own_phrase',
      'account.recorded_at',
      'account.closed_at',
    ])
    .select(sql<boolean>`account.pin is not null`.as('has_pin'))
    .where('account.site', '=', site);
}

type Row = Awaited<ReturnType<ReturnType<typeof accountRows>['execute']>>[number];

function accountOf(row: Row): Account {
  return {
    id: row.id,
    agent: { id: row.agent, name: row.name },
    signIn: row.sign_in,
    roles: row.roles as AccountRole[],
    isOwnPhrase: row.is_own_phrase,
    hasPin: row.has_pin,
    madeAt: row.recorded_at.toISOString(),
    closedAt: row.closed_at?.toISOString() ?? null,
  };
}

/** Whether there is an owner who may sign in, other than `but`. */
async function hasOwners(tx: Db, site: string, but: string | null): Promise<boolean> {
  const { rows } = await sql<{ found: boolean }>`select exists(
    select 1 from account where site = ${site} and roles @> '["owner"]' and closed_at is null
    and (${but}::uuid is null or id <> ${but}::uuid)) as found`.execute(tx);
  return rows[0]?.found === true;
}

export async function endSignIns(tx: Db, site: string, account: string): Promise<void> {
  await tx.deleteFrom('sign_in').where('site', '=', site).where('account', '=', account).execute();
}

/** One change of accounts at a time: two owners cannot close each other and leave none. */
async function alone<T>(db: Db, work: (tx: Transaction<Tables>) => Promise<T>): Promise<T> {
  return await db.transaction().execute(async (tx) => {
    await sql`lock table account in share row exclusive mode`.execute(tx);
    return await work(tx);
  });
}

async function changed(tx: Db, site: string, id: string): Promise<Changed> {
  const account = await readAccount(tx, site, id);
  if (account === null) throw new Error('the account is not there');
  return { ok: true, account, already: false };
}

function refused(
  status: 409 | 422,
  field: string,
  code: Refusal['code'],
  expected: string,
  got: string,
): Changed {
  return { ok: false, status, refusals: [refusal(field, code, expected, got)] };
}
