import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const BIN = fileURLToPath(new URL('../bin/shoreglass.js', import.meta.url));
const BUILT = fileURLToPath(new URL('../dist/main.js', import.meta.url));

/** What a call of the command line printed and how it ended. */
export interface Called {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
}

/** Calls the built command line, without colours. @throws Error when it is not built. */
export function shoreglass(...args: readonly string[]): Called {
  if (!existsSync(BUILT)) throw new Error('the command line is not built: npm run build');
  return spawnSync(process.execPath, [BIN, ...args], {
    encoding: 'utf8',
    env: { ...process.env, NO_COLOR: '1' },
  });
}
