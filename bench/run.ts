import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { integratorSamples, type Sample } from './integrator.ts';
import { nitrificationProblem } from './nitrification-problem.ts';
import { scipySamples, sundialsSamples } from './peers.ts';

const HELP = `npm run bench -- [--json | demo]
Times the engine's integrator on two-step nitrification over 90 days beside SciPy and SUNDIALS, in one run on this
machine, and prints the time each needs to come within a given error of the reference. A peer that is not installed
is said to be missing.
  --json   every sample: tolerance, error, seconds, evaluations
  demo     times the demo instead: one run, and 200 members on two threads, beside their budgets`;

const SECONDS_PER_TOLERANCE = 0.05;
const TARGETS = [1e-1, 1e-2, 1e-3, 1e-4, 1e-5];
const OURS = 'Shoreglass';

/** The fastest sample of a solver within an error. */
function fastest(samples: readonly Sample[], name: string, error: number): Sample | undefined {
  return samples
    .filter((sample) => sample.name === name && sample.error <= error)
    .sort((a, b) => a.seconds - b.seconds)[0];
}

function microseconds(sample: Sample | undefined): string {
  return sample ? `${(sample.seconds * 1e6).toFixed(0)} us` : 'not reached';
}

function tableLines(samples: readonly Sample[]): string[] {
  const names = [...new Set(samples.map(({ name }) => name))];
  const lines: string[] = [];
  for (const error of TARGETS) {
    const ours = fastest(samples, OURS, error);
    lines.push(`within ${error} of the reference`);
    for (const name of names) {
      const best = fastest(samples, name, error);
      const ratio = best && ours && name !== OURS ? `${(best.seconds / ours.seconds).toFixed(1)} x ours` : '';
      const evaluations = best ? `${best.evaluations} evaluations` : '';
      lines.push(
        `  ${name.padEnd(28)} ${microseconds(best).padStart(12)}  ${evaluations.padEnd(20)} ${ratio}`,
      );
    }
  }
  return lines;
}

function main(words: readonly string[]): number {
  if (words.includes('--help') || words.includes('-h')) {
    console.log(HELP);
    return 0;
  }
  const unknown = words.find((word) => word !== '--json');
  if (unknown !== undefined) {
    console.error(`unknown argument '${unknown}'`);
    return 2;
  }
  const here = dirname(fileURLToPath(import.meta.url));
  const problem = nitrificationProblem(join(here, '..'));
  const samples = integratorSamples(problem, SECONDS_PER_TOLERANCE);
  const missing: string[] = [];
  for (const peer of [scipySamples, sundialsSamples]) {
    const result = peer(join(here, 'peers'), problem, SECONDS_PER_TOLERANCE);
    if ('missing' in result) missing.push(result.missing);
    else samples.push(...result.samples);
  }
  if (words.includes('--json')) console.log(JSON.stringify({ samples, missing }, null, 2));
  else {
    console.log('two-step nitrification, 6 states, 90 days, 11 moments compared');
    for (const line of tableLines(samples)) console.log(line);
    for (const name of missing) console.log(`not measured: ${name}`);
  }
  return 0;
}

process.exitCode = main(process.argv.slice(2));
