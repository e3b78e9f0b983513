import type { PGlite } from '@electric-sql/pglite';
import { Pool, type PoolConfig } from 'pg';

export type MemoryDatabase = { readonly pool: Pool; close(): Promise<void> };

/** PostgreSQL in this process's memory with nothing in it, and what becomes of it when its database is closed. */
export type MemoryEngine = { readonly engine: PGlite; letGo(): Promise<void> };

/**
 * A database in this process's memory, for tests and a throw-away trial: it holds one connection, never writes
 * to a disk, and is gone when closed. Its package is a development dependency and loaded only here.
 *
 * Limits: using the pool inside a transaction's callback waits for ever, for want of a second connection.
 */
export async function memoryDatabase(
  config: PoolConfig,
  { engine, letGo }: MemoryEngine,
): Promise<MemoryDatabase> {
  const { createPgConfig } = await import('@electric-sql/pglite/node-postgres');
  const { connection, user, password, database, host, port } = createPgConfig(engine);
  const pool = new Pool({
    ...config,
    ...{ connection, user, password, database, host, port },
    max: 1,
    idleTimeoutMillis: 0,
  });
  return { pool, close: letGo };
}
