import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join, resolve } from 'node:path';
import { databaseAccount } from '../account/account.js';
import { packagedBinaries } from '../binaries/findBinaries.js';

/** A PostgreSQL of another major than the one this program brings. */
export type OtherPostgres = { readonly folder: string; readonly major: number };

const DEBIAN_15 = '/usr/lib/postgresql/15/bin';

/** Debian's 15 where it is installed, else the 17 that comes with the development tools (Linux x64). */
export async function otherPostgres(): Promise<OtherPostgres> {
  if (existsSync(join(DEBIAN_15, 'initdb'))) return { folder: DEBIAN_15, major: 15 };
  return packaged17();
}

/** The 17 that comes with the development tools, where a test's account can run it. */
export async function packaged17(): Promise<OtherPostgres> {
  const entry = createRequire(import.meta.url).resolve('pg17-linux-x64');
  const account = await databaseAccount({ kind: 'throwaway' });
  const { postgres, major } = await packagedBinaries(resolve(entry, '..', '..', 'native'), account);
  return { folder: resolve(postgres, '..'), major };
}
