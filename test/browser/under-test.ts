import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type RunningServer, startServer } from '@shoreglass/server';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { build } from 'vite';
import { launchChromium } from './chromium.ts';

const WEB = join(import.meta.dirname, '../../packages/web');

export const LAPTOP: BrowserContextOptions = { viewport: { width: 1440, height: 900 } };
export const PHONE: BrowserContextOptions = {
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 2,
  isMobile: true,
  hasTouch: true,
};

/** The app as built from these sources, a server on a free port and a browser; all of it in a folder of its own. */
export interface UnderTest {
  readonly browser: Browser;
  readonly address: string;
  readonly dataFolder: string;
  readonly serverLog: string[];
  stopServer(): Promise<void>;
  end(): Promise<void>;
}

export async function startUnderTest(): Promise<UnderTest> {
  const folder = await mkdtemp(join(tmpdir(), 'shoreglass-browser-'));
  const webFolder = join(folder, 'web');
  const dataFolder = join(folder, 'enclosures');
  const serverLog: string[] = [];
  await build({
    root: WEB,
    configFile: join(WEB, 'vite.config.ts'),
    logLevel: 'error',
    build: { outDir: webFolder, emptyOutDir: true },
  });
  const server: RunningServer = await startServer({
    port: 0,
    dataFolder,
    webFolder,
    log: (line) => serverLog.push(line),
  });
  const browser = await launchChromium();
  return {
    browser,
    address: server.address,
    dataFolder,
    serverLog,
    stopServer: () => server.close(),
    async end() {
      await browser.close();
      await server.close();
      await rm(folder, { recursive: true, force: true });
    },
  };
}

/** A page that remembers whatever it complained of, and every host it asked. */
export interface WatchedPage {
  readonly page: Page;
  readonly complaints: string[];
  readonly hosts: Set<string>;
  close(): Promise<void>;
}

/** How the year is run where a journey is not about the year itself: shorter and less often than usual. */
export interface QuickRun {
  readonly days: number;
  readonly members: number;
}

export async function openPage(
  { browser, address }: UnderTest,
  path: string,
  options: BrowserContextOptions,
  run?: QuickRun,
): Promise<WatchedPage> {
  const context = await browser.newContext({ colorScheme: 'light', reducedMotion: 'reduce', ...options });
  if (run)
    await context.addInitScript(
      (kept) => {
        if (localStorage.getItem('shoreglass.run') === null) localStorage.setItem('shoreglass.run', kept);
      },
      JSON.stringify({ ...run, seed: 1 }),
    );
  const page = await context.newPage();
  const complaints: string[] = [];
  const hosts = new Set<string>();
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => hosts.add(new URL(request.url()).host));
  await page.goto(address + path);
  return { page, complaints, hosts, close: () => context.close() };
}
