import { ROUTES, type SignInState } from '@evenfall/api';
import { type Refusal, refusal } from '@evenfall/clinical';
import type { OpenAPIHono } from '@hono/zod-openapi';
import type { Context } from 'hono';
import { deleteCookie, setCookie } from 'hono/cookie';
import { closedAmong, keepOwnPhrase, keepPin, needsSignIn, readAccount } from '../signIn/accounts.js';
import { SIGN_IN } from '../signIn/figures.js';
import { findToSignIn } from '../signIn/findToSignIn.js';
import { countGuess, forgetGuesses } from '../signIn/guesses.js';
import { Busy, inTurn, isSecret } from '../signIn/secret.js';
import { wrongPhrase, wrongPin } from '../signIn/secretRules.js';
import {
  type Checked,
  lock,
  onDevice,
  signIn,
  signOut,
  signOutElsewhere,
  takeOver,
} from '../signIn/signIns.js';
import { accountLog } from './accountLog.js';
import { problemAnswer } from './problems.js';
import { cookieName, tokenOf } from './signedIn.js';
import type { World } from './world.js';

/** Signing in and out, locking, taking a device over by PIN, choosing one's own secrets. */
export function signInRoutes(app: OpenAPIHono, world: World): void {
  const { db, site, now } = world;
  const log = accountLog(world.log, now);

  app.openapi(ROUTES.readSignIn, async (c) => {
    const { kept } = c.req.valid('query');
    const closed = await closedAmong(db, site().id, kept?.split(',') ?? []);
    return c.json({ ...(await stateOf(tokenOf(c, site().id))), closed }, 200);
  });

  app.openapi(ROUTES.signIn, async (c) => {
    const { signIn: name, passPhrase } = c.req.valid('json');
    return (await checked(c, name, passPhrase, async (found) => {
      const token = await signIn(db, site().id, found, tokenOf(c, site().id), now());
      if (token === null) return wrongSecret(c, '/passPhrase', 'right-pass-phrase');
      giveCookie(c, token);
      log({ event: 'signed-in', by: 'pass-phrase', account: found.id });
      return c.json(await stateOf(token), 200);
    })) as never;
  });

  app.openapi(ROUTES.signOut, async (c) => {
    const token = tokenOf(c, site().id);
    if (token !== null) {
      const { account, isLeft } = await signOut(db, site().id, token);
      if (!isLeft) takeCookie(c);
      if (account !== null) log({ event: 'signed-out', account });
    }
    return c.json(await stateOf(token), 200);
  });

  app.openapi(ROUTES.lockDevice, async (c) => {
    const token = tokenOf(c, site().id);
    const account = token === null ? null : await lock(db, site().id, token);
    if (account !== null) log({ event: 'device-locked', account });
    return c.json(await stateOf(token), 200);
  });

  app.openapi(ROUTES.takeOver, async (c) => {
    const token = tokenOf(c, site().id);
    if (token === null) return wrongSecret(c, '/pin', 'pass-phrase-again') as never;
    const { account, pin } = c.req.valid('json');
    return (await unlessBusy(c, async () => {
      const outcome = await takeOver(db, site().id, token, account, pin, now());
      if (outcome.is === 'taken') {
        giveCookie(c, outcome.token);
        log({ event: 'signed-in', by: 'pin', account });
        return c.json(await stateOf(outcome.token), 200);
      }
      const why = outcome.is;
      // Whose id was only typed here may be nobody's.
      const known = await readAccount(db, site().id, account);
      log({ event: 'sign-in-refused', by: 'pin', why, account: known?.id ?? null });
      return wrongSecret(c, '/pin', why === 'ended' ? 'pass-phrase-again' : 'right-pin');
    })) as never;
  });

  app.openapi(ROUTES.choosePassPhrase, async (c) => {
    const { old, passPhrase } = c.req.valid('json');
    const asker = c.get('asker');
    if (asker === 'anybody') return problemAnswer(c, 404) as never;
    const names = [asker.signIn, asker.agent.name, old];
    const wrong = wrongPhrase(passPhrase, names, '/passPhrase');
    if (wrong.length > 0) return problemAnswer(c, 422, wrong) as never;
    return (await checked(c, asker.signIn, old, '/old', async (found) => {
      const token = tokenOf(c, site().id);
      if (!(await keepOwnPhrase(db, site().id, found, passPhrase)))
        return wrongSecret(c, '/old', 'right-pass-phrase');
      if (token !== null) await signOutElsewhere(db, site().id, found.id, token);
      log({ event: 'account-changed', account: found.id, by: found.id, what: ['pass-phrase'] });
      return c.json(await stateOf(token), 200);
    })) as never;
  });

  app.openapi(ROUTES.choosePin, async (c) => {
    const { passPhrase, pin } = c.req.valid('json');
    const asker = c.get('asker');
    if (asker === 'anybody') return problemAnswer(c, 404) as never;
    const wrong = pin === null ? [] : wrongPin(pin, '/pin');
    if (wrong.length > 0) return problemAnswer(c, 422, wrong) as never;
    return (await checked(c, asker.signIn, passPhrase, async (found) => {
      if (!(await keepPin(db, site().id, found, pin)))
        return wrongSecret(c, '/passPhrase', 'right-pass-phrase');
      log({ event: 'account-changed', account: found.id, by: found.id, what: ['pin'] });
      return c.json(await stateOf(tokenOf(c, site().id)), 200);
    })) as never;
  });

  async function stateOf(token: string | null): Promise<SignInState> {
    const { current, here } = await onDevice(db, site().id, token, now());
    return {
      needed: current !== null || (await needsSignIn(db, site().id)),
      current: current === null ? null : { ...current, roles: [...current.roles] },
      here: here.map(({ account, agent, hasPin }) => ({ account, agent, hasPin })),
      closed: [],
      idleMinutes: SIGN_IN.idleMinutes,
      wholeHours: SIGN_IN.wholeHours,
    };
  }

  type Tried = { readonly wait: number; readonly found: Checked | null; readonly account: string | null };
  type Then = (found: Checked) => Promise<Response>;

  /** Goes on with whoever has that name and that pass phrase; a try too many is told when to come back. */
  async function checked(
    c: Context,
    name: string,
    phrase: string,
    field: string | Then,
    then?: Then,
  ): Promise<Response> {
    const [at, goOn] = typeof field === 'string' ? [field, then as Then] : ['/passPhrase', field];
    return await unlessBusy(c, async () => {
      // On the way in nobody is known yet; every other route that asks for a pass phrase is of somebody signed in.
      const lane = c.get('asker') === undefined ? 'stranger' : 'known';
      const { wait, found, account } = await inTurn(lane, () => tryPhrase(name, phrase));
      if (wait > 0) {
        log({ event: 'sign-in-refused', by: 'pass-phrase', why: 'too-often', account });
        return tooOften(c, wait);
      }
      if (found === null) {
        log({ event: 'sign-in-refused', by: 'pass-phrase', why: 'wrong', account });
        return wrongSecret(c, at, 'right-pass-phrase');
      }
      await forgetGuesses(db, site().id, name);
      return await goOn(found);
    });
  }

  /** Counts a try and looks at it; nothing is counted of one that never got its turn. `account` is whose name it was. */
  async function tryPhrase(name: string, phrase: string): Promise<Tried> {
    const wait = await countGuess(db, site().id, name, now());
    if (wait > 0) return { wait, found: null, account: null };
    const found = await findToSignIn(db, site().id, name);
    const isRight = await isSecret(phrase, found?.phrase ?? null);
    return { wait, found: isRight ? found : null, account: found?.id ?? null };
  }

  function giveCookie(c: Context, token: string): void {
    setCookie(c, cookieName(c, site().id), token, {
      path: '/',
      httpOnly: true,
      sameSite: 'Strict',
      secure: new URL(c.req.url).protocol === 'https:',
      maxAge: SIGN_IN.wholeHours * 3600,
    });
  }

  function takeCookie(c: Context): void {
    const secure = new URL(c.req.url).protocol === 'https:';
    deleteCookie(c, cookieName(c, site().id), { path: '/', secure });
  }
}

/** Too many wait to be checked: come back in a moment. */
export async function unlessBusy(c: Context, work: () => Promise<Response>): Promise<Response> {
  try {
    return await work();
  } catch (error) {
    if (!(error instanceof Busy)) throw error;
    return tooOften(c, 5);
  }
}

function tooOften(c: Context, seconds: number): Response {
  c.header('retry-after', String(seconds));
  return problemAnswer(c, 429, [
    refusal('/signIn', 'out-of-range', 'try-later', null, { figures: { minutes: Math.ceil(seconds / 60) } }),
  ]);
}

function wrongSecret(c: Context, field: string, expected: string): Response {
  const refused: Refusal = refusal(field, 'contradicts', expected, null);
  return problemAnswer(c, 401, [refused]);
}
