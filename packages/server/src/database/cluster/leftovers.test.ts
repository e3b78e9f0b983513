import { execFile, spawn } from 'node:child_process';
import { once } from 'node:events';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest';
import { spawnAs } from '../account/account.js';
import { testCluster } from '../testing/testCluster.js';
import { makeTestFolder, removeTestFolder } from '../testing/testFolder.js';
import { createCluster } from './createCluster.js';
import { clearLeftovers } from './leftovers.js';
import { type Cluster, startPostmaster } from './postmaster.js';
import { processesOn } from './processes.js';

vi.setConfig({ testTimeout: 60_000, hookTimeout: 60_000 }); // a cluster takes a second to make, on a busy machine several

/** Where the cluster lies that each test gets a copy of. */
let madeIn: string;
let made: string;
beforeAll(async () => {
  madeIn = await makeTestFolder();
  const { layout, binaries, endpoint, account } = await testCluster(madeIn);
  await createCluster(layout, binaries, endpoint, account);
  made = layout.cluster;
});
afterAll(() => removeTestFolder(madeIn));

let outer: string;
let cluster: Cluster;
beforeEach(async () => {
  outer = await makeTestFolder();
  cluster = await testCluster(outer);
  // With its owner and its modes, which `fs.cp` leaves behind.
  await promisify(execFile)('cp', ['-a', made, cluster.layout.cluster]);
});
afterEach(() => removeTestFolder(outer));

/** Leaves the files of a killed server behind, as if the system had since given its number to `pid`. */
async function leaveLock(pid: number): Promise<void> {
  const sockets = cluster.endpoint.kind === 'socket' ? cluster.endpoint.folder : '';
  const lines = [
    pid,
    cluster.layout.cluster,
    1_700_000_000,
    5432,
    sockets,
    '',
    '  1234567         0',
    'ready   ',
    '',
  ];
  await writeFile(join(cluster.layout.cluster, 'postmaster.pid'), lines.join('\n'));
  await writeFile(join(sockets, '.s.PGSQL.5432.lock'), lines.join('\n'));
  await writeFile(join(sockets, '.s.PGSQL.5432'), '');
}

test('a lock that names a living process which is no server of ours does not hold up the start', async () => {
  const stranger = spawn('sleep', ['60'], { stdio: 'ignore', ...spawnAs(cluster.account) });
  await leaveLock(stranger.pid ?? 0);
  await expect(startPostmaster(cluster)).rejects.toMatchObject({
    code: 'start-failed', // PostgreSQL by itself never starts again
    names: { log: expect.stringContaining('already exists') },
  });
  expect(await clearLeftovers(cluster.layout.cluster, cluster.endpoint)).toEqual({
    stoppedServer: false,
    removedLock: true,
  });
  const server = await startPostmaster(cluster);
  expect(stranger.exitCode).toBeNull();
  expect(stranger.signalCode).toBeNull();
  await server.stop();
  stranger.kill();
});

test('a lock that names a dead process does not hold up the start either', async () => {
  const dead = spawn('true');
  await once(dead, 'exit');
  await leaveLock(dead.pid ?? 0);
  await clearLeftovers(cluster.layout.cluster, cluster.endpoint);
  const server = await startPostmaster(cluster);
  await server.stop();
});

test('a server that nobody keeps is recognised by its folder and stopped', async () => {
  const server = await startPostmaster(cluster);
  const seen = await processesOn(cluster.layout.cluster);
  expect(seen[0]).toBe(server.pid);
  expect(await processesOn(cluster.layout.cluster, false)).toEqual([server.pid]); // by ps, as on macOS
  expect(await processesOn(outer)).toEqual([]);
  expect(await clearLeftovers(cluster.layout.cluster, cluster.endpoint)).toMatchObject({
    stoppedServer: true,
  });
  await server.ended;
  expect(await processesOn(cluster.layout.cluster)).toEqual([]);
  expect(await readdir(join(outer, 'data', 'run'))).toEqual([]);
});

test('workers that outlive a killed server are waited for or stopped', async () => {
  const server = await startPostmaster(cluster);
  process.kill(server.pid, 'SIGKILL');
  await server.ended;
  await clearLeftovers(cluster.layout.cluster, cluster.endpoint);
  expect(await processesOn(cluster.layout.cluster)).toEqual([]);
  const again = await startPostmaster(cluster);
  await again.stop();
});

test('by ps, a process that only has the number of the server is not taken for it', async () => {
  await leaveLock(process.pid);
  expect(await processesOn(cluster.layout.cluster, false)).toEqual([]);
});

test('a server that cannot start says why', async () => {
  await writeFile(join(cluster.layout.cluster, 'global', 'pg_control'), 'damaged');
  const log = join(cluster.layout.log, 'postgresql.log');
  await expect(startPostmaster(cluster)).rejects.toMatchObject({
    code: 'start-failed',
    names: { log: expect.stringContaining('pg_control') },
  });
  expect(await readFile(log, 'utf8')).toContain('pg_control');
});
