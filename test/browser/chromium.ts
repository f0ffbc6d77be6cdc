import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';

const PATHS = [
  process.env.CHROMIUM_PATH,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/usr/bin/microsoft-edge',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
];

/** A Chromium to test with; where there is none the journeys are left out, but never on a build machine. */
export const chromiumPath = PATHS.find((path) => path && existsSync(path));

export const leaveOut = chromiumPath === undefined && !process.env.CI;
if (leaveOut)
  console.warn(
    'No Chromium found: browser journeys are left out. Install one (Debian: apt-get install chromium) or set CHROMIUM_PATH.',
  );

/** @throws Error when there is no Chromium */
export function launchChromium(): Promise<Browser> {
  if (chromiumPath === undefined) throw new Error('No Chromium found; set CHROMIUM_PATH.');
  return chromium.launch({
    executablePath: chromiumPath,
    timeout: 120_000,
    args: [
      '--no-sandbox',
      '--disable-quic',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      '--disable-gpu',
    ],
  });
}
