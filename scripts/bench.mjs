// npm run bench: times the engine beside its peers. Arguments go to bench/run.ts (--help lists them).
// npm run bench -- demo: times the demo beside its budgets.
import { spawnSync } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = join(dirname(fileURLToPath(import.meta.url)), '..');
const words = process.argv.slice(2);
const [program, rest] = words[0] === 'demo' ? ['bench/run-demo.ts', words.slice(1)] : ['bench/run.ts', words];
const { status, error } = spawnSync(process.execPath, ['--import', 'tsx', join(root, program), ...rest], {
  cwd: root,
  stdio: 'inherit',
});
if (error) console.error(`bench: ${error.message}`);
process.exit(status ?? 2);
