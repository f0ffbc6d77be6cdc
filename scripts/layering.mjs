// npm run layering: the table of allowed imports and 'no cycles', held by dependency-cruiser.
import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { ROOT } from './install.mjs';

const bin = join(ROOT, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
const { status, stdout, stderr } = spawnSync(
  process.execPath,
  [bin, '--config', '.dependency-cruiser.cjs', '--output-type', 'json', 'packages', 'validation'],
  { cwd: ROOT, encoding: 'utf8', maxBuffer: 1 << 28 },
);
if (!stdout) {
  console.error(stderr);
  process.exit(status || 1);
}
const { summary } = JSON.parse(stdout);
for (const { rule, from, to } of summary.violations) console.error(`${rule.name}: ${from} -> ${to}`);
// Without a TypeScript it can read, dependency-cruiser sees no module and no violation.
const LEAST_MODULES = 100;
if (summary.totalCruised < LEAST_MODULES) {
  console.error(`only ${summary.totalCruised} modules were read; at least ${LEAST_MODULES} were expected`);
  process.exit(1);
}
console.log(`${summary.totalCruised} modules, ${summary.error} violations`);
process.exit(summary.error > 0 ? 1 : 0);
