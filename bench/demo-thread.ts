import { isMainThread, parentPort, Worker, workerData } from 'node:worker_threads';
import { loadBundledEnclosure } from '@shoreglass/contract';
import { expectedRun, type MemberBatch, prepareOutlook, runMembers, summarise } from '@shoreglass/engine';
import { WORKER_LIMITS } from '../packages/cli/src/run/start-worker.ts';

const DAYS = 300;
const MEMBERS = 200;
const THREADS = 2;
const WARM_UPS = 10;
const RUNS = 30;
const BUDGET = { run: 25, outlook: 3000, memory: 300 };

const prepared = prepareOutlook(loadBundledEnclosure('beck-bank').plan, {
  days: DAYS,
  members: MEMBERS,
  seed: 1,
});

/** CPU time of one expected run [ms], least of three means. */
function expectedRunTime(): number {
  for (let i = 0; i < WARM_UPS; i += 1) expectedRun(prepared);
  const means = [0, 1, 2].map(() => {
    const start = process.cpuUsage();
    for (let i = 0; i < RUNS; i += 1) expectedRun(prepared);
    const { user, system } = process.cpuUsage(start);
    return (user + system) / 1000 / RUNS;
  });
  return Math.min(...means);
}

function inThread(from: number, to: number): Promise<MemberBatch> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(new URL(import.meta.url), {
      workerData: { from, to },
      resourceLimits: WORKER_LIMITS,
    });
    worker.once('message', resolve);
    worker.once('error', reject);
  });
}

/** Time from the start of the threads to the summarised outlook [ms]. */
async function outlookTime(): Promise<number> {
  const start = performance.now();
  const share = Math.ceil(MEMBERS / THREADS);
  const batches = await Promise.all(
    Array.from({ length: THREADS }, (_, k) => inThread(k * share, Math.min(MEMBERS, (k + 1) * share))),
  );
  summarise(prepared, expectedRun(prepared), batches);
  return performance.now() - start;
}

function line(what: string, measured: number, budget: number, unit: string): string {
  const verdict = measured <= budget ? 'within' : 'over';
  return `${what.padEnd(52)} ${measured.toFixed(0).padStart(6)} ${unit}   ${verdict} the budget of ${budget} ${unit}`;
}

async function main(): Promise<void> {
  console.log(`demo, ${DAYS} days; bundled, Node ${process.version}`);
  console.log(line('one expected run, CPU time', expectedRunTime(), BUDGET.run, 'ms'));
  const outlook = await outlookTime();
  console.log(
    line(`${MEMBERS} members on ${THREADS} worker threads, wall time`, outlook, BUDGET.outlook, 'ms'),
  );
  const memory = process.resourceUsage().maxRSS / 1024;
  console.log(line('memory of the process at its largest', memory, BUDGET.memory, 'MB'));
}

if (isMainThread) await main();
else {
  const { from, to } = workerData as { readonly from: number; readonly to: number };
  const batch = runMembers(prepared, from, to);
  parentPort?.postMessage(batch, [batch.series.buffer, batch.books.buffer] as ArrayBuffer[]);
}
