import { createHash } from 'node:crypto';
import { lstat, realpath } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { DatabaseAccount } from '../account/account.js';
import { makeOwnedFolder } from '../account/ownedFile.js';
import { blockedOnTheWay } from '../account/reach.js';
import { DatabaseProblem } from '../problem.js';
import type { FolderLayout } from './layout.js';

/**
 * Longest path of a socket, in bytes. The systems allow 107 (Linux) or 103 (macOS), and a longer one is cut or
 * refused without a clear word.
 */
export const LONGEST_SOCKET_PATH_BYTES = 100;

/** The longest name a socket has here. */
const LONGEST_SOCKET_NAME = '.s.PGSQL.5432';

/**
 * Where the sockets of a data folder lie: its own `run`, or, where that path would be too long, a private
 * folder under the temp folder named by a hash of the real path, so that every program on the folder finds it.
 *
 * Errors: `socket-folder-taken` when somebody else was there first.
 */
export async function socketFolder(layout: FolderLayout, account: DatabaseAccount): Promise<string> {
  const run = await realpath(layout.run);
  if (isShortEnough(run) || process.platform === 'win32') return run; // Windows has named pipes instead
  const name = `evenfall-${createHash('sha256').update(run).digest('hex').slice(0, 20)}`;
  for (const temp of [tmpdir(), '/tmp']) {
    const folder = join(temp, name);
    if (!isShortEnough(folder) || (await blockedOnTheWay(folder, account)) !== null) continue;
    await makeOwnedFolder(folder, account);
    await checkPrivate(folder, account);
    return folder;
  }
  throw new DatabaseProblem('socket-folder-taken', {
    field: 'TMPDIR',
    expected: `a folder that ${account.name} may enter`,
    got: tmpdir(),
    names: { folder: tmpdir(), account: account.name },
  });
}

function isShortEnough(folder: string): boolean {
  return Buffer.byteLength(join(folder, LONGEST_SOCKET_NAME)) <= LONGEST_SOCKET_PATH_BYTES;
}

/** Anybody may have made a folder of that name in the temp folder: it counts only as the account's alone. */
async function checkPrivate(folder: string, account: DatabaseAccount): Promise<void> {
  const found = await lstat(folder);
  if (!found.isDirectory() || found.uid !== account.uid || (found.mode & 0o077) !== 0) {
    throw new DatabaseProblem('socket-folder-taken', {
      field: 'TMPDIR',
      expected: `a folder of ${account.name} alone`,
      got: folder,
      figures: { ownerId: found.uid, accountId: account.uid },
      names: { folder, account: account.name },
    });
  }
}
