import type { Worker } from 'node:worker_threads';
import type { MemberBatch } from '@shoreglass/engine';
import type { Answer, Order, WorkerTask } from './messages.ts';
import { startWorker, threadCount, type WorkerCode } from './start-worker.ts';

const CODE: WorkerCode = {
  built: new URL('./member-worker.js', import.meta.url),
  source: new URL('./member-worker.ts', import.meta.url),
};

const BATCH = 10;

function ordersFor(members: number): Order[] {
  const orders: Order[] = [];
  for (let from = 0; from < members; from += BATCH)
    orders.push({ from, to: Math.min(from + BATCH, members) });
  return orders;
}

/** Has one worker fetch orders until none is left. */
function work(worker: Worker, orders: Order[], done: (batch: MemberBatch) => void): Promise<void> {
  return new Promise((resolve, reject) => {
    const next = (): void => {
      const order = orders.shift();
      if (order) worker.postMessage(order);
      else resolve();
    };
    worker.on('message', (answer: Answer) => {
      if ('error' in answer) return reject(new Error(answer.error));
      done(answer.batch);
      next();
    });
    worker.on('error', reject);
    next();
  });
}

/**
 * Runs all members on worker threads. The result does not depend on how many there are.
 * @throws Error with the engine's message when a member fails
 */
export async function allMembers(task: WorkerTask, progress: (done: number) => void): Promise<MemberBatch[]> {
  const orders = ordersFor(task.options.members);
  const workers = Array.from({ length: threadCount(orders.length) }, () => startWorker(CODE, task));
  const batches: MemberBatch[] = [];
  let finished = 0;
  try {
    await Promise.all(
      workers.map((worker) =>
        work(worker, orders, (batch) => {
          batches.push(batch);
          finished += batch.to - batch.from;
          progress(finished);
        }),
      ),
    );
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()));
  }
  return batches;
}
