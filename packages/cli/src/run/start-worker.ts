import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';

const MOST_WORKERS = 8;

/** Threads worth starting for so many pieces of work. */
export function threadCount(pieces: number): number {
  return Math.min(pieces, MOST_WORKERS, Math.max(1, availableParallelism()));
}

/** A worker beside this file by name: built, or the TypeScript source when run from source. */
export function startWorker(name: 'member-worker' | 'trial-worker', workerData: unknown): Worker {
  const built = import.meta.url.endsWith('.js');
  if (built) return new Worker(new URL(`./${name}.js`, import.meta.url), { workerData });
  const source = new URL(`./${name}.ts`, import.meta.url).href;
  const code = `import('tsx/esm/api').then(({ register }) => { register(); return import(${JSON.stringify(source)}); })`;
  return new Worker(code, { eval: true, workerData });
}
