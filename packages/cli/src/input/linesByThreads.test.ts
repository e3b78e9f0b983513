import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import type { FileLines } from '../answer.js';
import { linesByThreads, type Threads, threadsFor } from './linesByThreads.js';

let folder = '';
let program = '';
/** A thread that answers each batch with the names of its files, counts it, is slow with every other and fails at what is told. */
const THREAD = `
import { parentPort, workerData } from 'node:worker_threads';
const counted = new Int32Array(workerData.counted);
parentPort.on('message', async ({ batch, files }) => {
  if (files.includes(workerData.failsAt)) throw new Error('no disk');
  if (files.includes(workerData.endsAt)) process.exit(7);
  if (batch % 2 === 0) await new Promise((onward) => setTimeout(onward, 20));
  Atomics.add(counted, 0, 1);
  const text = new TextEncoder().encode(files.map((file) => file + '\\n').join(''));
  parentPort.postMessage({ batch, lines: { text, problems: [] } }, [text.buffer]);
});
`;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'evenfall-threads-'));
  program = join(folder, 'thread.mjs');
  await writeFile(program, THREAD);
});
afterAll(() => rm(folder, { recursive: true }));

const here = (file: string): FileLines => ({ text: `${file}\n`, problems: [] });
const written = ({ text }: FileLines) => (typeof text === 'string' ? text : new TextDecoder().decode(text));
const FILES = Array.from({ length: 1000 }, (_, k) => String(k));

function threads(more: { failsAt?: string; endsAt?: string; wanted?: number | null } = {}) {
  const { wanted = null, ...told } = more;
  const counted = new SharedArrayBuffer(4);
  const startedWith = { ...told, counted };
  return { threads: { program, startedWith, wanted } satisfies Threads, counted: new Int32Array(counted) };
}

test('lines come in the order of the files, whichever thread was first, each once', async () => {
  for (const count of [2, 3, 5]) {
    let text = '';
    for await (const lines of linesByThreads(FILES, threads().threads, count, here)) text += written(lines);
    expect(text).toBe(FILES.map((file) => `${file}\n`).join(''));
  }
});

test('no thread works far ahead of a slow reader, so that a folder of any size fits', async () => {
  const { threads: given, counted } = threads();
  const lines = linesByThreads(FILES, given, 3, here);
  await lines.next();
  await new Promise((onward) => setTimeout(onward, 300));
  // Of the first six batches of 32 files two are this thread's; the others have the rest, and no more until the next is read.
  expect(Atomics.load(counted, 0)).toBe(4);
  for (let file = 0; file < 32; file++) await lines.next();
  await new Promise((onward) => setTimeout(onward, 300));
  expect(Atomics.load(counted, 0)).toBe(4);
  await lines.next();
  await new Promise((onward) => setTimeout(onward, 300));
  expect(Atomics.load(counted, 0)).toBe(5);
  await lines.return(undefined);
});

test.each([
  ['a fault', { failsAt: '500' }, 'no disk'],
  ['an end of its own', { endsAt: '500' }, 'ended with 7'],
])('%s of a thread is thrown, after lines before', async (_name, told, said) => {
  let text = '';
  const reading = async () => {
    for await (const lines of linesByThreads(FILES, threads(told).threads, 2, here)) text += written(lines);
  };
  await expect(reading()).rejects.toThrow(said);
  // 500 is in the batch of 480 to 511, the sixteenth: the second thread's.
  expect(
    FILES.map((file) => `${file}\n`)
      .join('')
      .startsWith(text),
  ).toBe(true);
  // What it had answered may be on its way still when it falls: its batch before (416 to 447) goes with it then.
  expect([416, 480]).toContain(text.split('\n').length - 1);
});

test('threads are for many files, or as many as are asked for, and never for what comes by standard input', () => {
  const many = (count: number) => Array.from({ length: count }, (_, k) => String(k));
  const by = (files: readonly string[], wanted: number | null) =>
    threadsFor(files, threads({ wanted }).threads);
  expect(by(many(3999), null)).toBe(1);
  expect(by(many(64), 8)).toBe(2);
  expect(by(many(65), 8)).toBe(3);
  expect(by(many(65), 1)).toBe(1);
  expect(by([...many(100), '-'], 8)).toBe(1);
  expect(threadsFor(many(5000), { program: 'no-such', startedWith: null, wanted: 4 })).toBe(1);
});
