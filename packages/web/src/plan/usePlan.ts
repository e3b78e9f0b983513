import type { Plan, PlanResult } from '@evenfall/practice';
import { useEffect, useRef, useState } from 'react';

export type FromPlanWorker =
  | { readonly is: 'running'; readonly done: number }
  | { readonly is: 'done'; readonly result: PlanResult };

export type PlanStanding = { readonly is: 'none' | 'cancelled' | 'failed' } | FromPlanWorker;

/** A plan worked out in a thread of its own; stopping ends that thread at once. */
export function usePlan() {
  const worker = useRef<Worker | null>(null);
  const [standing, setStanding] = useState<PlanStanding>({ is: 'none' });
  const end = () => {
    worker.current?.terminate();
    worker.current = null;
  };
  useEffect(() => () => worker.current?.terminate(), []);
  const run = (plan: Plan) => {
    end();
    const thread = new Worker(new URL('./planWorker.ts', import.meta.url), { type: 'module' });
    worker.current = thread;
    thread.onmessage = ({ data }: MessageEvent<FromPlanWorker>) => {
      setStanding(data);
      if (data.is === 'done') end();
    };
    thread.onerror = () => {
      end();
      setStanding({ is: 'failed' });
    };
    setStanding({ is: 'running', done: 0 });
    thread.postMessage(plan);
  };
  const cancel = () => {
    end();
    setStanding({ is: 'cancelled' });
  };
  return { standing, run, cancel };
}
