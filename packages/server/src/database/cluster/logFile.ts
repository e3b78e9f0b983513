import { constants } from 'node:fs';
import { type FileHandle, open, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { DatabaseAccount } from '../account/account.js';
import { appendOwned, giveFile } from '../account/ownedFile.js';
import type { FolderLayout } from '../folder/layout.js';

/** Months of starts and stops; the file and the one before it never hold much more than twice this. */
export const LARGEST_LOG_BYTES = 1_000_000;

const TAIL_BYTES = 4_000;

/** Not there on Windows, where an account of its own is not used. */
const NO_FOLLOW = constants.O_NOFOLLOW ?? 0;

/** Opens the server's log for appending, an over-long one put aside first. The caller closes it. */
export async function openLog(layout: FolderLayout, account: DatabaseAccount): Promise<FileHandle> {
  await boundLog(layout, account);
  return appendOwned(logPath(layout), account);
}

/** Puts an over-long log aside by copying and emptying it, so that a server may go on writing to it. */
export async function boundLog(layout: FolderLayout, account: DatabaseAccount): Promise<void> {
  const log = await appendOwned(logPath(layout), account);
  try {
    if ((await log.stat()).size <= LARGEST_LOG_BYTES) return;
    const older = `${logPath(layout)}.1`;
    await copyAside(logPath(layout), older);
    await giveFile(older, account);
    await log.truncate(0);
  } finally {
    await log.close();
  }
}

/**
 * Copies without following a link at either end: the folder belongs to the database's account, and root must neither
 * read nor overwrite for it what it could not itself.
 */
async function copyAside(from: string, to: string): Promise<void> {
  await rm(to, { force: true });
  const source = await open(from, constants.O_RDONLY | NO_FOLLOW);
  try {
    const copy = await open(to, constants.O_WRONLY | constants.O_CREAT | constants.O_EXCL | NO_FOLLOW, 0o600);
    try {
      await copy.writeFile(await source.readFile());
    } finally {
      await copy.close();
    }
  } finally {
    await source.close();
  }
}

/** The last lines the server wrote from `start` on, for an error that quotes them. */
export async function logTail(layout: FolderLayout, start = 0): Promise<string> {
  const log = await open(logPath(layout), 'r').catch(() => null);
  if (log === null) return '';
  try {
    const { size } = await log.stat();
    const from = Math.max(start, size - TAIL_BYTES);
    const { buffer, bytesRead } = await log.read(Buffer.alloc(Math.max(0, size - from)), 0, undefined, from);
    return buffer.toString('utf8', 0, bytesRead).trim();
  } finally {
    await log.close();
  }
}

export function logPath(layout: FolderLayout): string {
  return join(layout.log, 'postgresql.log');
}
