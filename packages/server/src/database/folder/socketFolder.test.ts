import { chmod, mkdir, rm, stat } from 'node:fs/promises';
import { createServer } from 'node:net';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type DatabaseAccount, databaseAccount } from '../account/account.js';
import { makeTestFolder, removeTestFolder } from '../testing/testFolder.js';
import type { FolderLayout } from './layout.js';
import { prepareFolder } from './prepareFolder.js';
import { LONGEST_SOCKET_PATH_BYTES, socketFolder } from './socketFolder.js';

let outer: string;
let account: DatabaseAccount;
beforeEach(async () => {
  outer = await makeTestFolder();
  account = await databaseAccount({ kind: 'throwaway' });
});
afterEach(() => removeTestFolder(outer));

function layoutAt(...parts: string[]): Promise<FolderLayout> {
  return prepareFolder(join(outer, ...parts), 'clinic', account);
}

test('sockets lie in the data folder where the path is short', async () => {
  const layout = await layoutAt('data');
  expect(await socketFolder(layout, account)).toBe(layout.run);
});

test('a long path moves them to a short folder of the account alone, the same one every time', async () => {
  const layout = await layoutAt('a'.repeat(60), 'ä'.repeat(30));
  const folder = await socketFolder(layout, account);
  const { uid, mode } = await stat(folder);
  expect(Buffer.byteLength(join(folder, '.s.PGSQL.5432'))).toBeLessThanOrEqual(LONGEST_SOCKET_PATH_BYTES);
  expect({ uid, mode: mode & 0o777 }).toEqual({ uid: account.uid, mode: 0o700 });
  expect(await socketFolder(layout, account)).toBe(folder);
  const other = await layoutAt('b'.repeat(60), 'ä'.repeat(30));
  expect(await socketFolder(other, account)).not.toBe(folder);
  await Promise.all([
    rm(folder, { recursive: true }),
    rm(await socketFolder(other, account), { recursive: true }),
  ]);
});

test('at the long path no socket can be made: the system refuses it or cuts its name', async () => {
  const path = join(outer, 'a'.repeat(60), 'b'.repeat(60), '.s.PGSQL.5432');
  await mkdir(dirname(path), { recursive: true });
  const server = createServer();
  await new Promise<void>((resolve) => {
    server.once('error', () => resolve()).listen(path, () => resolve());
  });
  await expect(stat(path)).rejects.toMatchObject({ code: 'ENOENT' });
  server.close();
});

test('a short folder that others may enter is refused', async () => {
  const layout = await layoutAt('a'.repeat(60), 'b'.repeat(60));
  const folder = await socketFolder(layout, account);
  await chmod(folder, 0o777);
  await expect(socketFolder(layout, account)).rejects.toMatchObject({ code: 'socket-folder-taken' });
  await rm(folder, { recursive: true });
});
