// Brings node_modules and, where browser tests need it, Chromium to what the project asks for. Node alone.
import { execFileSync, spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const ROOT = join(dirname(fileURLToPath(import.meta.url)), '..');
export const CACHE = join(ROOT, 'node_modules', '.cache', 'shoreglass');

/** @throws Error on a Node.js older than the project runs on. */
export function requireNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    throw new Error(`Shoreglass needs Node.js 20.19 or later; this is ${process.versions.node}.`);
  }
}

function installKey() {
  const hash = createHash('sha256')
    .update(process.versions.modules)
    .update(process.platform)
    .update(process.arch);
  for (const name of ['package.json', 'package-lock.json', '.npmrc'])
    hash.update(readFileSync(join(ROOT, name)));
  return hash.digest('hex');
}

/** Runs `npm ci` when the lock, the manifest or the Node ABI changed since the last time. */
export function installPackages() {
  const stamp = join(CACHE, 'installed');
  const key = installKey();
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') === key) return;
  console.log('Installing packages (npm ci) ...');
  execFileSync('npm', ['ci', '--no-audit', '--no-fund'], {
    cwd: ROOT,
    stdio: 'inherit',
    shell: process.platform === 'win32',
  });
  mkdirSync(CACHE, { recursive: true });
  writeFileSync(stamp, key);
}

const CHROMIUM_PATHS = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/microsoft-edge',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

/** Path of a Chromium to test with, or undefined. CHROMIUM_PATH wins. */
export function findChromium() {
  return [process.env.CHROMIUM_PATH, ...CHROMIUM_PATHS].find((path) => path && existsSync(path));
}

/** Finds Chromium; as root on Debian installs it through apt. @returns {string | undefined} its path */
export function provideChromium() {
  const found = findChromium();
  if (found) return found;
  const debian = existsSync('/etc/debian_version') && process.getuid?.() === 0;
  if (!debian) {
    console.log('No Chromium found: install one (Debian: apt-get install chromium) or set CHROMIUM_PATH.');
    return undefined;
  }
  console.log('Installing Chromium through apt ...');
  const environment = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  for (const args of [
    ['update', '-q'],
    ['install', '-y', '-q', '--no-install-recommends', 'chromium', 'fonts-liberation'],
  ]) {
    const { status } = spawnSync('apt-get', args, {
      stdio: ['ignore', 'ignore', 'inherit'],
      env: environment,
    });
    if (status !== 0) return undefined;
  }
  return findChromium();
}
