import { chmod, mkdir, readFile, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type DatabaseAccount, databaseAccount, ownAccount } from '../account/account.js';
import { makeTestFolder, removeTestFolder } from '../testing/testFolder.js';
import { prepareFolder } from './prepareFolder.js';

let outer: string;
let account: DatabaseAccount;
beforeEach(async () => {
  outer = await makeTestFolder();
  account = await databaseAccount({ kind: 'throwaway' });
});
afterEach(() => removeTestFolder(outer));

/** An account that is neither this program's nor the owner of anything here. */
const stranger: DatabaseAccount = { name: 'stranger', uid: 54321, gid: 54321, home: null, isSelf: false };

test('the folder and its parts belong to the account and are closed to everybody else', async () => {
  const umask = process.umask(0o077); // a strict one must not shut the account out of the folders above
  const layout = await prepareFolder(join(outer, 'deep', 'data'), 'clinic', account).finally(() =>
    process.umask(umask),
  );
  for (const folder of [layout.root, layout.run, layout.log]) {
    const { uid, mode } = await stat(folder);
    expect({ folder, uid, mode: mode & 0o777 }).toEqual({ folder, uid: account.uid, mode: 0o700 });
  }
});

test('a folder behind a parent that the account may not enter is refused with the name of the parent', async () => {
  const closed = join(outer, 'home');
  await mkdir(closed, { mode: 0o700 });
  const preparing = prepareFolder(join(closed, 'share', 'data'), 'clinic', stranger);
  await expect(preparing).rejects.toMatchObject({
    code: 'folder-unreachable',
    names: { blocked: closed, account: 'stranger' },
  });
  await expect(stat(join(closed, 'share'))).rejects.toMatchObject({ code: 'ENOENT' });
});

test('a folder of another account is refused', async () => {
  const root = join(outer, 'data');
  await prepareFolder(root, 'clinic', account);
  await chmod(root, 0o755);
  await expect(prepareFolder(root, 'clinic', stranger)).rejects.toMatchObject({
    code: 'folder-owner',
    figures: { ownerId: account.uid, accountId: stranger.uid },
  });
});

test('a folder that holds other things is not taken over, and stays as it was', async () => {
  const root = join(outer, 'photos');
  await mkdir(root, { mode: 0o755 });
  await writeFile(join(root, 'holiday.jpg'), '');
  const own: DatabaseAccount = { ...ownAccount(), isSelf: true };
  await expect(prepareFolder(root, 'clinic', own)).rejects.toMatchObject({ code: 'folder-not-ours' });
  expect((await stat(root)).mode & 0o777).toBe(0o755);
});

test('the invented clinic and a real one never share a folder', async () => {
  const root = join(outer, 'data');
  await prepareFolder(root, 'demo', account);
  const before = await readFile(join(root, 'evenfall.json'), 'utf8');
  await expect(prepareFolder(root, 'clinic', account)).rejects.toMatchObject({
    code: 'folder-other-purpose',
  });
  expect(await readFile(join(root, 'evenfall.json'), 'utf8')).toBe(before);
});

test('a folder of ours that was opened to others, by a copy say, is closed again', async () => {
  const layout = await prepareFolder(join(outer, 'data'), 'clinic', account);
  await chmod(layout.root, 0o755);
  await chmod(layout.run, 0o755);
  await prepareFolder(layout.root, 'clinic', account);
  expect((await stat(layout.root)).mode & 0o777).toBe(0o700);
  expect((await stat(layout.run)).mode & 0o777).toBe(0o700);
});
