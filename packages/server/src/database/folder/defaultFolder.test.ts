import { expect, test } from 'vitest';
import type { DatabaseAccount } from '../account/account.js';
import { dataFolder } from './defaultFolder.js';

const alice: DatabaseAccount = { name: 'alice', uid: 1000, gid: 1000, home: '/home/alice', isSelf: true };
const nobody: DatabaseAccount = { name: 'nobody', uid: 65534, gid: 65534, home: null, isSelf: false };

// Source of the places: XDG Base Directory Specification ("$HOME/.local/share" where XDG_DATA_HOME is not set or
// is not absolute); macOS and Windows places are from memory.
test.each([
  ['linux', {}, 'clinic', '/home/alice/.local/share/evenfall'],
  ['linux', {}, 'demo', '/home/alice/.local/share/evenfall-demo'],
  ['linux', { XDG_DATA_HOME: '/srv/xdg' }, 'clinic', '/srv/xdg/evenfall'],
  ['linux', { XDG_DATA_HOME: 'relative' }, 'clinic', '/home/alice/.local/share/evenfall'],
  ['darwin', {}, 'demo', '/home/alice/Library/Application Support/Evenfall-demo'],
  [
    'win32',
    { LOCALAPPDATA: 'C:\\Users\\alice\\AppData\\Local' },
    'clinic',
    'C:\\Users\\alice\\AppData\\Local\\Evenfall',
  ],
  ['linux', { EVENFALL_DATA: '/srv/records' }, 'clinic', '/srv/records'],
  ['linux', { EVENFALL_DATA: '/srv/records' }, 'demo', '/srv/records-demo'],
] as const)('on %s with %o the %s lies in %s', (platform, env, purpose, folder) => {
  expect(dataFolder({ purpose, account: alice, env, platform })).toBe(folder);
});

test('a folder named by the caller wins and is taken as it is', () => {
  const env = { EVENFALL_DATA: '/srv/records' };
  expect(dataFolder({ purpose: 'demo', account: alice, env, folder: '/srv/trial' })).toBe('/srv/trial');
});

test('an account that root runs PostgreSQL as gets its own home, whatever root has set', () => {
  const env = { XDG_DATA_HOME: '/root/xdg' };
  const account = { ...alice, isSelf: false };
  expect(dataFolder({ purpose: 'clinic', account, env, platform: 'linux' })).toBe(
    '/home/alice/.local/share/evenfall',
  );
});

test("root's demo lies where an account without a home can reach it", () => {
  expect(dataFolder({ purpose: 'demo', account: nobody, env: {}, platform: 'linux' })).toBe(
    '/var/lib/evenfall-demo',
  );
});
