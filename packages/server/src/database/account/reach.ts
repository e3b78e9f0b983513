import { lstat, realpath, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import { errorCode } from '../problem.js';
import type { DatabaseAccount } from './account.js';

const ENTER = 0o1;
const READ = 0o4;

/**
 * The first folder on the way to `path` that the account may not enter; null where the way is free. Judged from
 * modes alone, since only root asks and root may enter everything. Folders that do not exist yet stop nobody.
 */
export async function blockedOnTheWay(path: string, account: DatabaseAccount): Promise<string | null> {
  if (account.isSelf) return null;
  for (const folder of await foldersDownTo(dirname(path))) {
    if (!(await mayDo(folder, account, ENTER))) return folder;
  }
  return null;
}

/** Whether the account may read the file, the way to it included. */
export async function mayRead(path: string, account: DatabaseAccount): Promise<boolean> {
  if (account.isSelf) return true;
  return (await blockedOnTheWay(path, account)) === null && (await mayDo(path, account, READ));
}

async function mayDo(path: string, account: DatabaseAccount, what: number): Promise<boolean> {
  const { mode, uid, gid } = await stat(path);
  if (uid === account.uid) return (mode & (what << 6)) !== 0;
  if (gid === account.gid) return (mode & (what << 3)) !== 0;
  return (mode & what) !== 0;
}

/** Every existing folder from the root down, as the system walks them: links replaced by what they lead to. */
async function foldersDownTo(path: string): Promise<string[]> {
  const real = await realpath(await nearestExisting(path));
  const folders = [real];
  for (let folder = real; folder !== dirname(folder); folder = dirname(folder))
    folders.unshift(dirname(folder));
  return folders;
}

/** The path itself or the nearest folder above it that exists. */
export async function nearestExisting(path: string): Promise<string> {
  try {
    await lstat(path);
    return path;
  } catch (error) {
    if (errorCode(error) !== 'ENOENT' || path === dirname(path)) throw error;
    return nearestExisting(dirname(path));
  }
}
