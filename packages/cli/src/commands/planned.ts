import { Worker } from 'node:worker_threads';
import {
  addSums,
  newSums,
  type Plan,
  type PlanResult,
  type PlanSums,
  pieceOf,
  piecesOf,
  planResult,
} from '@evenfall/practice';

type Told = (done: number) => void;
type Answered = { readonly piece: number; readonly sums: PlanSums };

/**
 * A plan by so many threads, or in this one where `workerFile` is null. Sums of pieces are added in the order of the
 * people, whichever thread was first: the result is the same to the last bit.
 */
export async function planned(
  plan: Plan,
  workerFile: string | null,
  workers: number,
  interrupted: AbortSignal,
  tell: Told,
): Promise<PlanResult> {
  const pieces = piecesOf(plan);
  const threads = Math.min(workers, pieces);
  const sums =
    workerFile === null || threads === 1
      ? await here(plan, pieces, interrupted, tell)
      : await byThreads(plan, workerFile, threads, pieces, interrupted, tell);
  return planResult(sums);
}

async function here(plan: Plan, pieces: number, interrupted: AbortSignal, tell: Told): Promise<PlanSums> {
  const sums = newSums(plan.against !== null);
  for (let piece = 0; piece < pieces && !interrupted.aborted; piece++) {
    addSums(sums, pieceOf(plan, piece));
    tell((piece + 1) / pieces);
    // So that an interruption is seen.
    await new Promise((onward) => setImmediate(onward));
  }
  return sums;
}

function byThreads(
  plan: Plan,
  workerFile: string,
  threads: number,
  pieces: number,
  interrupted: AbortSignal,
  tell: Told,
): Promise<PlanSums> {
  const sums = newSums(plan.against !== null);
  /** Pieces that came before their turn. */
  const early = new Map<number, PlanSums>();
  let asked = 0;
  let added = 0;
  const all: Worker[] = [];
  return new Promise<PlanSums>((done, failed) => {
    const end = (outcome: () => void) => {
      for (const worker of all) void worker.terminate();
      outcome();
    };
    interrupted.addEventListener('abort', () => end(() => done(sums)), { once: true });
    const ask = (worker: Worker) => {
      if (asked < pieces) worker.postMessage(asked++);
    };
    const take = (worker: Worker, { piece, sums: got }: Answered) => {
      early.set(piece, got);
      for (let next = early.get(added); next !== undefined; next = early.get(added)) {
        addSums(sums, next);
        early.delete(added);
        added += 1;
      }
      tell(added / pieces);
      if (added === pieces) end(() => done(sums));
      else ask(worker);
    };
    for (let i = 0; i < threads; i++) {
      const worker = new Worker(workerFile, { workerData: plan });
      worker.on('message', (answer: Answered) => take(worker, answer));
      worker.on('error', (fault) => end(() => failed(fault)));
      all.push(worker);
      ask(worker);
    }
  });
}
