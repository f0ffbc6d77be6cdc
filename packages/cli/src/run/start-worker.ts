import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';

const MOST_WORKERS = 8;

/** Threads worth starting for so many pieces of work. */
export function threadCount(pieces: number): number {
  return Math.min(pieces, MOST_WORKERS, Math.max(1, availableParallelism()));
}

/** What a run makes is short-lived: a small young generation keeps each thread small and costs no time. */
export const WORKER_LIMITS = { maxYoungGenerationSizeMb: 2 };

/** Whether this is the built program rather than its TypeScript source. */
export const IS_BUILT = import.meta.url.endsWith('.js');

/** Where a worker's code lies: built, and as TypeScript source. */
export interface WorkerCode {
  readonly built: URL;
  readonly source: URL;
}

/** Starts a worker: the built one, or the TypeScript source when this runs from source. */
export function startWorker({ built, source }: WorkerCode, workerData: unknown): Worker {
  if (IS_BUILT) return new Worker(built, { workerData, resourceLimits: WORKER_LIMITS });
  const code = `import('tsx/esm/api').then(({ register }) => { register(); return import(${JSON.stringify(source.href)}); })`;
  return new Worker(code, { eval: true, workerData, resourceLimits: WORKER_LIMITS });
}
