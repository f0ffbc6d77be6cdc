import { parentPort, workerData } from 'node:worker_threads';
import { prepareOutlook, runMembers } from '@shoreglass/engine';
import type { Answer, Order, WorkerTask } from './messages.ts';

const port = parentPort;
if (!port) throw new Error('member-worker runs as a worker thread only');
const { plan, options } = workerData as WorkerTask;
const prepared = prepareOutlook(plan, options);

port.on('message', ({ from, to }: Order) => {
  try {
    const batch = runMembers(prepared, from, to);
    port.postMessage({ batch } satisfies Answer, [
      batch.series.buffer as ArrayBuffer,
      batch.books.buffer as ArrayBuffer,
    ]);
  } catch (error) {
    port.postMessage({ error: error instanceof Error ? error.message : String(error) } satisfies Answer);
  }
});
