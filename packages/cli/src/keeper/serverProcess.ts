import { type ChildProcess, spawn } from 'node:child_process';
import { createInterface } from 'node:readline';
import type { Settings, Told } from '@evenfall/api';

/** A server process of ours, and the first thing it told. */
export type ServerProcess = {
  readonly told: Told;
  /** Resolves when the process has ended, with its exit code. */
  readonly ended: Promise<number>;
  /** Asks it to stop in order, and waits. */
  stop(): Promise<number>;
};

/**
 * Starts the server as a process of its own. It stops when this process ends, however that happens: it holds the
 * other end of its standard input.
 *
 * Errors: throws when it ends without having told anything; what it wrote to standard error stands there already.
 */
export async function startServer(
  main: string,
  settings: Settings,
  env: Readonly<Record<string, string | undefined>>,
): Promise<ServerProcess> {
  const child = spawn(process.execPath, ['--enable-source-maps', main, JSON.stringify(settings)], {
    stdio: ['pipe', 'pipe', 'inherit'],
    env,
  });
  const ended = endOf(child);
  child.stdin.on('error', () => undefined); // it may have ended already
  const told = await Promise.race([firstLine(child), ended.then(() => null)]);
  if (told === null) throw new Error('the server ended before it was ready; see the lines above');
  return {
    told,
    ended,
    stop: () => {
      child.stdin.end();
      return ended;
    },
  };
}

function endOf(child: ChildProcess): Promise<number> {
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (code, signal) => resolve(code ?? (signal === 'SIGINT' ? 130 : 1)));
  });
}

async function firstLine(child: ChildProcess): Promise<Told | null> {
  if (child.stdout === null) return null;
  for await (const line of createInterface({ input: child.stdout })) return JSON.parse(line) as Told;
  return null;
}
