import { type Plan, runPlan } from '@evenfall/practice';
import type { FromPlanWorker } from './usePlan.js';

/** A plan beside the page, so that the page stays alive: tells how far it is after every piece, and what came out. */
const tell = (message: FromPlanWorker) => self.postMessage(message);

self.onmessage = ({ data }: MessageEvent<Plan>) => {
  const result = runPlan(data, (done) => {
    tell({ is: 'running', done });
    return true;
  });
  if (result !== null) tell({ is: 'done', result });
};
