import { afterAll, beforeAll, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';
import { keepOwnPhrase, keepPin } from './accounts.js';
import { SIGN_IN } from './figures.js';
import { findToSignIn } from './findToSignIn.js';
import { inTurn } from './secret.js';
import { signIn } from './signIns.js';

const PHRASE = 'a lamp beside the green door';

let database: TestDatabase;
let clinic: TestClinic;
let ines = '';
let site = '';
beforeAll(async () => {
  database = await openMemory();
  clinic = await TestClinic.open(database);
  site = (await clinic.db.selectFrom('site').select('id').executeTakeFirstOrThrow()).id;
  const { body, sent } = await clinic.addAccount('ines', ['owner', 'clinician']);
  ines = body.id;
  await enter(sent.passPhrase);
  await clinic.send('PUT', '/api/sign-in/pass-phrase', { old: sent.passPhrase, passPhrase: PHRASE });
  await clinic.send('PUT', '/api/sign-in/pin', { passPhrase: PHRASE, pin: '4826' });
}, 60_000);
afterAll(async () => {
  await database.close();
});

const enter = (passPhrase = PHRASE) => clinic.send('POST', '/api/sign-in', { signIn: 'ines', passPhrase });
const takeOver = () => clinic.send('POST', '/api/sign-in/take-over', { account: ines, pin: '4826' });

/** Takes every place of a lane until it is called. */
function fillUp(lane: 'known' | 'stranger'): () => Promise<unknown> {
  let free = () => {};
  const held = new Promise<void>((resolve) => {
    free = resolve;
  });
  const all = Array.from({ length: SIGN_IN.waitingAtMost }, () => inTurn(lane, () => held));
  return async () => {
    free();
    await Promise.all(all);
  };
}

test('a pass phrase or PIN that never got its turn is not counted as a wrong one', async () => {
  await enter();
  const empty = [fillUp('stranger'), fillUp('known')];
  for (let tries = 0; tries <= SIGN_IN.wrongPinsAtMost; tries++) expect((await takeOver()).status).toBe(429);
  for (let tries = 0; tries <= SIGN_IN.wrongPhrasesAtMost; tries++) expect((await enter()).status).toBe(429);
  for (const one of empty) await one();
  expect((await takeOver()).status).toBe(200);
  expect((await enter()).status).toBe(200);
});

test('strangers who guess take no place of somebody with a PIN, nor does one without a sign-in', async () => {
  await enter();
  const empty = fillUp('stranger');
  const over = takeOver();
  await empty();
  expect((await over).status).toBe(200);
  const emptyKnown = fillUp('known');
  clinic.cookie = 'evenfall-nobody=nobody';
  expect((await takeOver()).status).toBe(401);
  await emptyKnown();
});

test('a pass phrase that was looked at before the account was closed, or got another, opens and changes nothing', async () => {
  const stale = await findToSignIn(clinic.db, site, 'ines');
  if (stale === null) throw new Error('ines has an account');
  clinic.cookie = null;
  await enter();
  const first = 'nine small boats at sea';
  expect((await clinic.send('PUT', `/api/accounts/${ines}`, { passPhrase: first })).status).toBe(200);
  expect(await signIn(clinic.db, site, stale, null, clinic.clock)).toBeNull();
  expect(await keepOwnPhrase(clinic.db, site, stale, 'three geese over the marsh')).toBe(false);
  expect(await keepPin(clinic.db, site, stale, '7153')).toBe(false);
  clinic.cookie = null;
  expect((await enter(first)).body.current.hasPin).toBe(false);
  const { body, sent } = await clinic.addAccount('bo', ['clinician']);
  const bo = await findToSignIn(clinic.db, site, sent.signIn);
  if (bo === null) throw new Error('bo has an account');
  await clinic.send('PUT', '/api/sign-in/pass-phrase', { old: first, passPhrase: PHRASE });
  expect((await clinic.send('PUT', `/api/accounts/${body.id}`, { isClosed: true })).status).toBe(200);
  expect(await signIn(clinic.db, site, bo, null, clinic.clock)).toBeNull();
  expect(await keepPin(clinic.db, site, bo, '7153')).toBe(false);
});
