import { expect, test } from 'vitest';
import { openMemory } from '../database/testing.js';
import { TestClinic } from '../testing/clinic.js';

test('accounts come back with a backup, sign-ins do not', async () => {
  const source = await openMemory();
  const clinic = await TestClinic.open(source);
  const ada = await clinic.addAccount('ada', ['owner', 'clinician']);
  const sol = await clinic.addAccount('sol', ['learner']);
  const enter = (at: TestClinic, { sent }: typeof ada) =>
    at.send('POST', '/api/sign-in', { signIn: sent.signIn, passPhrase: sent.passPhrase });
  await enter(clinic, ada);
  await clinic.send('PUT', '/api/sign-in/pass-phrase', {
    old: ada.sent.passPhrase,
    passPhrase: 'a lamp beside the green door',
  });
  const pin = { passPhrase: 'a lamp beside the green door', pin: '4826' };
  expect((await clinic.send('PUT', '/api/sign-in/pin', pin)).body.current.hasPin).toBe(true);
  const closed = await clinic.send('PUT', `/api/accounts/${sol.body.id}`, { isClosed: true });
  expect(closed.status).toBe(200);
  const backup = (await clinic.send('GET', '/control/backup')).text;
  expect(backup).not.toMatch(/lamp beside|quiet river/);

  const target = await openMemory();
  const restored = await TestClinic.open(target, { agent: false });
  expect((await restored.send('POST', '/control/restore', backup)).status).toBe(200);
  restored.cookie = clinic.cookie;
  expect((await restored.send('GET', '/api/accounts')).status).toBe(401);
  restored.cookie = null;
  const back = { signIn: 'ada', passPhrase: 'a lamp beside the green door' };
  expect((await restored.send('POST', '/api/sign-in', back)).status).toBe(200);
  // A PIN, which is soon guessed, is in no backup: it is chosen again.
  const before = (await clinic.send('GET', '/api/accounts')).body.accounts as object[];
  expect((await restored.send('GET', '/api/accounts')).body.accounts).toEqual(
    before.map((account) => ({ ...account, hasPin: false })),
  );
  restored.cookie = null;
  expect((await enter(restored, sol)).status).toBe(401);
  await source.close();
  await target.close();
}, 60_000);

test('a try to sign in, which anybody may make of a new record, does not stand in the way of a restore', async () => {
  const source = await openMemory();
  const backup = (await (await TestClinic.open(source)).send('GET', '/control/backup')).text;
  const target = await openMemory();
  const restored = await TestClinic.open(target, { agent: false });
  const tried = await restored.send('POST', '/api/sign-in', { signIn: 'ada', passPhrase: 'a lamp too many' });
  expect(tried.status).toBe(401);
  expect((await restored.send('POST', '/control/restore', backup)).status).toBe(200);
  await source.close();
  await target.close();
}, 60_000);
