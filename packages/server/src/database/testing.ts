import { join } from 'node:path';
import { keepFolder } from './embedded.js';
import { type OpenDatabase, openDatabase } from './openDatabase.js';
import { createFreshDatabase, dropDatabase } from './testing/freshDatabase.js';
import { memoryEngine } from './testing/memoryEngines.js';
import { adminUrlOf, testEnvironment } from './testing/testEnvironment.js';
import { makeTestFolder, removeTestFolder } from './testing/testFolder.js';

/** A database for one test or one file of tests; `close` also removes its folder or its database. */
export type TestDatabase = OpenDatabase & {
  /** Reaches the same database from another process; null where only this one can. */
  readonly url: string | null;
};

/** An embedded PostgreSQL in a folder of its own, run by an unprivileged account where the test runs as root. */
export async function openEmbedded(): Promise<TestDatabase> {
  const outer = await makeTestFolder();
  const removed = () => removeTestFolder(outer);
  try {
    const database = await openDatabase({
      env: testEnvironment(),
      folder: join(outer, 'data'),
      account: { kind: 'throwaway' },
    });
    return withCleaning(database, null, removed);
  } catch (error) {
    await removed();
    throw error;
  }
}

/** PostgreSQL in this process's memory: quickly made, no durability, one connection. */
export async function openMemory(): Promise<TestDatabase> {
  return withCleaning(
    await openDatabase({ env: testEnvironment(), inMemory: await memoryEngine() }),
    null,
    async () => undefined,
  );
}

/**
 * A fresh database on a PostgreSQL reached over TCP with a password: the one of the process's `DATABASE_URL`,
 * whose account must be allowed to make databases, else one started for the purpose.
 */
export async function openShared(): Promise<TestDatabase> {
  const given = process.env.DATABASE_URL;
  const server =
    given === undefined || given === ''
      ? await startTcpServer()
      : { url: given, stop: async () => undefined };
  try {
    const url = await createFreshDatabase(server.url);
    const database = await openDatabase({ env: testEnvironment(), databaseUrl: url });
    return withCleaning(database, url, async () => {
      await dropDatabase(server.url, url);
      await server.stop();
    });
  } catch (error) {
    await server.stop();
    throw error;
  }
}

/** Every kind of database the same tests run on. */
export const TEST_DATABASES = [
  { kind: 'embedded', open: openEmbedded },
  { kind: 'shared', open: openShared },
  { kind: 'memory', open: openMemory },
] as const;

export function withEmbedded<T>(use: (database: TestDatabase) => Promise<T>): Promise<T> {
  return withDatabase(openEmbedded, use);
}

export function withMemory<T>(use: (database: TestDatabase) => Promise<T>): Promise<T> {
  return withDatabase(openMemory, use);
}

export function withShared<T>(use: (database: TestDatabase) => Promise<T>): Promise<T> {
  return withDatabase(openShared, use);
}

async function withDatabase<T>(
  open: () => Promise<TestDatabase>,
  use: (database: TestDatabase) => Promise<T>,
): Promise<T> {
  const database = await open();
  try {
    return await use(database);
  } finally {
    await database.close();
  }
}

function withCleaning(database: OpenDatabase, url: string | null, clean: () => Promise<void>): TestDatabase {
  let closed: Promise<void> | null = null;
  return {
    ...database,
    url,
    close: () => {
      closed ??= database.close().then(clean);
      return closed;
    },
  };
}

async function startTcpServer(): Promise<{ url: string; stop: () => Promise<void> }> {
  const outer = await makeTestFolder();
  const keeper = await keepFolder({
    env: testEnvironment(),
    folder: join(outer, 'data'),
    account: { kind: 'throwaway' },
    endpoint: 'loopback',
    onLost: () => undefined,
  });
  return {
    url: adminUrlOf(keeper.endpoint),
    stop: async () => {
      await keeper.close();
      await removeTestFolder(outer);
    },
  };
}
