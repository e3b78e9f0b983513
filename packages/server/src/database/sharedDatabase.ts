import type { Pool, PoolConfig } from 'pg';
import { OLDEST_MAJOR } from './binaries/findBinaries.js';
import { makePool } from './makePool.js';
import { DatabaseProblem, errorCode } from './problem.js';

const LONGEST_CONNECT_MS = 10_000;

/**
 * A pool on the PostgreSQL of a `DATABASE_URL`, checked by one connection. Nothing is locked: any number of
 * servers may share it. The address is quoted nowhere, since it may hold a password.
 *
 * Errors: `server-unreachable`, `server-refused`, `server-too-old`, `server-not-utf8`.
 */
export async function sharedPool(url: string, config: PoolConfig): Promise<Pool> {
  let pool: Pool | null = null;
  try {
    pool = makePool({
      ...config,
      connectionString: url,
      connectionTimeoutMillis: LONGEST_CONNECT_MS,
      application_name: 'evenfall',
      options: '-c TimeZone=UTC -c DateStyle=ISO',
    });
    await checkServer(pool);
    return pool;
  } catch (error) {
    await pool?.end();
    if (error instanceof DatabaseProblem) throw error;
    const code = errorCode(error);
    // Five characters are an answer of PostgreSQL; anything else says that it was not reached.
    throw new DatabaseProblem(/^[0-9A-Z]{5}$/.test(code) ? 'server-refused' : 'server-unreachable', {
      field: 'DATABASE_URL',
      expected: 'postgres://account@host:port/database',
      names: { reason: code === '' && error instanceof Error ? error.message : code },
    });
  }
}

async function checkServer(pool: Pool): Promise<void> {
  const { rows } = await pool.query<{ version: number; encoding: string }>(
    `select current_setting('server_version_num')::int as version, current_setting('server_encoding') as encoding`,
  );
  const { version, encoding } = rows[0] ?? { version: 0, encoding: '' };
  const serverMajor = Math.floor(version / 10_000);
  if (serverMajor < OLDEST_MAJOR) {
    throw new DatabaseProblem('server-too-old', {
      field: 'DATABASE_URL',
      expected: `PostgreSQL ${OLDEST_MAJOR} or newer`,
      got: `PostgreSQL ${serverMajor}`,
      figures: { oldestMajor: OLDEST_MAJOR, serverMajor },
    });
  }
  if (encoding !== 'UTF8') {
    throw new DatabaseProblem('server-not-utf8', { field: 'DATABASE_URL', expected: 'UTF8', got: encoding });
  }
}
