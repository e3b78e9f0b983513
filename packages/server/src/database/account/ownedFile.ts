import { randomBytes } from 'node:crypto';
import { constants } from 'node:fs';
import { type FileHandle, lchown, mkdir, open, rename, rm } from 'node:fs/promises';
import { errorCode } from '../problem.js';
import type { DatabaseAccount } from './account.js';

/**
 * Makes a folder that belongs to the account. An existing one is left as it is. True where it was made now.
 * The folder is opened without following links before it changes hands, so that nobody who may write beside it
 * can have root give away another one.
 */
export async function makeOwnedFolder(
  path: string,
  account: DatabaseAccount,
  mode = 0o700,
): Promise<boolean> {
  try {
    await mkdir(path, { mode });
  } catch (error) {
    if (errorCode(error) === 'EEXIST') return false;
    throw error;
  }
  await giveFolder(path, account, mode);
  return true;
}

/** Hands a folder that the caller has just made, or found empty and its own, to the account. */
export async function giveFolder(path: string, account: DatabaseAccount, mode = 0o700): Promise<void> {
  if (process.platform === 'win32') return;
  const folder = await open(path, constants.O_RDONLY | constants.O_DIRECTORY | constants.O_NOFOLLOW);
  try {
    await give(folder, account, mode);
  } finally {
    await folder.close();
  }
}

/** Writes a file of the account's whole or not at all: beside its place first, then renamed into it. */
export async function writeOwned(path: string, text: string, account: DatabaseAccount): Promise<void> {
  const beside = `${path}.${randomBytes(6).toString('hex')}`;
  const file = await open(beside, 'wx', 0o600);
  try {
    await file.writeFile(text);
    await give(file, account, 0o600);
    await file.sync();
  } finally {
    await file.close();
  }
  await rename(beside, path).catch(async (error: unknown) => {
    await rm(beside, { force: true });
    throw error;
  });
}

/** Opens a file of the account's for appending, never through a link. The caller closes it. */
export async function appendOwned(path: string, account: DatabaseAccount): Promise<FileHandle> {
  const noFollow = process.platform === 'win32' ? 0 : constants.O_NOFOLLOW;
  const file = await open(
    path,
    constants.O_WRONLY | constants.O_APPEND | constants.O_CREAT | noFollow,
    0o600,
  );
  await give(file, account, 0o600);
  return file;
}

/** Hands a file that the caller has just made to the account, never through a link. */
export async function giveFile(path: string, account: DatabaseAccount): Promise<void> {
  const noFollow = process.platform === 'win32' ? 0 : constants.O_NOFOLLOW;
  const file = await open(path, constants.O_RDONLY | noFollow);
  try {
    await give(file, account, 0o600);
  } finally {
    await file.close();
  }
}

async function give(file: FileHandle, account: DatabaseAccount, mode: number): Promise<void> {
  if (process.platform === 'win32') return;
  if (!account.isSelf) await file.chown(account.uid, account.gid);
  await file.chmod(mode);
}

/** Lets the account speak to a socket that this program has just made in a folder of the account's. */
export async function giveSocket(path: string, account: DatabaseAccount): Promise<void> {
  if (process.platform !== 'win32' && !account.isSelf) await lchown(path, account.uid, account.gid);
}
