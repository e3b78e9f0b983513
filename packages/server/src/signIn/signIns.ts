import { createHash, randomBytes } from 'node:crypto';
import type { AccountRole } from '@evenfall/record';
import { type Kysely, sql } from 'kysely';
import type { Tables } from '../database/schema.js';
import { SIGN_IN } from './figures.js';
import { inTurn, isSecret } from './secret.js';

type Db = Kysely<Tables>;

/** Who is signed in on a device and acts there now. */
export type SignedIn = {
  readonly account: string;
  readonly agent: { readonly id: string; readonly name: string };
  readonly signIn: string;
  readonly roles: readonly AccountRole[];
  readonly isOwnPhrase: boolean;
  readonly hasPin: boolean;
};

/** Everybody whose pass phrase was given on a device not too long ago, and who of them acts; null when it is locked. */
export type OnDevice = { readonly current: SignedIn | null; readonly here: readonly SignedIn[] };

export const NOBODY: OnDevice = { current: null, here: [] };

/** What a device shows for itself: 256 random bits, of which only the hash is kept. */
export function newToken(): string {
  return randomBytes(32).toString('base64url');
}

const hashed = (token: string) => createHash('sha256').update(token).digest('hex');

/** Who is signed in with a token; whoever was not seen for too long is not the current one any more. */
export async function onDevice(db: Db, site: string, token: string | null, now: Date): Promise<OnDevice> {
  if (token === null) return NOBODY;
  const rows = await db
    .selectFrom('sign_in')
    .innerJoin('account', (join) =>
      join.onRef('account.site', '=', 'sign_in.site').onRef('account.id', '=', 'sign_in.account'),
    )
    .innerJoin('agent', (join) =>
      join.onRef('agent.site', '=', 'account.site').onRef('agent.id', '=', 'account.agent'),
    )
    .select([
      'account.id as account',
      'account.agent',
      'agent.name',
      'account.sign_in',
      'account.roles',
      'account.is_own_phrase',
      'sign_in.is_current',
      'sign_in.seen_at',
    ])
    .select(sql<boolean>`account.pin is not null`.as('has_pin'))
    .where('sign_in.site', '=', site)
    .where('sign_in.device', '=', hashed(token))
    .where('sign_in.signed_at', '>', before(now, SIGN_IN.wholeHours * 60))
    .where('account.closed_at', 'is', null)
    .orderBy('agent.name')
    .execute();
  const idle = before(now, SIGN_IN.idleMinutes);
  const here = rows.map((row) => ({
    account: row.account,
    agent: { id: row.agent, name: row.name },
    signIn: row.sign_in,
    roles: row.roles as AccountRole[],
    isOwnPhrase: row.is_own_phrase,
    hasPin: row.has_pin,
  }));
  const at = rows.findIndex((row) => row.is_current && row.seen_at > idle);
  return { current: here[at] ?? null, here };
}

/** Somebody acts: the device is seen. Written once a minute, not for every request. */
export async function seen(db: Db, site: string, token: string, now: Date): Promise<void> {
  await db
    .updateTable('sign_in')
    .set({ seen_at: now })
    .where('site', '=', site)
    .where('device', '=', hashed(token))
    .where('is_current', '=', true)
    .where('seen_at', '<', before(now, 1))
    .execute();
}

/** An account whose pass phrase was right, with the hash it was held against. */
export type Checked = { readonly id: string; readonly phrase: string };

/**
 * Signs an account in on a device, beside who was signed in there before. The device gets a new token; the old one opens
 * nothing any more. Null where the account was closed, or got another pass phrase, since this one was looked at.
 */
export async function signIn(
  db: Db,
  site: string,
  { id: account, phrase }: Checked,
  old: string | null,
  now: Date,
): Promise<string | null> {
  const token = newToken();
  const device = hashed(token);
  return await db.transaction().execute(async (tx) => {
    const still = await tx
      .selectFrom('account')
      .select('id')
      .where('site', '=', site)
      .where('id', '=', account)
      .where('phrase', '=', phrase)
      .where('closed_at', 'is', null)
      .forShare()
      .executeTakeFirst();
    if (still === undefined) return null;
    if (old !== null) {
      await tx
        .updateTable('sign_in')
        .set({ device, is_current: false })
        .where('site', '=', site)
        .where('device', '=', hashed(old))
        .execute();
      await tx
        .deleteFrom('sign_in')
        .where('site', '=', site)
        .where('device', '=', device)
        .where('account', '=', account)
        .execute();
    }
    await tx
      .insertInto('sign_in')
      .values({ site, device, account, is_current: true, signed_at: now, seen_at: now })
      .execute();
    // Nobody comes back to what is over.
    await tx
      .deleteFrom('sign_in')
      .where('site', '=', site)
      .where('signed_at', '<=', before(now, SIGN_IN.wholeHours * 60))
      .execute();
    return token;
  });
}

/** Nobody acts on the device until a PIN or a pass phrase is given. Answers which account it was locked for; null for none. */
export async function lock(db: Db, site: string, token: string): Promise<string | null> {
  const row = await db
    .updateTable('sign_in')
    .set({ is_current: false })
    .where('site', '=', site)
    .where('device', '=', hashed(token))
    .where('is_current', '=', true)
    .returning('account')
    .executeTakeFirst();
  return row?.account ?? null;
}

/** What comes of a PIN: the device is taken over under a new token, the PIN was wrong, or the sign-in is over. */
export type TakenOver =
  | { readonly is: 'taken'; readonly token: string }
  | { readonly is: 'wrong' }
  | { readonly is: 'ended' };

const WRONG: TakenOver = { is: 'wrong' };
const ENDED: TakenOver = { is: 'ended' };

/**
 * Somebody whose pass phrase was given on this device takes it over by PIN. The device gets a new token; the old one opens
 * nothing any more. Each wrong PIN is counted before it is looked
 * at; one too many ends the sign-in, and the pass phrase is asked for again.
 *
 * Errors: `Busy`; then nothing was counted.
 */
export async function takeOver(
  db: Db,
  site: string,
  token: string,
  account: string,
  pin: string,
  now: Date,
): Promise<TakenOver> {
  // Whoever never gave a pass phrase here waits in no queue.
  const { here } = await onDevice(db, site, token, now);
  if (!here.some((one) => one.account === account && one.hasPin)) return ENDED;
  return await inTurn('known', () => tryPin(db, site, token, account, pin, now));
}

async function tryPin(
  db: Db,
  site: string,
  token: string,
  account: string,
  pin: string,
  now: Date,
): Promise<TakenOver> {
  const device = hashed(token);
  const row = await db
    .updateTable('sign_in')
    .from('account')
    .set((is) => ({ wrong_pins: is('sign_in.wrong_pins', '+', 1) }))
    .whereRef('account.site', '=', 'sign_in.site')
    .whereRef('account.id', '=', 'sign_in.account')
    .where('sign_in.site', '=', site)
    .where('sign_in.device', '=', device)
    .where('sign_in.account', '=', account)
    .where('sign_in.signed_at', '>', before(now, SIGN_IN.wholeHours * 60))
    .where('account.closed_at', 'is', null)
    .returning(['sign_in.wrong_pins', 'account.pin'])
    .executeTakeFirst();
  if (row === undefined || row.pin === null) return ENDED;
  if (row.wrong_pins > SIGN_IN.wrongPinsAtMost) return await ended(db, site, device, account);
  if (!(await isSecret(pin, row.pin)))
    return row.wrong_pins === SIGN_IN.wrongPinsAtMost ? await ended(db, site, device, account) : WRONG;
  const next = newToken();
  const renewed = hashed(next);
  return await db.transaction().execute(async (tx) => {
    const moved = await tx
      .updateTable('sign_in')
      .set({ device: renewed, is_current: false })
      .where('site', '=', site)
      .where('device', '=', device)
      .returning('account')
      .execute();
    // Of two at once the first has the device, and the other's token is none any more.
    if (!moved.some((one) => one.account === account)) return ENDED;
    await tx
      .updateTable('sign_in')
      .set({ is_current: true, wrong_pins: 0, seen_at: now })
      .where('site', '=', site)
      .where('device', '=', renewed)
      .where('account', '=', account)
      .execute();
    return { is: 'taken', token: next };
  });
}

/** Signs the current account out of the device. Answers which that was, and whether somebody else is still signed in there. */
export async function signOut(
  db: Db,
  site: string,
  token: string,
): Promise<{ readonly account: string | null; readonly isLeft: boolean }> {
  const device = hashed(token);
  const gone = await db
    .deleteFrom('sign_in')
    .where('site', '=', site)
    .where('device', '=', device)
    .where('is_current', '=', true)
    .returning('account')
    .executeTakeFirst();
  const left = await db
    .selectFrom('sign_in')
    .select('account')
    .where('site', '=', site)
    .where('device', '=', device)
    .limit(1)
    .executeTakeFirst();
  return { account: gone?.account ?? null, isLeft: left !== undefined };
}

/** Signs an account out of every device but this one. */
export async function signOutElsewhere(db: Db, site: string, account: string, token: string): Promise<void> {
  await db
    .deleteFrom('sign_in')
    .where('site', '=', site)
    .where('account', '=', account)
    .where('device', '<>', hashed(token))
    .execute();
}

async function ended(db: Db, site: string, device: string, account: string): Promise<TakenOver> {
  await db
    .deleteFrom('sign_in')
    .where('site', '=', site)
    .where('device', '=', device)
    .where('account', '=', account)
    .execute();
  return ENDED;
}

function before(now: Date, minutes: number): Date {
  return new Date(now.getTime() - minutes * 60_000);
}
