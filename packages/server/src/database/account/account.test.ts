import { existsSync } from 'node:fs';
import { userInfo } from 'node:os';
import { expect, test } from 'vitest';
import { type Account, databaseAccount } from './account.js';
import { accountIn, findAccount } from './findAccount.js';

const root: Account = { name: 'root', uid: 0, gid: 0, home: '/root' };
const alice: Account = { name: 'alice', uid: 1000, gid: 1000, home: '/home/alice' };

test('real data as root without a named account is refused with what to type', async () => {
  await expect(databaseAccount(null, root)).rejects.toMatchObject({
    code: 'account-needed',
    field: '--account',
    got: 'root',
    names: {
      type: expect.stringMatching(/^--account \w+$/),
      variable: expect.stringMatching(/^EVENFALL_ACCOUNT=\w+$/),
    },
  });
});

test('throw-away data as root gets an unprivileged account', async () => {
  const account = await databaseAccount({ kind: 'throwaway' }, root);
  expect(account).toMatchObject({ name: 'nobody', home: null, isSelf: false });
  expect(account.uid).not.toBe(0);
  expect(account.gid).not.toBe(0);
});

test('a named account whose home was never made has none', async () => {
  // Debian's password file: nobody lives in /nonexistent. Elsewhere its home is a folder that exists.
  const { home } = await databaseAccount({ kind: 'named', account: 'nobody' }, root);
  expect(home === null || existsSync(home)).toBe(true);
  expect(home).not.toBe('/nonexistent');
});

test('an ordinary user is its own account, named or not', async () => {
  const own = { ...alice, isSelf: true };
  expect(await databaseAccount(null, alice)).toEqual(own);
  expect(await databaseAccount({ kind: 'throwaway' }, alice)).toEqual(own);
  expect(await databaseAccount({ kind: 'named', account: 'alice' }, alice)).toEqual(own);
});

test.each([
  ['root', root, 'account-is-root'],
  ['no-such-account-here', root, 'account-unknown'],
  ['-u root; id', root, 'account-unknown'],
  ['bob', alice, 'account-other'],
] as const)('account %s named by %o is refused: %s', async (account, self, code) => {
  await expect(databaseAccount({ kind: 'named', account }, self)).rejects.toMatchObject({
    code,
    got: account,
  });
});

test('the account of this test is found as the system knows it', async () => {
  const { username, uid, gid } = userInfo();
  expect(await findAccount(username)).toMatchObject({ name: username, uid, gid });
});

test('a line of a password file is read by its fields', () => {
  const passwd = 'alicia:x:1:1::/a:/bin/sh\nalice:x:1000:100:Alice,,,:/home/alice:/bin/sh\n';
  expect(accountIn(passwd, 'alice')).toEqual({ name: 'alice', uid: 1000, gid: 100, home: '/home/alice' });
  expect(accountIn(passwd, 'ali')).toBeNull();
});
