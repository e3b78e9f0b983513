import { setTimeout as sleep } from 'node:timers/promises';
import { Client } from 'pg';
import { connectionTo, type Endpoint, KEEPER_ROLE } from '../cluster/endpoint.js';
import { takeMark } from '../cluster/keeperMark.js';

/** A connection that does nothing but hold the mark of the keeper. */
export type MarkHolder = { release(): Promise<void> };

/** A killed keeper's connection goes at once; a busy machine may need a moment. */
const LONGEST_WAIT_MS = 3_000;

/**
 * Takes the keeper's mark on the running server and holds it. Null where another program holds it.
 *
 * @param onLost the connection ended without being asked to: the server restarted its workers, or ended
 */
export async function holdMark(endpoint: Endpoint, onLost: () => void): Promise<MarkHolder | null> {
  const client = new Client({ ...connectionTo(endpoint, KEEPER_ROLE, 'postgres'), keepAlive: true });
  let released = false;
  client.on('error', () => undefined); // 'end' follows
  client.once('end', () => {
    if (!released) onLost();
  });
  const release = async () => {
    released = true;
    await client.end().catch(() => undefined);
  };
  try {
    await client.connect();
    const deadline = Date.now() + LONGEST_WAIT_MS;
    while (!(await takeMark(client))) {
      if (Date.now() > deadline) {
        await release();
        return null;
      }
      await sleep(100);
    }
  } catch (error) {
    await release();
    throw error;
  }
  return { release };
}
