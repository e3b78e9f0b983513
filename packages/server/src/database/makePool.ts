import { Pool, type PoolConfig } from 'pg';

/**
 * A pool whose connections may break at any time. One that is in use tells the query that waits on it; between two queries
 * of a transaction nobody listens, and a fault that nobody listens to would end the whole program.
 */
export function makePool(config: PoolConfig): Pool {
  const pool = new Pool(config);
  pool.on('connect', (client) => client.on('error', () => undefined));
  return pool;
}
