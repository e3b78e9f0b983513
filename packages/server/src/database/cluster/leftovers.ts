import { readdir, readFile, rm } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { Client } from 'pg';
import { DatabaseProblem } from '../problem.js';
import { connectionTo, type Endpoint, KEEPER_ROLE } from './endpoint.js';
import { isKept } from './keeperMark.js';
import { isAlive, processesOn, recordedServer } from './processes.js';

/** How long each way of asking may take before the next, harder one. */
const PATIENCE_MS = { SIGINT: 10_000, SIGQUIT: 5_000, SIGKILL: 5_000 } as const;

/** A server whose keeper was killed lets the keeper's connection go at once; a busy machine may need a moment. */
const LETTING_GO_MS = 3_000;

export type Leftovers = { readonly stoppedServer: boolean; readonly removedLock: boolean };

/**
 * Clears away what a killed program left in a cluster: a server that nobody keeps any more is stopped, a lock
 * that names a dead or an unrelated process is removed. The keeper's lock must be held.
 *
 * Errors: `folder-in-use` if the server turns out to have a living keeper (one that uses another temp folder).
 */
export async function clearLeftovers(cluster: string, endpoint: Endpoint): Promise<Leftovers> {
  const running = await processesOn(cluster);
  if (running.length > 0) {
    await refuseKept(cluster, endpoint);
    await stopAll(cluster);
  }
  const removedLock = await removeStaleLock(cluster);
  if (endpoint.kind === 'socket') await removeSockets(endpoint.folder);
  return { stoppedServer: running.length > 0, removedLock };
}

async function refuseKept(cluster: string, endpoint: Endpoint): Promise<void> {
  const deadline = Date.now() + LETTING_GO_MS;
  const running = await recordedEndpoint(cluster, endpoint);
  while (await keptNow(running)) {
    if (Date.now() > deadline) {
      throw new DatabaseProblem('folder-in-use', {
        field: 'EVENFALL_DATA',
        got: cluster,
        names: { folder: cluster },
      });
    }
    await sleep(100);
  }
}

/** Where the running server itself says it listens: its keeper may have had another temp folder. */
async function recordedEndpoint(cluster: string, endpoint: Endpoint): Promise<Endpoint> {
  if (endpoint.kind !== 'socket') return endpoint;
  const lines = (await readFile(join(cluster, 'postmaster.pid'), 'utf8').catch(() => '')).split('\n');
  const folder = lines[4]; // pid, cluster, start time, port, folder of the first socket
  return folder === undefined || folder === '' ? endpoint : { kind: 'socket', folder };
}

/** A server that does not answer has no keeper that could be using it. */
async function keptNow(endpoint: Endpoint): Promise<boolean> {
  const client = new Client({
    ...connectionTo(endpoint, KEEPER_ROLE, 'postgres'),
    connectionTimeoutMillis: 1_000,
    query_timeout: 1_000,
  });
  client.on('error', () => undefined);
  try {
    await client.connect();
    return await isKept(client);
  } catch {
    return false;
  } finally {
    await client.end().catch(() => undefined);
  }
}

/** Fast shutdown, then without a checkpoint, then by force; workers that outlive their server get the same. */
async function stopAll(cluster: string): Promise<void> {
  for (const [signal, patience] of Object.entries(PATIENCE_MS)) {
    const [first, ...workers] = await processesOn(cluster);
    if (first === undefined) return;
    const server = await recordedServer(cluster);
    for (const pid of first === server && signal !== 'SIGKILL' ? [first] : [first, ...workers]) {
      signalQuietly(pid, signal as NodeJS.Signals);
    }
    for (const deadline = Date.now() + patience; Date.now() < deadline; await sleep(25)) {
      if ((await processesOn(cluster)).length === 0) return;
    }
  }
}

function signalQuietly(pid: number, signal: NodeJS.Signals): void {
  try {
    process.kill(pid, signal);
  } catch {
    // It ended between being seen and being told.
  }
}

/**
 * PostgreSQL removes a lock that names a dead process itself, and checks more than we could; but it takes any
 * living process for the server, and then never starts again without a hand.
 */
async function removeStaleLock(cluster: string): Promise<boolean> {
  const pid = await recordedServer(cluster);
  if (pid === null || !isAlive(pid)) return false;
  await rm(join(cluster, 'postmaster.pid'), { force: true });
  return true;
}

async function removeSockets(folder: string): Promise<void> {
  for (const name of await readdir(folder)) {
    if (name.startsWith('.s.PGSQL.')) await rm(join(folder, name), { force: true });
  }
}
