import type { Refusal } from '@evenfall/clinical';
import { barredAmending, barredEntry, type EntryFrame, hasRole } from '@evenfall/record';
import type { Context } from 'hono';
import { getCookie } from 'hono/cookie';
import { createMiddleware } from 'hono/factory';
import { agentsOfEntries, agentsWithAccount, needsSignIn } from '../signIn/accounts.js';
import { onDevice, type SignedIn, seen } from '../signIn/signIns.js';
import { problemAnswer } from './problems.js';
import type { World } from './world.js';

/**
 * Who asks: somebody signed in; `anybody` where there are no accounts, or on the socket that only the folder's own account
 * can open.
 */
export type Asker = SignedIn | 'anybody';

declare module 'hono' {
  interface ContextVariableMap {
    asker: Asker;
  }
}

/** What is answered to whoever is not signed in: what this server is, and how to sign in. */
const TO_EVERYBODY = /^\/api\/(about|openapi\.json|sign-in(\/(lock|take-over))?)$/;
/** What a first pass phrase, which somebody else chose, is good for: choosing another. */
const BEFORE_OWN_PHRASE = '/api/sign-in/pass-phrase';

/** The name of the cookie: one for each site, for a browser tells two servers of one machine apart by nothing else. */
export function cookieName(c: Context, site: string): string {
  const isSecure = new URL(c.req.url).protocol === 'https:';
  return `${isSecure ? '__Host-' : ''}evenfall-${site.slice(-12)}`;
}

export function tokenOf(c: Context, site: string): string | null {
  return getCookie(c, cookieName(c, site)) ?? null;
}

/** Lets nobody in who is not signed in, where there are accounts; says who asks to whatever comes after. */
export function signedInOnly({ db, site, now }: World) {
  // Once there is an account, there always is one: the last owner cannot be closed.
  let isNeeded = false;
  return createMiddleware(async (c, next) => {
    if (TO_EVERYBODY.test(c.req.path)) return await next();
    isNeeded ||= await needsSignIn(db, site().id);
    if (!isNeeded) {
      c.set('asker', 'anybody');
      return await next();
    }
    const token = tokenOf(c, site().id);
    const { current } = await onDevice(db, site().id, token, now());
    if (token === null || current === null) return problemAnswer(c, 401);
    if (!current.isOwnPhrase && c.req.path !== BEFORE_OWN_PHRASE) return problemAnswer(c, 401);
    await seen(db, site().id, token, now());
    c.set('asker', current);
    await next();
  });
}

/** The socket's own account may do everything. */
export const trusted = createMiddleware(async (c, next) => {
  c.set('asker', 'anybody');
  await next();
});

/** What of these entries the asker may not keep; `at` says where each stands in the request. */
export async function barredFrom(
  c: Context,
  { db, site }: World,
  frames: readonly (readonly [at: string, EntryFrame])[],
): Promise<Response | null> {
  const asker = c.get('asker');
  if (asker === 'anybody') return null;
  const others = frames.map(([, { agent }]) => agent).filter((agent) => agent !== asker.agent.id);
  const signing = await agentsWithAccount(db, site().id, [...new Set(others)]);
  const access = { agent: asker.agent.id, roles: asker.roles };
  const charted = await agentsOfEntries(
    db,
    site().id,
    frames.flatMap(([, { amends }]) => amends?.entry ?? []),
  );
  const refusals: Refusal[] = frames.flatMap(([at, frame]) =>
    [
      ...barredEntry(frame, access, (agent) => signing.has(agent)),
      ...barredAmending(frame, access, (entry) => charted.get(entry)),
    ].map((one) => ({
      ...one,
      field: at + one.field,
    })),
  );
  return refusals.length === 0 ? null : problemAnswer(c, 403, refusals);
}

/** Refuses whoever has none of the roles; null for whoever has, and where there are no accounts. */
export function notOf(c: Context, ...roles: Parameters<typeof hasRole>[1][]): Response | null {
  const asker = c.get('asker');
  if (asker === 'anybody' || hasRole({ agent: asker.agent.id, roles: asker.roles }, ...roles)) return null;
  return problemAnswer(c, 403, [], 'not-of-role');
}
