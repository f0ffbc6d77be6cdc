// npm run bench: times the engine beside its peers. Arguments go to bench/run.ts (--help lists them).
import { spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const { status, error } = spawnSync(
  process.execPath,
  ['--import', 'tsx', join(root, 'bench/run.ts'), ...process.argv.slice(2)],
  { cwd: root, stdio: 'inherit' },
);
if (error) console.error(`bench: ${error.message}`);
process.exit(status ?? 2);
