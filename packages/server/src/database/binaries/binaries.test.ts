import { chmod, cp, lstat, mkdir, readFile, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { type DatabaseAccount, databaseAccount, ownAccount } from '../account/account.js';
import { otherPostgres } from '../testing/otherPostgres.js';
import { makeTestFolder, removeTestFolder } from '../testing/testFolder.js';
import { findBinaries, packagedBinaries } from './findBinaries.js';
import { areLinksWhole, makeLinks } from './links.js';
import { stageNative } from './stage.js';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 }); // a cluster takes a second to make, on a busy machine several

let outer: string;
let account: DatabaseAccount;
const self: DatabaseAccount = { ...ownAccount(), isSelf: true };
beforeEach(async () => {
  outer = await makeTestFolder();
  account = await databaseAccount({ kind: 'throwaway' });
});
afterEach(() => removeTestFolder(outer));

/** The platform's package as it is installed here. */
async function installedNative(): Promise<string> {
  const { postgres } = await findBinaries(self, {});
  return dirname(dirname(postgres));
}

/** The package as it lies when install scripts were blocked: without its links. */
async function nativeWithoutLinks(folder: string): Promise<string> {
  const native = join(folder, 'native');
  const installed = await installedNative();
  await cp(installed, native, {
    recursive: true,
    verbatimSymlinks: true,
    filter: (path) => !path.endsWith('.a'),
  });
  const list = JSON.parse(await readFile(join(native, 'pg-symlinks.json'), 'utf8')) as { target: string }[];
  for (const { target } of list) await rm(join(folder, target), { force: true });
  return native;
}

test('links missing from a package whose install script was blocked are made, and the server runs', async () => {
  const native = await nativeWithoutLinks(outer);
  expect(await areLinksWhole(native)).toBe(false);
  const { major, postgres } = await packagedBinaries(native, account);
  expect(postgres).toBe(join(native, 'bin', 'postgres'));
  expect(major).toBe(18);
  expect((await lstat(join(native, 'lib', 'libpq.so.5'))).isSymbolicLink()).toBe(true);
});

test('a link that leads nowhere is replaced, one that leads somewhere is kept', async () => {
  const native = join(outer, 'native');
  await mkdir(join(native, 'lib'), { recursive: true });
  await writeFile(join(native, 'lib', 'libx.so.1.2'), '');
  await symlink('gone', join(native, 'lib', 'libx.so'));
  const list = [{ source: 'native/lib/libx.so.1.2', target: 'native/lib/libx.so' }];
  await writeFile(join(native, 'pg-symlinks.json'), JSON.stringify(list));
  await makeLinks(native);
  expect(await areLinksWhole(native)).toBe(true);
  const { ino } = await lstat(join(native, 'lib', 'libx.so'));
  await makeLinks(native);
  expect((await lstat(join(native, 'lib', 'libx.so'))).ino).toBe(ino);
});

test('a package that cannot be run or mended in its place is run from a copy', async () => {
  const home = join(outer, 'home');
  await mkdir(home);
  const native = await nativeWithoutLinks(home);
  // Root may mend anything, but its closed home stops the account; an ordinary user may not write everywhere.
  await chmod(account.isSelf ? join(native, 'lib') : home, account.isSelf ? 0o555 : 0o700);
  const { major, postgres } = await packagedBinaries(native, account, [join(outer, 'cache')]);
  expect(postgres).toBe(join(outer, 'cache', 'native-0', 'native', 'bin', 'postgres'));
  expect(major).toBe(18);
  await chmod(join(native, 'lib'), 0o755);
});

test('an npm package named by its folder gets its links too', async () => {
  const native = await nativeWithoutLinks(outer);
  const { major } = await findBinaries(account, { EVENFALL_PG_BIN: join(native, 'bin') });
  expect(major).toBe(18);
});

test('a package in a closed home is copied to where the account can run it, once per version', async () => {
  const home = join(outer, 'home');
  await mkdir(home, { mode: 0o700 });
  const native = await nativeWithoutLinks(home);
  const place = join(outer, 'cache');
  const staged = await stageNative(native, 'linux-x64-18', account, [place]);
  expect(await areLinksWhole(staged)).toBe(true);
  for (const folder of [place, staged, join(staged, 'bin')]) {
    expect((await stat(folder)).mode & 0o777).toBe(0o755);
  }
  const { ino } = await stat(join(staged, 'bin', 'postgres'));
  expect(await stageNative(native, 'linux-x64-18', account, [place])).toBe(staged);
  expect((await stat(join(staged, 'bin', 'postgres'))).ino).toBe(ino);
});

test('a place where somebody else may write is never run from; the next place is taken', async () => {
  const native = await nativeWithoutLinks(outer);
  const open = join(outer, 'open');
  await mkdir(open);
  await chmod(open, 0o777);
  const staged = await stageNative(native, 'linux-x64-18', account, [open, join(outer, 'cache')]);
  expect(staged).toBe(join(outer, 'cache', 'linux-x64-18', 'native'));
  await expect(stageNative(native, 'linux-x64-18', account, [open])).rejects.toMatchObject({
    code: 'binaries-unreachable',
  });
});

test('another PostgreSQL is used when its folder is named', async () => {
  const { folder, major } = await otherPostgres();
  expect(await findBinaries(account, { EVENFALL_PG_BIN: folder })).toMatchObject({
    major,
    postgres: join(folder, 'postgres'),
  });
});

test('a named folder without the programs, and programs that do not start, are refused', async () => {
  await expect(findBinaries(account, { EVENFALL_PG_BIN: outer })).rejects.toMatchObject({
    code: 'binaries-missing',
  });
  for (const program of ['postgres', 'initdb']) {
    await writeFile(join(outer, program), '#!/bin/sh\necho no such library >&2\nexit 127\n', { mode: 0o755 });
  }
  await expect(findBinaries(account, { EVENFALL_PG_BIN: outer })).rejects.toMatchObject({
    code: 'binaries-unusable',
    names: { reason: expect.stringContaining('no such library') },
  });
  await writeFile(join(outer, 'postgres'), '#!/bin/sh\necho "postgres (PostgreSQL) 13.4"\n', { mode: 0o755 });
  await expect(findBinaries(account, { EVENFALL_PG_BIN: outer })).rejects.toMatchObject({
    code: 'binaries-too-old',
    figures: { oldestMajor: 14, binariesMajor: 13 },
  });
});
