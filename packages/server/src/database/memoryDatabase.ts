import { Pool, type PoolConfig } from 'pg';

export type MemoryDatabase = { readonly pool: Pool; close(): Promise<void> };

/** The files of a cluster in which nothing is yet: whoever opens many databases makes it once (`emptyCluster`). */
export type EmptyCluster = Blob;

/** Makes a cluster with nothing in it and gives its files: three times as dear as opening one from them. */
export async function emptyCluster(): Promise<EmptyCluster> {
  const { PGlite } = await import('@electric-sql/pglite');
  const engine = await PGlite.create();
  try {
    return await engine.dumpDataDir('none');
  } finally {
    await engine.close();
  }
}

/**
 * PostgreSQL in this process's memory, for tests and a throw-away trial: it holds one connection, never writes
 * to a disk, and is gone when closed. Its package is a development dependency and loaded only here.
 *
 * Limits: using the pool inside a transaction's callback waits for ever, for want of a second connection.
 */
export async function memoryDatabase(config: PoolConfig, from: EmptyCluster): Promise<MemoryDatabase> {
  const [{ PGlite }, { createPgConfig }] = await Promise.all([
    import('@electric-sql/pglite'),
    import('@electric-sql/pglite/node-postgres'),
  ]);
  const engine = await PGlite.create({ loadDataDir: from });
  const { connection, user, password, database, host, port } = createPgConfig(engine);
  const pool = new Pool({
    ...config,
    ...{ connection, user, password, database, host, port },
    max: 1,
    idleTimeoutMillis: 0,
  });
  return { pool, close: () => engine.close() };
}
