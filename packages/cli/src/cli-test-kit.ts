import { spawnSync } from 'node:child_process';
import { closeSync, existsSync, openSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const BIN = fileURLToPath(new URL('../bin/shoreglass.js', import.meta.url));
const BUILT = fileURLToPath(new URL('../dist/main.js', import.meta.url));

/** What a call of the command line printed and how it ended. */
export interface Called {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

interface Surroundings {
  readonly env?: Readonly<Record<string, string>>;
  /** What standard output is written to; gathered when left out. */
  readonly into?: number;
}

function called(args: readonly string[], { env = {}, into }: Surroundings): Called {
  if (!existsSync(BUILT)) throw new Error('the command line is not built: npm run build');
  const { COLUMNS: _, ...own } = process.env;
  return spawnSync(process.execPath, [BIN, ...args], {
    encoding: 'utf8',
    env: { ...own, NO_COLOR: '1', ...env },
    stdio: ['ignore', into ?? 'pipe', 'pipe'],
  });
}

/** Calls the built command line, without colours. @throws Error when it is not built. */
export function shoreglass(...args: readonly string[]): Called {
  return called(args, {});
}

/** The same with more in its environment. @throws Error as `shoreglass` */
export function shoreglassWith(env: Readonly<Record<string, string>>, ...args: readonly string[]): Called {
  return called(args, { env });
}

/** The same with standard output written to a file. @throws Error as `shoreglass` */
export function shoreglassInto(path: string, ...args: readonly string[]): Called {
  const into = openSync(path, 'w');
  try {
    return called(args, { into });
  } finally {
    closeSync(into);
  }
}
