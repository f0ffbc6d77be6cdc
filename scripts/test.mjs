// npm test: installs what it needs, then every check of the project. Ends with 'N passed, N failed'.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { CACHE, installPackages, provideChromium, ROOT, requireNode } from './install.mjs';

requireNode();
installPackages();
const chromium = provideChromium();

const node = process.execPath;
const bin = (path) => join(ROOT, 'node_modules', path);
const biome = bin('@biomejs/biome/bin/biome');
const tsc = bin('typescript7/bin/tsc');
const CHECKS = [
  ['build', [node, join(ROOT, 'scripts/build.mjs')]],
  ['format and lint', [node, biome, 'check', '--error-on-warnings', '.']],
  ['types, pure packages', [node, tsc, '-p', 'tsconfig.pure.json']],
  ['types, everything', [node, tsc, '-p', 'tsconfig.json']],
  ['layering', [node, join(ROOT, 'scripts/layering.mjs')]],
  ['doc blocks', [node, join(ROOT, 'scripts/doc-blocks.mjs')]],
];

let passed = 0;
let failed = 0;
const filters = process.argv.slice(2);
for (const [name, [command, ...args]] of filters.length > 0 ? CHECKS.slice(0, 1) : CHECKS) {
  const started = Date.now();
  const { status, stdout, stderr } = spawnSync(command, args, { cwd: ROOT, encoding: 'utf8' });
  const seconds = ((Date.now() - started) / 1000).toFixed(1);
  console.log(`${status === 0 ? 'pass' : 'FAIL'}  ${name} (${seconds} s)`);
  if (status === 0) passed += 1;
  else {
    failed += 1;
    console.log(`${stdout}${stderr}`);
  }
}

/** All tests take a quarter of this on two processors; what still runs then hangs, and is ended so that the count comes [ms]. */
const LONGEST = 30 * 60_000;

mkdirSync(CACHE, { recursive: true });
const countFile = join(CACHE, 'test-count.json');
rmSync(countFile, { force: true });
const vitest = spawnSync(
  node,
  [
    bin('vitest/vitest.mjs'),
    'run',
    '--reporter=default',
    `--reporter=${join(ROOT, 'scripts/test-count.mjs')}`,
    ...filters,
  ],
  {
    cwd: ROOT,
    stdio: 'inherit',
    timeout: LONGEST,
    killSignal: 'SIGKILL',
    env: {
      ...process.env,
      SHOREGLASS_TEST_COUNT: countFile,
      ...(chromium ? { CHROMIUM_PATH: chromium } : {}),
    },
  },
);
if (vitest.error) console.log(`FAIL  tests (${vitest.error.message})`);
if (existsSync(countFile)) {
  const count = JSON.parse(readFileSync(countFile, 'utf8'));
  passed += count.passed;
  failed += count.failed;
  if (process.env.CI && count.skipped > 0) {
    console.log(`FAIL  ${count.skipped} tests were skipped; none may be skipped here`);
    failed += count.skipped;
  } else if (count.skipped > 0) console.log(`${count.skipped} skipped`);
} else failed += 1;
if (vitest.status !== 0 && failed === 0) failed += 1;

console.log(`${passed} passed, ${failed} failed`);
process.exit(failed === 0 ? 0 : 1);
