import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/**
 * Times the demo: one expected run, and an outlook of 200 members on worker threads, beside their budgets. The engine
 * is bundled first, as it is shipped: run from its sources it is two to three times slower.
 */
async function main(): Promise<number> {
  const here = dirname(fileURLToPath(import.meta.url));
  const folder = mkdtempSync(join(tmpdir(), 'bench-demo-'));
  try {
    await build({
      root: join(here, '../packages/contract'),
      configFile: false,
      logLevel: 'error',
      ssr: { noExternal: true },
      build: {
        ssr: true,
        minify: false,
        outDir: folder,
        rolldownOptions: {
          input: join(here, 'demo-thread.ts'),
          output: { entryFileNames: 'demo-thread.mjs' },
        },
      },
    });
    return spawnSync(process.execPath, [join(folder, 'demo-thread.mjs')], { stdio: 'inherit' }).status ?? 2;
  } finally {
    rmSync(folder, { recursive: true });
  }
}

process.exitCode = await main();
