import { execFile } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { open, readdir, readFile, rename, rm, rmdir } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { type DatabaseAccount, spawnAs } from '../account/account.js';
import { writeOwned } from '../account/ownedFile.js';
import { childEnvironment } from '../binaries/environment.js';
import type { Binaries } from '../binaries/findBinaries.js';
import type { FolderLayout } from '../folder/layout.js';
import { DatabaseProblem, errorCode } from '../problem.js';
import { type Endpoint, KEEPER_ROLE } from './endpoint.js';

const run = promisify(execFile);

/** A cluster takes a second to make; a slow disk under load may need a minute. */
const LONGEST_CREATION_MS = 180_000;

/** The first major with its own UTF-8 locale, the same on every system. Older ones get plain byte order. */
const FIRST_MAJOR_WITH_OWN_LOCALE = 17;

/**
 * Makes the cluster if there is none. It is made beside its place and renamed into it, so that a crash
 * half-way leaves nothing that a later start could take for a cluster. The keeper's lock must be held.
 *
 * Errors: `folder-other-major`, `folder-damaged`, `create-failed`.
 */
export async function createCluster(
  layout: FolderLayout,
  binaries: Binaries,
  endpoint: Endpoint,
  account: DatabaseAccount,
): Promise<void> {
  await removeHalfMade(layout);
  if (await isThere(layout, binaries)) return;
  const beside = `${layout.cluster}.new-${randomBytes(6).toString('hex')}`;
  const passwordFile = `${beside}-password`;
  try {
    if (endpoint.kind === 'loopback') await writeOwned(passwordFile, `${endpoint.password}\n`, account);
    await run(binaries.initdb, initdbArguments(beside, passwordFile, binaries, endpoint), {
      ...spawnAs(account),
      env: childEnvironment(),
      cwd: layout.root,
      timeout: LONGEST_CREATION_MS,
    });
    await rename(beside, layout.cluster);
    await syncFolder(layout.root);
  } catch (error) {
    throw new DatabaseProblem('create-failed', {
      got: layout.cluster,
      names: { folder: layout.cluster, reason: errorCode(error), log: outputOf(error) },
      cause: error,
    });
  } finally {
    await rm(passwordFile, { force: true });
  }
}

function initdbArguments(
  folder: string,
  passwordFile: string,
  binaries: Binaries,
  endpoint: Endpoint,
): string[] {
  const ownLocale = binaries.major >= FIRST_MAJOR_WITH_OWN_LOCALE;
  return [
    `--pgdata=${folder}`,
    `--username=${KEEPER_ROLE}`,
    '--encoding=UTF8',
    ...(ownLocale ? ['--locale-provider=builtin', '--builtin-locale=C.UTF-8'] : []),
    '--locale=C',
    '--data-checksums',
    ...(endpoint.kind === 'socket'
      ? ['--auth-local=trust', '--auth-host=reject']
      : ['--auth-local=reject', '--auth-host=scram-sha-256', `--pwfile=${passwordFile}`]),
    '--no-instructions',
  ];
}

async function isThere(layout: FolderLayout, binaries: Binaries): Promise<boolean> {
  const names = await readdir(layout.cluster).catch((error: unknown) => {
    if (errorCode(error) === 'ENOENT') return null;
    throw error;
  });
  if (names === null) return false;
  if (names.length === 0) {
    await rmdir(layout.cluster);
    return false;
  }
  const version = await readFile(join(layout.cluster, 'PG_VERSION'), 'utf8').catch(() => '');
  const major = Number.parseInt(version, 10);
  if (!Number.isInteger(major)) {
    throw new DatabaseProblem('folder-damaged', {
      field: 'EVENFALL_DATA',
      expected: 'PG_VERSION',
      got: layout.cluster,
      names: { folder: layout.cluster },
    });
  }
  if (major !== binaries.major) {
    throw new DatabaseProblem('folder-other-major', {
      field: 'EVENFALL_PG_BIN',
      expected: `PostgreSQL ${major}`,
      got: `PostgreSQL ${binaries.major}`,
      figures: { folderMajor: major, binariesMajor: binaries.major },
      names: { folder: layout.root },
    });
  }
  return true;
}

async function removeHalfMade(layout: FolderLayout): Promise<void> {
  for (const name of await readdir(layout.root)) {
    if (!name.startsWith('pg.new-')) continue;
    await rm(join(layout.root, name), { recursive: true, force: true, maxRetries: 5 });
  }
}

/** Makes a rename in the folder outlive a power cut. Windows has no such call for folders. */
async function syncFolder(path: string): Promise<void> {
  if (process.platform === 'win32') return;
  const folder = await open(path, 'r');
  await folder.sync().finally(() => folder.close());
}

function outputOf(error: unknown): string {
  if (typeof error !== 'object' || error === null) return '';
  return ['stderr', 'stdout']
    .map((key) => String(Reflect.get(error, key) ?? '').trim())
    .join('\n')
    .trim();
}
