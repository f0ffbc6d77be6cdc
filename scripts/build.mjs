// npm run build: the library's bundle and pages, the web app, and the command line with its worker. Skips what is current.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { CACHE, installPackages, ROOT, requireNode } from './install.mjs';
import { sourcesHash } from './sources.mjs';

const STAMP = join(CACHE, 'built');
const MADE = ['packages/cli/dist/main.js', 'packages/web/dist/index.html'];

function isCurrent() {
  const made = MADE.every((path) => existsSync(join(ROOT, path)));
  return made && existsSync(STAMP) && readFileSync(STAMP, 'utf8') === sourcesHash();
}

async function buildCommandLine(vite) {
  await vite.build({
    root: join(ROOT, 'packages/cli'),
    configFile: false,
    logLevel: 'warn',
    ssr: { noExternal: [/^@shoreglass\//] },
    build: {
      ssr: true,
      target: 'node20',
      outDir: 'dist',
      emptyOutDir: true,
      rolldownOptions: {
        input: {
          main: 'src/main.ts',
          'member-worker': 'src/run/member-worker.ts',
          'trial-worker': 'src/run/trial-worker.ts',
        },
        output: { entryFileNames: '[name].js' },
      },
    },
  });
}

/** Builds everything when sources changed since the last time. */
export async function buildAll() {
  if (isCurrent()) return;
  console.log('Building ...');
  const tsx = join(ROOT, 'node_modules/tsx/dist/cli.mjs');
  for (const script of ['library/build/build-library.ts', 'contract/build/build-pages.ts'])
    execFileSync(process.execPath, [tsx, join(ROOT, 'packages', script)], {
      cwd: ROOT,
      stdio: 'inherit',
    });
  const vite = await import('vite');
  await vite.build({
    root: join(ROOT, 'packages/web'),
    configFile: join(ROOT, 'packages/web/vite.config.ts'),
    logLevel: 'warn',
  });
  await buildCommandLine(vite);
  mkdirSync(CACHE, { recursive: true });
  writeFileSync(STAMP, sourcesHash());
}

if (process.argv[1] && import.meta.url.endsWith('/build.mjs') && process.argv[1].endsWith('build.mjs')) {
  requireNode();
  installPackages();
  await buildAll();
}
