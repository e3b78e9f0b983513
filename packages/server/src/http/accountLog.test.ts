import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { openMemory, type TestDatabase } from '../database/testing.js';
import { SIGN_IN } from '../signIn/figures.js';
import { TestClinic } from '../testing/clinic.js';

const PHRASE = 'a lamp beside the green door';
const PIN = '4826';
const AT = '2026-11-25T10:00:00.000Z';

let database: TestDatabase;
let clinic: TestClinic;
let ada = '';
let first = '';
beforeAll(async () => {
  database = await openMemory();
  clinic = await TestClinic.open(database);
  const made = await clinic.addAccount('ada', ['owner']);
  ada = made.body.id;
  first = made.sent.passPhrase;
}, 60_000);
afterAll(async () => {
  await database.close();
});
beforeEach(() => {
  clinic.cookie = null;
});

const linesOf = async (work: () => Promise<unknown>) => {
  clinic.accountLines.length = 0;
  await work();
  return [...clinic.accountLines];
};
const signIn = (name: string, passPhrase: string) =>
  clinic.send('POST', '/api/sign-in', { signIn: name, passPhrase });
const takeOver = (pin: string) => clinic.send('POST', '/api/sign-in/take-over', { account: ada, pin });

test('each sign-in, lock, take-over and sign-out is one line, and so is a secret that its user chose', async () => {
  const came = await linesOf(async () => {
    await signIn('ada', first);
    await clinic.send('PUT', '/api/sign-in/pass-phrase', { old: first, passPhrase: PHRASE });
    await clinic.send('PUT', '/api/sign-in/pin', { passPhrase: PHRASE, pin: PIN });
    await clinic.send('POST', '/api/sign-in/lock', {});
    // Locked already: nothing happened.
    await clinic.send('POST', '/api/sign-in/lock', {});
    await takeOver(PIN);
    await clinic.send('DELETE', '/api/sign-in', {});
  });
  const changed = { event: 'account-changed', account: ada, by: ada };
  expect(came).toEqual([
    { at: AT, event: 'signed-in', by: 'pass-phrase', account: ada },
    { at: AT, ...changed, what: ['pass-phrase'] },
    { at: AT, ...changed, what: ['pin'] },
    { at: AT, event: 'device-locked', account: ada },
    { at: AT, event: 'signed-in', by: 'pin', account: ada },
    { at: AT, event: 'signed-out', account: ada },
  ]);
});

test('whoever is not let in is one line: wrong, too often, or locked out', async () => {
  const refused = { at: AT, event: 'sign-in-refused' };
  const wrong = { ...refused, by: 'pass-phrase', why: 'wrong' };
  expect(await linesOf(() => signIn('nobody', PHRASE))).toEqual([{ ...wrong, account: null }]);
  const tries = await linesOf(async () => {
    for (let at = 0; at <= SIGN_IN.wrongPhrasesAtMost; at++) await signIn('nobody-else', PHRASE);
  });
  expect(tries).toEqual([
    ...Array.from({ length: SIGN_IN.wrongPhrasesAtMost }, () => ({ ...wrong, account: null })),
    { ...wrong, why: 'too-often', account: null },
  ]);
  expect(await linesOf(() => signIn('ada', 'not this one at all'))).toEqual([{ ...wrong, account: ada }]);
  await signIn('ada', PHRASE);
  const pins = await linesOf(async () => {
    for (let at = 0; at < SIGN_IN.wrongPinsAtMost; at++) await takeOver('0000');
  });
  const byPin = { ...refused, account: ada, by: 'pin' };
  expect(pins).toEqual([
    ...Array.from({ length: SIGN_IN.wrongPinsAtMost - 1 }, () => ({ ...byPin, why: 'wrong' })),
    { ...byPin, why: 'ended' },
  ]);
});

test('an account that is made or changed is one line, by whom; one that was refused is none', async () => {
  const made = await linesOf(() => clinic.addAccount('sol', ['learner']));
  expect(made).toMatchObject([{ event: 'account-changed', by: null, what: ['made'] }]);
  const sol = made[0]?.account ?? '';
  await signIn('ada', PHRASE);
  const change = (body: object) => clinic.send('PUT', `/api/accounts/${sol}`, body);
  const changes = await linesOf(async () => {
    await change({ roles: ['clinician'], passPhrase: 'six grey doves on a wall' });
    await change({ isClosed: true });
    await change({ isClosed: false });
    await change({ passPhrase: 'short' });
    await clinic.addAccount('sol', ['learner']);
  });
  const changed = { at: AT, event: 'account-changed', account: sol, by: ada };
  expect(changes).toEqual([
    { ...changed, what: ['roles', 'first-pass-phrase'] },
    { ...changed, what: ['closed'] },
    { ...changed, what: ['reopened'] },
  ]);
});

test('no line has a name, a secret or anything that was typed', async () => {
  const lines = await linesOf(async () => {
    await clinic.addAccount('tove', ['learner']);
    await signIn('ada', PHRASE);
    await signIn('tove', 'something typed by mistake');
    await signIn('somebody@example.org', 'something typed by mistake');
    await takeOver(PIN);
    await takeOver('9351');
  });
  expect(lines.length).toBeGreaterThan(4);
  expect(JSON.stringify(lines)).not.toMatch(/"ada|tove|invented|lamp|typed|example|4826|9351|argon/);
});
