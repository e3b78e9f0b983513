import { parentPort, workerData } from 'node:worker_threads';
import { type Plan, pieceOf } from '@evenfall/practice';

/** A thread of `evenfall plan`: asked for a piece of the people, it answers its sums. */
const plan = workerData as Plan;
parentPort?.on('message', (piece: number) => {
  parentPort?.postMessage({ piece, sums: pieceOf(plan, piece) });
});
