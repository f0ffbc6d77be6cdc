import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Sample } from './integrator.ts';
import { type NitrificationProblem, PARAMETER_NAMES } from './nitrification-problem.ts';

/** What a peer found, or why it is not there. */
export type PeerResult = { readonly samples: readonly Sample[] } | { readonly missing: string };

function readSamples(text: string): Sample[] {
  return text
    .split('\n')
    .filter((line) => line.startsWith('{'))
    .map((line) => JSON.parse(line) as Sample);
}

interface Call {
  readonly command: string;
  readonly words: readonly string[];
  readonly input?: string;
}

function call({ command, words, input = '' }: Call): { readonly out: string } | { readonly failed: string } {
  const { status, stdout, stderr, error } = spawnSync(command, words, { input, encoding: 'utf8' });
  if (error) return { failed: `${command} does not start (${(error as NodeJS.ErrnoException).code})` };
  if (status !== 0) return { failed: stderr.trim().split('\n').at(-1) || `${command} ended with ${status}` };
  return { out: stdout };
}

/** SciPy, where python3 has it. */
export function scipySamples(folder: string, problem: NitrificationProblem, seconds: number): PeerResult {
  const input = JSON.stringify({ ...problem, seconds });
  const result = call({ command: 'python3', words: [join(folder, 'nitrification.py')], input });
  return 'out' in result ? { samples: readSamples(result.out) } : { missing: `SciPy: ${result.failed}` };
}

function plainNumbers({ parameters, y0, times, reference }: NitrificationProblem, seconds: number): string {
  const rows = times.map((t, k) => [t, ...reference[k]!]);
  return [
    ...PARAMETER_NAMES.map((name) => parameters[name]!),
    ...y0,
    seconds,
    times.length,
    ...rows.flat(),
  ].join(' ');
}

const LIBRARIES = ['cvode', 'nvecserial', 'sunmatrixdense', 'sunlinsoldense'].map(
  (name) => `-lsundials_${name}`,
);

/** SUNDIALS, where a C compiler and its headers are. */
export function sundialsSamples(folder: string, problem: NitrificationProblem, seconds: number): PeerResult {
  const place = mkdtempSync(join(tmpdir(), 'shoreglass-bench-'));
  try {
    const program = join(place, 'nitrification');
    const words = ['-O2', '-o', program, join(folder, 'nitrification.c'), ...LIBRARIES, '-lm'];
    const built = call({ command: 'cc', words });
    if ('failed' in built) return { missing: `SUNDIALS: ${built.failed}` };
    const result = call({ command: program, words: [], input: plainNumbers(problem, seconds) });
    return 'out' in result ? { samples: readSamples(result.out) } : { missing: `SUNDIALS: ${result.failed}` };
  } finally {
    rmSync(place, { recursive: true, force: true });
  }
}
