import type { Worker } from 'node:worker_threads';
import {
  answerWith,
  type Inquiry,
  type Plan,
  type TrialOrder,
  type TrialProgress,
  type TrialRun,
} from '@shoreglass/engine';
import { startWorker, threadCount, type WorkerCode } from './start-worker.ts';
import type { TrialAnswer, TrialTask } from './trial-messages.ts';

const CODE: WorkerCode = {
  built: new URL('./trial-worker.js', import.meta.url),
  source: new URL('./trial-worker.ts', import.meta.url),
};

interface Waiting {
  readonly order: TrialOrder;
  readonly resolve: (runs: readonly TrialRun[]) => void;
  readonly reject: (error: Error) => void;
}

/** Worker threads that carry out orders on one plan, each one at a time. */
export interface TrialThreads {
  ask(order: TrialOrder): Promise<readonly TrialRun[]>;
  end(): Promise<void>;
}

/** Starts threads for trials on a plan. */
export function trialThreads(plan: Plan): TrialThreads {
  const queue: Waiting[] = [];
  const idle: Worker[] = [];
  const held = new Map<Worker, Waiting>();
  const next = (worker: Worker): void => {
    const waiting = queue.shift();
    if (!waiting) {
      idle.push(worker);
      return;
    }
    held.set(worker, waiting);
    worker.postMessage(waiting.order);
  };
  const start = (): Worker => {
    const worker = startWorker(CODE, { plan } satisfies TrialTask);
    worker.on('message', (answer: TrialAnswer) => {
      const waiting = held.get(worker);
      held.delete(worker);
      if ('error' in answer) waiting?.reject(new Error(answer.error));
      else waiting?.resolve(answer.runs);
      next(worker);
    });
    worker.on('error', (error) => {
      for (const { reject } of [...held.values(), ...queue.splice(0)]) reject(error);
    });
    return worker;
  };
  const workers = Array.from({ length: threadCount(Number.POSITIVE_INFINITY) }, start);
  idle.push(...workers);
  return {
    ask: (order) =>
      new Promise((resolve, reject) => {
        queue.push({ order, resolve, reject });
        const worker = idle.pop();
        if (worker) next(worker);
      }),
    end: async () => {
      await Promise.all(workers.map((worker) => worker.terminate()));
    },
  };
}

/** Answers an inquiry on worker threads. The answer does not depend on how many there are. */
export function inquire<Answer>(
  threads: TrialThreads,
  inquiry: Inquiry<Answer>,
  progress: (so: TrialProgress) => void,
): Promise<Answer> {
  return answerWith(inquiry, threads.ask, progress);
}
