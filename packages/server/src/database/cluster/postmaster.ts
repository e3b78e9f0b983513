import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { promisify } from 'node:util';
import { Client } from 'pg';
import { type DatabaseAccount, spawnAs } from '../account/account.js';
import { writeOwned } from '../account/ownedFile.js';
import { childEnvironment } from '../binaries/environment.js';
import type { Binaries } from '../binaries/findBinaries.js';
import type { FolderLayout } from '../folder/layout.js';
import { DatabaseProblem } from '../problem.js';
import { connectionTo, type Endpoint, KEEPER_ROLE } from './endpoint.js';
import { logTail, openLog } from './logFile.js';
import { accessFile, settingsFile } from './settings.js';

const run = promisify(execFile);

/** All that a server is started from. */
export type Cluster = {
  readonly layout: FolderLayout;
  readonly binaries: Binaries;
  readonly endpoint: Endpoint;
  readonly account: DatabaseAccount;
};

/** A running server. `ended` settles when its process has ended, asked to or not. */
export type Postmaster = {
  readonly pid: number;
  readonly ended: Promise<void>;
  hasEnded(): boolean;
  stop(): Promise<void>;
};

/** Replaying the log of a killed server takes a fraction of a second a megabyte; a slow disk needs patience. */
const LONGEST_START_MS = 120_000;
const LONGEST_STOP_MS = 30_000;

/**
 * Starts the server and waits until it takes connections. It gets a process group of its own, so that an
 * interrupt typed at the terminal reaches this program alone, which then closes things in order.
 *
 * Errors: `start-failed`, `start-too-slow`, each with the end of the log.
 */
export async function startPostmaster(cluster: Cluster, longestMs = LONGEST_START_MS): Promise<Postmaster> {
  const { layout, binaries, endpoint, account } = cluster;
  const settings = join(layout.cluster, 'postgresql.conf');
  await writeOwned(settings, settingsFile(endpoint), account);
  await writeOwned(join(layout.cluster, 'pg_hba.conf'), accessFile(endpoint), account);
  const log = await openLog(layout, account);
  const logStart = (await log.stat()).size;
  const child = spawn(binaries.postgres, ['-D', layout.cluster], {
    ...spawnAs(account),
    env: childEnvironment(),
    cwd: layout.cluster,
    detached: true,
    stdio: ['ignore', log.fd, log.fd],
    windowsHide: true,
  });
  const ended = endOf(child);
  await log.close();
  const hasEnded = () => child.pid === undefined || child.exitCode !== null || child.signalCode !== null;
  const postmaster = { pid: child.pid ?? 0, ended, hasEnded, stop: () => stop(child, ended, cluster) };
  const deadline = Date.now() + longestMs;
  while (!(await takesConnections(endpoint))) {
    if (hasEnded()) throw await startProblem('start-failed', layout, logStart);
    if (Date.now() > deadline) {
      await postmaster.stop();
      throw await startProblem('start-too-slow', layout, logStart, longestMs);
    }
    await sleep(20);
  }
  return postmaster;
}

async function takesConnections(endpoint: Endpoint): Promise<boolean> {
  const client = new Client({
    ...connectionTo(endpoint, KEEPER_ROLE, 'postgres'),
    connectionTimeoutMillis: 5_000,
  });
  client.on('error', () => undefined);
  try {
    await client.connect();
    return true;
  } catch {
    return false;
  } finally {
    await client.end().catch(() => undefined);
  }
}

async function startProblem(
  code: 'start-failed' | 'start-too-slow',
  layout: FolderLayout,
  logStart: number,
  waitedMs?: number,
): Promise<DatabaseProblem> {
  return new DatabaseProblem(code, {
    got: layout.cluster,
    figures: waitedMs === undefined ? {} : { waitedSeconds: waitedMs / 1000 },
    names: { folder: layout.cluster, log: await logTail(layout, logStart) },
  });
}

function endOf(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    child.once('exit', () => resolve());
    child.once('error', () => resolve());
  });
}

/** Fast shutdown: open transactions are rolled back, a checkpoint is written, connections are closed. */
async function stop(
  child: ChildProcess,
  ended: Promise<void>,
  { layout, binaries, account }: Cluster,
): Promise<void> {
  if (child.exitCode !== null || child.signalCode !== null || child.pid === undefined) return;
  if (process.platform === 'win32') {
    const args = ['stop', '-D', layout.cluster, '-m', 'fast', '-w'];
    await run(binaries.pgCtl, args, { ...spawnAs(account), env: childEnvironment() }).catch(() => undefined);
  } else {
    child.kill('SIGINT');
  }
  for (const signal of ['SIGQUIT', 'SIGKILL'] as const) {
    if (await endsWithin(ended, LONGEST_STOP_MS)) return;
    child.kill(signal);
  }
  await ended;
}

async function endsWithin(ended: Promise<void>, ms: number): Promise<boolean> {
  const timer = new AbortController();
  const late = sleep(ms, false, { signal: timer.signal }).catch(() => false);
  const first = await Promise.race([ended.then(() => true), late]);
  timer.abort();
  return first;
}
