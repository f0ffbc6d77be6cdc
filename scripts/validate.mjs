// npm run validate: compares the engine with outside references. Arguments go to validation/run.ts (--help lists them).
import { spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const { status, error } = spawnSync(
  process.execPath,
  ['--import', 'tsx', join(root, 'validation/run.ts'), ...process.argv.slice(2)],
  { cwd: root, stdio: 'inherit', env: { INIT_CWD: process.cwd(), ...process.env } },
);
if (error) console.error(`validate: ${error.message}`);
process.exit(status ?? 2);
