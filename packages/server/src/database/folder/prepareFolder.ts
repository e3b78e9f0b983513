import { chmod, lstat, mkdir, readdir, readFile, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import type { DatabaseAccount } from '../account/account.js';
import { giveFolder, makeOwnedFolder, writeOwned } from '../account/ownedFile.js';
import { blockedOnTheWay, nearestExisting } from '../account/reach.js';
import { DatabaseProblem, errorCode } from '../problem.js';
import type { Purpose } from './defaultFolder.js';
import { type FolderLayout, folderLayout } from './layout.js';

/** What may lie in a folder that has no label yet: left by the system, not by a person. */
const NOT_CONTENT = new Set(['.DS_Store', 'desktop.ini', 'lost+found']);

/**
 * Makes the data folder, or checks the one that is there: reachable by the account, owned by it, closed to
 * everybody else, ours and for this purpose. A folder with other things in it is never taken over.
 *
 * Errors: `folder-unreachable`, `folder-owner`, `folder-not-ours`, `folder-other-purpose`, `folder-unwritable`.
 */
export async function prepareFolder(
  root: string,
  purpose: Purpose,
  account: DatabaseAccount,
): Promise<FolderLayout> {
  const layout = folderLayout(root);
  try {
    await makeParents(dirname(root), account);
    const blocked = await blockedOnTheWay(root, account);
    if (blocked !== null) throw unreachable(root, blocked, account);
    if (!(await makeOwnedFolder(root, account))) await takeExisting(root, account);
    await checkLabel(layout, purpose, account);
    for (const folder of [layout.run, layout.log]) {
      if (!(await makeOwnedFolder(folder, account))) await checkOwner(folder, account);
    }
  } catch (error) {
    if (error instanceof DatabaseProblem) throw error;
    throw new DatabaseProblem('folder-unwritable', {
      field: 'EVENFALL_DATA',
      got: root,
      names: { folder: root, account: account.name, reason: errorCode(error) },
      cause: error,
    });
  }
  return layout;
}

/** New folders above belong to whoever owns the nearest one that exists: a home stays its owner's. */
async function makeParents(path: string, account: DatabaseAccount): Promise<void> {
  const existing = await nearestExisting(path);
  if (existing === path) return;
  const blocked = await blockedOnTheWay(`${existing}/x`, account);
  if (blocked !== null) throw unreachable(path, blocked, account);
  const theirs = !account.isSelf && (await stat(existing)).uid === account.uid;
  await makeParents(dirname(path), account);
  if (theirs) {
    await makeOwnedFolder(path, account);
    return;
  }
  await mkdir(path, { recursive: true, mode: 0o700 });
  if (!account.isSelf) await chmod(path, 0o755); // whatever the umask: the account must get through
}

async function takeExisting(root: string, account: DatabaseAccount): Promise<void> {
  if (process.platform === 'win32') return;
  const { uid } = await stat(root);
  const isEmpty = (await readdir(root)).every((name) => NOT_CONTENT.has(name));
  if (isEmpty && uid === 0 && !account.isSelf) return giveFolder(root, account);
  await checkOwner(root, account);
}

async function checkOwner(folder: string, account: DatabaseAccount): Promise<void> {
  if (process.platform === 'win32') return;
  const { uid, mode } = await stat(folder);
  if (uid !== account.uid) {
    throw new DatabaseProblem('folder-owner', {
      field: 'EVENFALL_DATA',
      expected: account.name,
      got: folder,
      figures: { ownerId: uid, accountId: account.uid },
      names: { folder, account: account.name },
    });
  }
  // A copy brought from elsewhere may be open to others; PostgreSQL would refuse it.
  if ((mode & 0o077) !== 0 && (await isOurs(folder))) await chmod(folder, 0o700);
}

/** Whether closing this folder to others can hurt nobody: it holds nothing, or our label, or is a part of ours. */
async function isOurs(folder: string): Promise<boolean> {
  const names = (await readdir(folder)).filter((name) => !NOT_CONTENT.has(name));
  return (
    names.length === 0 ||
    names.includes('evenfall.json') ||
    (await exists(`${dirname(folder)}/evenfall.json`))
  );
}

async function checkLabel(layout: FolderLayout, purpose: Purpose, account: DatabaseAccount): Promise<void> {
  const text = await readFile(layout.label, 'utf8').catch((error: unknown) => {
    if (errorCode(error) === 'ENOENT') return null;
    throw error;
  });
  if (text === null) {
    const names = (await readdir(layout.root)).filter((name) => !NOT_CONTENT.has(name));
    if (names.length > 0 && !names.every((name) => name.startsWith('evenfall.json.'))) {
      throw new DatabaseProblem('folder-not-ours', {
        field: 'EVENFALL_DATA',
        expected: 'an empty folder',
        got: layout.root,
        figures: { things: names.length },
        names: { folder: layout.root },
      });
    }
    return writeOwned(layout.label, `${JSON.stringify({ program: 'evenfall', purpose })}\n`, account);
  }
  const labelled = purposeIn(text);
  if (labelled !== purpose) {
    throw new DatabaseProblem('folder-other-purpose', {
      field: 'EVENFALL_DATA',
      expected: purpose,
      got: labelled ?? 'unreadable',
      names: { folder: layout.root },
    });
  }
}

function purposeIn(text: string): Purpose | null {
  try {
    const { purpose } = JSON.parse(text) as { purpose?: unknown };
    return purpose === 'clinic' || purpose === 'demo' ? purpose : null;
  } catch {
    return null;
  }
}

function unreachable(folder: string, blocked: string, account: DatabaseAccount): DatabaseProblem {
  return new DatabaseProblem('folder-unreachable', {
    field: 'EVENFALL_DATA',
    expected: `a folder that ${account.name} may enter`,
    got: folder,
    names: { folder, blocked, account: account.name },
  });
}

async function exists(path: string): Promise<boolean> {
  return lstat(path).then(
    () => true,
    () => false,
  );
}
