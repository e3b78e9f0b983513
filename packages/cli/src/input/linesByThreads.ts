import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { FileLines } from '../answer.js';
import { STANDARD_INPUT } from './readInput.js';

/** Threads that can take over files: their program, what it is started with, and how many were asked for; null for as many as pay. */
export type Threads = {
  readonly program: string;
  readonly startedWith: unknown;
  readonly wanted: number | null;
};

/** What a thread is asked: files, and by which number its answer (`BatchDone`) is known. */
export type Batch = { readonly batch: number; readonly files: readonly string[] };
export type BatchDone = { readonly batch: number; readonly lines: FileLines };

/** Files of a batch, batches that a thread has at a time, and files from which threads pay for being started. Measured: bench/series.mjs. */
const FILES = 32;
const AHEAD = 2;
const MANY = 4000;

/** How many threads these files are given, with this one; 1 is this one alone. What comes by standard input only this one can read. */
export function threadsFor(files: readonly string[], { program, wanted }: Threads): number {
  // Where the program runs from its sources there is none for threads.
  if (files.includes(STANDARD_INPUT) || !existsSync(program)) return 1;
  if (wanted === null && files.length < MANY) return 1;
  return Math.min(wanted ?? availableParallelism(), Math.ceil(files.length / FILES));
}

/**
 * The lines of files by threads, in the order of the files, whichever thread was first. This thread does its share, in turn; the
 * others have a few batches at a time, so that a folder of any size fits, however slow the reader.
 *
 * @param count how many threads there are, with this one: 2 or more
 * @param here what this one makes of its files
 * Errors: throws what a thread failed with, after lines before; none is left out between them.
 */
export async function* linesByThreads(
  files: readonly string[],
  { program, startedWith }: Threads,
  count: number,
  here: (file: string) => FileLines,
): AsyncGenerator<FileLines> {
  const others = Array.from({ length: count - 1 }, () => new Thread(program, startedWith));
  const batches = Math.ceil(files.length / FILES);
  const filesOf = (batch: number) => files.slice(batch * FILES, (batch + 1) * FILES);
  const asked = new Map<number, Promise<FileLines>>();
  const askOthers = (until: number, from: number) => {
    for (let batch = from; batch < Math.min(batches, until); batch++) {
      const thread = others[(batch % count) - 1];
      if (thread === undefined || asked.has(batch)) continue;
      const answer = thread.ask({ batch, files: filesOf(batch) });
      // Its fault is thrown when its turn comes.
      answer.catch(() => undefined);
      asked.set(batch, answer);
    }
  };
  try {
    for (let batch = 0; batch < batches; batch++) {
      askOthers(batch + count * AHEAD, batch);
      const answer = asked.get(batch);
      if (answer === undefined) for (const file of filesOf(batch)) yield here(file);
      else yield await answer;
      asked.delete(batch);
    }
  } finally {
    await Promise.all(others.map((thread) => thread.end()));
  }
}

type Waiting = { readonly done: (lines: FileLines) => void; readonly failed: (fault: unknown) => void };

/** One thread with the batches that it was asked for. */
class Thread {
  private readonly worker: Worker;
  private readonly waiting = new Map<number, Waiting>();
  private fault: unknown = null;

  constructor(program: string, startedWith: unknown) {
    this.worker = new Worker(program, { workerData: startedWith });
    this.worker.on('message', ({ batch, lines }: BatchDone) => {
      this.waiting.get(batch)?.done(lines);
      this.waiting.delete(batch);
    });
    this.worker.on('error', (fault) => this.fail(fault));
    this.worker.on('exit', (code) => this.fail(new Error(`a thread ended with ${code}`)));
  }

  ask(batch: Batch): Promise<FileLines> {
    return new Promise((done, failed) => {
      if (this.fault !== null) failed(this.fault);
      else this.waiting.set(batch.batch, { done, failed });
      this.worker.postMessage(batch);
    });
  }

  end(): Promise<number> {
    return this.worker.terminate();
  }

  private fail(fault: unknown): void {
    this.fault ??= fault;
    for (const { failed } of this.waiting.values()) failed(this.fault);
    this.waiting.clear();
  }
}
