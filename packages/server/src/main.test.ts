import { spawn, spawnSync } from 'node:child_process';
import { access, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import type { Settings, Told } from '@evenfall/api';
import { beforeAll, describe, expect, onTestFinished, test } from 'vitest';
import { testEnvironment } from './database/testing/testEnvironment.js';
import { makeTestFolder, removeTestFolder } from './database/testing/testFolder.js';

const ROOT = fileURLToPath(new URL('../../..', import.meta.url));
const MAIN = fileURLToPath(new URL('../bundle/main.js', import.meta.url));

/** The longest that somebody waits for the terminal after Ctrl-C, ms. Source: decision of this project. */
const LONGEST_END_MS = 3_000;

beforeAll(() => {
  const built = spawnSync(process.execPath, ['tools/bundle.mjs', 'server'], { cwd: ROOT, encoding: 'utf8' });
  expect(built.stdout + built.stderr).toBe('');
}, 120_000);

/** A server process that leads a group of its own, as a command at a terminal does. */
async function started() {
  const outer = await makeTestFolder();
  onTestFinished(() => removeTestFolder(outer));
  const folder = join(outer, 'data');
  const account = process.getuid?.() === 0 ? 'nobody' : null;
  const settings: Settings = {
    mode: 'serve',
    purpose: 'clinic',
    folder,
    account,
    port: 0,
    pages: null,
    log: false,
  };
  const child = spawn(process.execPath, [MAIN, JSON.stringify(settings)], {
    detached: true,
    stdio: ['pipe', 'pipe', 'inherit'],
    env: testEnvironment(),
  });
  child.stdin.on('error', () => undefined);
  const ended = new Promise<number | null>((resolve) => child.once('exit', resolve));
  const lines = createInterface({ input: child.stdout });
  const told = JSON.parse((await lines[Symbol.asyncIterator]().next()).value ?? 'null') as Told;
  const postgres = Number.parseInt(await readFile(join(folder, 'pg', 'postmaster.pid'), 'utf8'), 10);
  return { child, group: -(child.pid ?? 0), ended, folder, told, postgres };
}

const isRunning = (pid: number) => spawnSync('kill', ['-0', String(pid)]).status === 0;
const isThere = (path: string) =>
  access(path).then(
    () => true,
    () => false,
  );

describe('a server process', { timeout: 60_000 }, () => {
  test('stops its PostgreSQL and lets the folder go when Ctrl-C reaches the whole group and its parent lets go too', async () => {
    const { child, group, ended, folder, told, postgres } = await started();
    expect([told.event, isRunning(postgres), await isThere(join(folder, 'keeper.json'))]).toEqual([
      'ready',
      true,
      true,
    ]);
    const began = performance.now();
    process.kill(group, 'SIGINT'); // the terminal
    process.kill(group, 'SIGINT'); // npm passes it on
    child.stdin.end(); // the command that started it lets go
    child.stdout.destroy(); // and reads no more
    expect(await ended).toBe(0);
    expect(performance.now() - began).toBeLessThan(LONGEST_END_MS);
    expect([isRunning(postgres), await isThere(join(folder, 'keeper.json'))]).toEqual([false, false]);
  });

  test.each(['SIGINT', 'SIGTERM', 'SIGHUP'] as const)(
    'stops in order on %s, however often',
    async (signal) => {
      const { child, ended, folder, postgres } = await started();
      const again = setInterval(() => child.kill(signal), 5);
      child.kill(signal);
      expect(await ended).toBe(0);
      clearInterval(again);
      expect([isRunning(postgres), await isThere(join(folder, 'keeper.json'))]).toEqual([false, false]);
    },
  );
});
