import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { accountNeeded } from './account.mjs';

const ROOT = 0;

test.each([
  ['nothing was named', []],
  ['only a folder was', ['--data', '/srv/evenfall']],
  ['an option only begins like it', ['--accounts', 'wren']],
])('root is refused where %s', (_, args) => {
  expect(accountNeeded(args, {}, ROOT)).toContain('npm start -- --account NAME');
});

test('a folder that is named is meant, whatever database the environment names', () => {
  const env = { DATABASE_URL: 'postgres://somewhere' };
  expect(accountNeeded([], env, ROOT)).toBeNull();
  expect(accountNeeded(['--data', '/srv/evenfall'], env, ROOT)).toContain('--account');
});

test.each([
  ['an account was named', ['--account', 'wren'], {}],
  ['an account was named at once', ['--account=wren'], {}],
  ['the environment names one', [], { EVENFALL_ACCOUNT: 'wren' }],
  ['it is the demo', ['--demo'], {}],
  ['it only asks', ['--help'], {}],
])('root is not refused where %s', (_, args, env) => {
  expect(accountNeeded(args, env, ROOT)).toBeNull();
});

test('nobody else is refused', () => {
  expect(accountNeeded([], {}, 1000)).toBeNull();
  expect(accountNeeded([], {}, undefined)).toBeNull();
});

test('who used sudo is named', () => {
  expect(accountNeeded([], { SUDO_USER: 'wren' }, ROOT)).toContain('--account wren');
  expect(accountNeeded([], { SUDO_USER: 'root' }, ROOT)).toContain('--account NAME');
});

test('npm start says so before it installs or builds anything', () => {
  const checkout = mkdtempSync(join(tmpdir(), 'evenfall-start-'));
  cpSync(fileURLToPath(new URL('.', import.meta.url)), join(checkout, 'tools'), { recursive: true });
  const { EVENFALL_ACCOUNT: _account, DATABASE_URL: _url, ...env } = process.env;
  // Whoever runs the test, the start believes that it is root. It has no package-lock.json: to install would be a fault.
  const asRoot = ['--import', 'data:text/javascript,process.getuid = () => 0'];
  const start = join(checkout, 'tools', 'start.mjs');
  const { status, stdout, stderr } = spawnSync(process.execPath, [...asRoot, start], {
    encoding: 'utf8',
    env,
  });
  expect([status, stdout]).toEqual([2, '']);
  expect(stderr).toMatch(/^evenfall: This is the machine's root account, .*--account/);
  expect(existsSync(join(checkout, 'node_modules'))).toBe(false);
  rmSync(checkout, { recursive: true });
});
