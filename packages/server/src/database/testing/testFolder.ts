import { chmod, mkdtemp, realpath, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { databaseAccount } from '../account/account.js';
import { blockedOnTheWay } from '../account/reach.js';

/** A folder under the temp folder that the account of a test's PostgreSQL may enter. */
export async function makeTestFolder(): Promise<string> {
  const account = await databaseAccount({ kind: 'throwaway' });
  const temp = (await blockedOnTheWay(join(tmpdir(), 'x'), account)) === null ? tmpdir() : '/tmp';
  const folder = await mkdtemp(join(await realpath(temp), 'evenfall-test-'));
  await chmod(folder, 0o755);
  return folder;
}

export async function removeTestFolder(folder: string): Promise<void> {
  await rm(folder, { recursive: true, force: true, maxRetries: 5 });
}
