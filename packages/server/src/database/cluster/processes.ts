import { execFile } from 'node:child_process';
import { readdir, readFile, readlink, realpath } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { errorCode } from '../problem.js';

const run = promisify(execFile);

/**
 * The processes of PostgreSQL that work in this cluster, the server before its workers. A number in a file left
 * by a crash proves nothing, since the system hands numbers out again: what counts is where a process works.
 *
 * Limits: without `/proc` only the server named by `postmaster.pid` is looked at, through `ps`.
 */
export async function processesOn(
  cluster: string,
  hasProc = process.platform === 'linux',
): Promise<number[]> {
  const real = await realpath(cluster).catch(() => cluster);
  const server = await recordedServer(cluster);
  if (!hasProc) return server !== null && (await isServerByPs(server, [cluster, real])) ? [server] : [];
  const found: number[] = [];
  for (const name of await readdir('/proc')) {
    if (/^\d+$/.test(name) && (await worksIn(name, real))) found.push(Number(name));
  }
  return found.sort((a, b) => Number(b === server) - Number(a === server));
}

/** The process number in `postmaster.pid`; null where there is no such file or it is cut short. */
export async function recordedServer(cluster: string): Promise<number | null> {
  const text = await readFile(join(cluster, 'postmaster.pid'), 'utf8').catch((error: unknown) => {
    if (errorCode(error) === 'ENOENT') return '';
    throw error;
  });
  const pid = Number.parseInt(text, 10);
  return Number.isInteger(pid) && pid > 0 ? pid : null;
}

/** Whether a process of that number exists, whoever owns it and whatever it is. */
export function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return errorCode(error) === 'EPERM';
  }
}

/**
 * Every process of a cluster works in the cluster's folder. One we may not look at belongs to another account,
 * and so cannot be the server of a folder that only its own account may enter.
 */
async function worksIn(pid: string, cluster: string): Promise<boolean> {
  const folder = await readlink(join('/proc', pid, 'cwd')).catch(() => '');
  if (folder !== cluster) return false;
  const name = await readFile(join('/proc', pid, 'comm'), 'utf8').catch(() => '');
  return name.trim().startsWith('postgres');
}

/** The server keeps the command it was started with: `.../postgres -D CLUSTER ...`. */
async function isServerByPs(pid: number, names: readonly string[]): Promise<boolean> {
  const args = ['-ww', '-p', String(pid), '-o', 'command='];
  const command = await run('ps', args).then(
    ({ stdout }) => stdout.trim(),
    () => '',
  );
  return /postgres/.test(command) && names.some((name) => `${command} `.includes(` ${name} `));
}
