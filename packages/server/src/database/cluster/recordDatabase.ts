import { Client } from 'pg';
import { connectionTo, type Endpoint, KEEPER_ROLE, RECORD_DATABASE, RECORD_ROLE } from './endpoint.js';

/**
 * Makes the role and the database of the records where a cluster has none yet. A crash between the two steps
 * is mended by the next start.
 */
export async function ensureRecordDatabase(endpoint: Endpoint): Promise<void> {
  const client = new Client(connectionTo(endpoint, KEEPER_ROLE, 'postgres'));
  await client.connect();
  try {
    const { rows } = await client.query<{ role: boolean; database: boolean }>(
      `select exists (select from pg_roles where rolname = $1) as role,
        exists (select from pg_database where datname = $2) as database`,
      [RECORD_ROLE, RECORD_DATABASE],
    );
    if (rows[0]?.role !== true) await client.query(`create role ${RECORD_ROLE} login`);
    if (endpoint.kind === 'loopback') {
      await client.query(`alter role ${RECORD_ROLE} password ${client.escapeLiteral(endpoint.password)}`);
    }
    if (rows[0]?.database !== true) {
      await client.query(`create database ${RECORD_DATABASE} owner ${RECORD_ROLE}`);
    }
  } finally {
    await client.end();
  }
}
