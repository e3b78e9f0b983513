import { join } from 'node:path';
import { openDatabase } from '../openDatabase.js';
import type { TestDatabase } from '../testing.js';
import { packaged17 } from './otherPostgres.js';
import { testEnvironment } from './testEnvironment.js';
import { makeTestFolder, removeTestFolder } from './testFolder.js';

/** An embedded database of an older PostgreSQL major (17; the default is 18), in a folder of its own. */
export async function openOlderMajor(): Promise<TestDatabase> {
  const outer = await makeTestFolder();
  const env = { ...testEnvironment(), EVENFALL_PG_BIN: (await packaged17()).folder };
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
