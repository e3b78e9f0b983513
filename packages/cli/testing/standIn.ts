import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { createServer, type RequestListener } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Told } from '@evenfall/api';
import { onTestFinished } from 'vitest';

/** A folder of the test, gone after it. */
export async function testFolder(): Promise<string> {
  const folder = await mkdtemp(join(tmpdir(), 'evenfall-cli-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
}

/**
 * A server process that keeps no record: it tells that it is ready, and this test answers what commands ask on its socket.
 * What it was started with is not looked at.
 */
export async function standIn(answers: RequestListener): Promise<{ readonly serverMain: string }> {
  const folder = await testFolder();
  const controlSocket = join(folder, 'control.sock');
  const server = createServer(answers);
  await new Promise<void>((listening) => server.listen(controlSocket, listening));
  onTestFinished(() => new Promise((closed) => void server.close(() => closed())));
  const told: Told = {
    event: 'ready',
    address: null,
    controlSocket,
    folder,
    database: 'embedded',
    site: { name: 'Stand-in (invented)', invented: false },
  };
  const serverMain = join(folder, 'main.mjs');
  const text = `console.log(${JSON.stringify(JSON.stringify(told))});\nprocess.stdin.resume();\nprocess.stdin.on('end', () => process.exit(0));\n`;
  await writeFile(serverMain, text);
  return { serverMain };
}
