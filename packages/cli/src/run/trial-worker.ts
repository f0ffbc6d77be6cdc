import { parentPort, workerData } from 'node:worker_threads';
import { runTrial, type TrialOrder } from '@shoreglass/engine';
import type { TrialAnswer, TrialTask } from './trial-messages.ts';

const port = parentPort;
if (!port) throw new Error('trial-worker runs as a worker thread only');
const { plan } = workerData as TrialTask;

port.on('message', (order: TrialOrder) => {
  try {
    port.postMessage({ runs: runTrial(plan, order) } satisfies TrialAnswer);
  } catch (error) {
    port.postMessage({ error: error instanceof Error ? error.message : String(error) } satisfies TrialAnswer);
  }
});
