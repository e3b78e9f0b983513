import { parentPort, workerData } from 'node:worker_threads';
import { loadWords } from '@evenfall/words';
import { fileLines } from '../../input/fileLines.js';
import type { Batch, BatchDone } from '../../input/linesByThreads.js';
import { bytesOfFile } from '../../input/readInput.js';
import { type StartedWith, seriesMaker } from './seriesThreads.js';

/** A thread of `evenfall home` or `ambulatory`: asked for files, it answers their lines. */
const { asked, locale, version } = workerData as StartedWith;
const words = await loadWords(locale);
const made = seriesMaker(asked, { words, version });
parentPort?.on('message', ({ batch, files }: Batch) => {
  const each = files.map((file) => fileLines(file, made(bytesOfFile(file)), words));
  // As bytes that the other thread takes over: a text would be copied, and encoded there.
  const text = new TextEncoder().encode(each.map((one) => one.text).join(''));
  const done: BatchDone = { batch, lines: { text, problems: each.flatMap(({ problems }) => problems) } };
  parentPort?.postMessage(done, [text.buffer]);
});
