import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { type DatabaseAccount, spawnAs } from '../account/account.js';
import type { ChildAnswer, ChildOptions } from './keepUntilTold.js';

/** A program of its own that keeps a folder until it is told to stop, or killed. */
export type ChildKeeper = { readonly process: ChildProcess; readonly answer: ChildAnswer };

const ENTRY = fileURLToPath(new URL('./keepUntilTold.ts', import.meta.url));

/** Bundles the program into one file in the folder, so that it runs from anywhere and as any account. */
export async function buildChildKeeper(folder: string): Promise<string> {
  await build({
    configFile: false,
    logLevel: 'error',
    resolve: { conditions: ['source'] },
    ssr: { noExternal: true },
    build: {
      ssr: ENTRY,
      outDir: join(folder, 'program'),
      emptyOutDir: false,
      target: 'node20',
      rolldownOptions: {
        external: ['pg-native', 'pg-cloudflare', /^@electric-sql\//],
        output: { entryFileNames: 'keepUntilTold.mjs', codeSplitting: false },
      },
    },
  });
  return join(folder, 'program', 'keepUntilTold.mjs');
}

/** Starts the program, as another account if one is given, and waits for what it says about itself. */
export async function startChildKeeper(
  program: string,
  options: ChildOptions,
  as: DatabaseAccount | null = null,
): Promise<ChildKeeper> {
  const child = spawn(process.execPath, [program, JSON.stringify(options)], {
    ...(as === null ? {} : spawnAs(as)),
    cwd: '/',
    stdio: ['pipe', 'pipe', 'inherit'],
  });
  const lines = createInterface({ input: child.stdout });
  const [line] = (await Promise.race([
    once(lines, 'line'),
    once(child, 'exit').then(([code]) => {
      throw new Error(`the child ended with ${code} before it said anything`);
    }),
  ])) as [string];
  return { process: child, answer: JSON.parse(line) as ChildAnswer };
}

/** Ends the program as a crash would: nothing of it runs on, and nobody is asked. */
export async function killChild(child: ChildKeeper): Promise<void> {
  if (child.process.exitCode !== null || child.process.signalCode !== null) return;
  const ended = once(child.process, 'exit');
  child.process.kill('SIGKILL');
  await ended;
}
