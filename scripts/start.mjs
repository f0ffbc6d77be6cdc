// npm start: installs, builds, computes the demo's outlook in the terminal and serves the app on loopback.
import { spawn, spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { installPackages, ROOT, requireNode } from './install.mjs';

requireNode();
installPackages();
const { buildAll } = await import('./build.mjs');
await buildAll();

const cli = join(ROOT, 'packages/cli/bin/shoreglass.js');
const demo = spawnSync(process.execPath, [cli, 'demo'], { cwd: ROOT, stdio: 'inherit' });
if (demo.status !== 0) process.exit(demo.status ?? 1);

const desktop =
  !process.env.CI &&
  !process.env.NO_OPEN &&
  (process.platform !== 'linux' || process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
const server = spawn(
  process.execPath,
  [cli, 'serve', ...(desktop ? ['--open'] : []), ...process.argv.slice(2)],
  { cwd: ROOT, stdio: 'inherit' },
);
for (const signal of ['SIGINT', 'SIGTERM']) process.on(signal, () => server.kill(signal));
server.on('exit', (code) => process.exit(code ?? 0));
