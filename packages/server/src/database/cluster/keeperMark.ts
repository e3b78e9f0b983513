import type { Client } from 'pg';

/** Any two numbers that nothing else in the cluster locks. */
const MARK = [1163280718, 1279545420] as const; // "EVEN", "LDFL" read as numbers

/**
 * Marks the cluster as kept for as long as this connection lives: true where no other connection has the mark.
 * It ends with the connection, and so with the process, however that ends.
 */
export async function takeMark(client: Client): Promise<boolean> {
  const { rows } = await client.query<{ taken: boolean }>('select pg_try_advisory_lock($1, $2) as taken', [
    ...MARK,
  ]);
  return rows[0]?.taken === true;
}

/** Whether some connection to the cluster has the mark. */
export async function isKept(client: Client): Promise<boolean> {
  const { rows } = await client.query<{ kept: boolean }>(
    `select exists (select from pg_locks
      where locktype = 'advisory' and classid = $1::oid and objid = $2::oid and granted) as kept`,
    [...MARK],
  );
  return rows[0]?.kept === true;
}
