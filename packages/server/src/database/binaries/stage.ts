import { randomBytes } from 'node:crypto';
import { chmod, constants, cp, lstat, mkdir, readdir, rename, rm } from 'node:fs/promises';
import { homedir, tmpdir } from 'node:os';
import { basename, extname, isAbsolute, join } from 'node:path';
import type { DatabaseAccount } from '../account/account.js';
import { blockedOnTheWay } from '../account/reach.js';
import { DatabaseProblem, errorCode } from '../problem.js';
import { areLinksWhole, makeLinks } from './links.js';

/**
 * A copy of the package's `native` folder that the account can reach and run, made once per version: whole
 * before it is renamed into place, owned by this program's account and closed to other writers.
 *
 * @param name names the version; the copy is reused for as long as it stays the same
 * @param places folders to try, in order; the default is this program's cache, then the temp folder
 */
export async function stageNative(
  native: string,
  name: string,
  account: DatabaseAccount,
  places: readonly string[] = stagingPlaces(),
): Promise<string> {
  const reasons: string[] = [];
  for (const place of places) {
    const staged = join(place, name, 'native');
    try {
      await makePlace(place);
      const blocked = await blockedOnTheWay(join(staged, 'bin'), account);
      if (blocked !== null) throw new Error(`${account.name} may not enter ${blocked}`);
      if (!(await isWhole(staged))) await copyInto(native, place, name);
      return staged;
    } catch (error) {
      reasons.push(`${place}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  throw new DatabaseProblem('binaries-unreachable', {
    field: 'EVENFALL_PG_BIN',
    expected: `PostgreSQL where ${account.name} may run it`,
    got: native,
    names: { folder: native, account: account.name, reason: reasons.join('; ') },
  });
}

/** Where a copy may lie: the usual cache, of the machine for root, of the account for anybody else. */
function stagingPlaces(env: NodeJS.ProcessEnv = process.env): string[] {
  const uid = process.getuid?.() ?? -1;
  const temp = join(tmpdir(), `evenfall-postgresql-${uid}`);
  if (uid === 0) return ['/var/cache/evenfall', temp, `/tmp/evenfall-postgresql-${uid}`];
  const xdg = env.XDG_CACHE_HOME;
  const cache = xdg !== undefined && isAbsolute(xdg) ? xdg : join(homedir(), '.cache');
  return [join(cache, 'evenfall'), temp];
}

/** The place must be ours: what lies in it will be run. */
async function makePlace(place: string): Promise<void> {
  await mkdir(place, { recursive: true, mode: 0o755 });
  await refuseOthers(place);
  if (process.getuid?.() === 0) await chmod(place, 0o755);
}

async function refuseOthers(folder: string): Promise<void> {
  if (process.platform === 'win32') return;
  const { uid, mode } = await lstat(folder);
  if (uid !== process.getuid?.() || (mode & 0o022) !== 0) {
    throw new Error(`${folder} is not this account's alone`);
  }
}

async function isWhole(staged: string): Promise<boolean> {
  const found = await lstat(staged).catch(() => null);
  if (found === null) return false;
  await refuseOthers(staged);
  return areLinksWhole(staged);
}

async function copyInto(native: string, place: string, name: string): Promise<void> {
  const beside = join(place, `${name}.new-${randomBytes(6).toString('hex')}`);
  const copy = join(beside, 'native');
  try {
    await mkdir(beside, { mode: 0o755 });
    await cp(native, copy, {
      recursive: true,
      verbatimSymlinks: true,
      mode: constants.COPYFILE_FICLONE,
      filter: (path) => extname(path) !== '.a' && basename(path) !== 'pkgconfig', // only compilers need these
    });
    await openToReaders(beside); // first: a read-only folder is copied as one
    await makeLinks(copy);
    await putInPlace(beside, join(place, name));
  } finally {
    await rm(beside, { recursive: true, force: true });
  }
}

/** Another program may have been quicker: its whole copy is kept, since it may be running from it. */
async function putInPlace(beside: string, place: string): Promise<void> {
  try {
    await rename(beside, place);
  } catch (error) {
    if (await isWhole(join(place, 'native'))) return;
    if (!['ENOTEMPTY', 'EEXIST', 'EPERM'].includes(errorCode(error))) throw error;
    await rm(place, { recursive: true, force: true });
    await rename(beside, place);
  }
}

/** Everybody may read and enter, nobody but the owner may write, whatever the umask was. */
async function openToReaders(folder: string): Promise<void> {
  await chmod(folder, 0o755);
  for (const entry of await readdir(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) await openToReaders(path);
    else if (entry.isFile()) await chmod(path, basename(folder) === 'bin' ? 0o755 : 0o644);
  }
}
