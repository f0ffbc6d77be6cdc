import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { type RunningServer, startServer } from '@shoreglass/server';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { build } from 'vite';
import { expect } from 'vitest';
import { launchChromium } from './chromium.ts';

const WEB = join(import.meta.dirname, '../../packages/web');

export const LAPTOP: BrowserContextOptions = { viewport: { width: 1440, height: 900 } };
export const PHONE: BrowserContextOptions = {
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 2,
  isMobile: true,
  hasTouch: true,
};

/** How long anything on a page may take: on a machine several times slower than one's own, shared with other work. */
export const PATIENCE = { timeout: 120_000 };
/** For a whole journey, and for building and starting what it goes through. */
export const JOURNEY = { timeout: 400_000 };

/** Reads again and again until it is as expected: what an action brings about is drawn when the page comes to it. */
export const soon = <T>(read: () => T | Promise<T>, message = '') =>
  expect.poll(read, { ...PATIENCE, ...(message === '' ? {} : { message }) });

/** Waits until what is read is no longer what it was, and gives it. */
export async function changedFrom<T>(before: T, read: () => Promise<T>): Promise<T> {
  let now = before;
  await soon(async () => {
    now = await read();
    return now;
  }).not.toBe(before);
  return now;
}

/** How far the page reaches past its right edge [px]. */
export const overflow = (page: Page) => () =>
  page.evaluate(() => document.documentElement.scrollWidth - innerWidth);

/** Chooses the night view and waits until the page has its colours. */
export async function byNight(page: Page): Promise<void> {
  await page.getByRole('radio', { name: 'Night' }).check();
  await page.locator('html[data-view="night"]').waitFor();
}

/** Presses a button in the moment it appears, however short it stays; begin before doing what brings it. */
export function pressOnceThere(page: Page, name: string): Promise<void> {
  return page.evaluate(
    ({ words, timeout }) =>
      new Promise<void>((done, fail) => {
        setTimeout(() => fail(new Error(`no button '${words}' appeared`)), timeout);
        const press = () => {
          const button = [...document.querySelectorAll('button')].find(
            ({ textContent }) => textContent === words,
          );
          if (!button) return;
          appearing.disconnect();
          button.click();
          done();
        };
        const appearing = new MutationObserver(press);
        appearing.observe(document.body, { childList: true, subtree: true, characterData: true });
        press();
      }),
    { words: name, ...PATIENCE },
  );
}

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
      await rm(folder, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

/** A page that remembers every host it asked. */
export interface WatchedPage {
  readonly page: Page;
  /** Whatever it complained of so far, also about what was done last. */
  complaints(): Promise<readonly string[]>;
  readonly hosts: Set<string>;
  close(): Promise<void>;
}

/** As many days and runs as about the least the app lets one choose, for journeys that do not hang on them. */
export const QUICK = { days: 120, members: 20 };

export async function openPage(
  { browser, address }: UnderTest,
  path: string,
  options: BrowserContextOptions,
  run?: typeof QUICK,
): Promise<WatchedPage> {
  const context = await browser.newContext({ colorScheme: 'light', reducedMotion: 'reduce', ...options });
  if (run)
    await context.addInitScript(
      (kept) => {
        if (localStorage.getItem('shoreglass.run') === null) localStorage.setItem('shoreglass.run', kept);
      },
      JSON.stringify({ ...run, seed: 1 }),
    );
  context.setDefaultTimeout(PATIENCE.timeout);
  const page = await context.newPage();
  const complaints: string[] = [];
  const hosts = new Set<string>();
  page.on('console', (message) => {
    if (message.type() === 'error' || message.type() === 'warning') complaints.push(message.text());
  });
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('request', (request) => hosts.add(new URL(request.url()).host));
  await page.goto(address + path);
  return {
    page,
    hosts,
    async complaints() {
      // What the page still has to draw and to say comes before the answer to this.
      await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => setTimeout(done))));
      return complaints;
    },
    close: () => context.close(),
  };
}
