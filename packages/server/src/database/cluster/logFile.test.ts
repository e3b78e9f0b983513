import { readdir, readFile, stat, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { type DatabaseAccount, databaseAccount } from '../account/account.js';
import type { FolderLayout } from '../folder/layout.js';
import { prepareFolder } from '../folder/prepareFolder.js';
import { makeTestFolder, removeTestFolder } from '../testing/testFolder.js';
import { boundLog, LARGEST_LOG_BYTES, logPath, logTail, openLog } from './logFile.js';

let outer: string;
let account: DatabaseAccount;
let layout: FolderLayout;
beforeEach(async () => {
  outer = await makeTestFolder();
  account = await databaseAccount({ kind: 'throwaway' });
  layout = await prepareFolder(join(outer, 'data'), 'clinic', account);
});
afterEach(() => removeTestFolder(outer));

test('an over-long log is put aside, and whoever has it open writes on at its new beginning', async () => {
  const log = await openLog(layout, account);
  await log.write('x'.repeat(LARGEST_LOG_BYTES + 1));
  await boundLog(layout, account);
  await log.write('after\n');
  await log.close();
  expect(await readFile(logPath(layout), 'utf8')).toBe('after\n');
  expect((await stat(`${logPath(layout)}.1`)).size).toBe(LARGEST_LOG_BYTES + 1);
  for (const name of await readdir(layout.log)) {
    const { uid, mode } = await stat(join(layout.log, name));
    expect({ uid, mode: mode & 0o777 }).toEqual({ uid: account.uid, mode: 0o600 });
  }
});

test('the tail holds what was written from a place on, and no log gives an empty one', async () => {
  expect(await logTail(layout)).toBe('');
  await writeFile(logPath(layout), 'an earlier start\nthis start\n');
  expect(await logTail(layout, 17)).toBe('this start');
});
