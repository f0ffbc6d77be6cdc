import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { openEnclosure } from '@shoreglass/contract';
import { expectedDocument, expectedRun, prepareOutlook } from '@shoreglass/engine';
import { palette } from '@shoreglass/figures';
import { library } from '@shoreglass/library';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { fingerprint } from '../../packages/web/src/outlook/fingerprint.ts';
import { accessibilityProblems } from './accessibility.ts';
import { leaveOut } from './chromium.ts';
import {
  byNight,
  JOURNEY,
  LAPTOP,
  openPage,
  overflow,
  PHONE,
  QUICK,
  soon,
  startUnderTest,
  type UnderTest,
} from './under-test.ts';

const EXAMPLE = 'beck-bank';
const TEXT = library.data.enclosures[EXAMPLE] ?? '';
const NAME = 'Beck bank';

const drawing = (page: Page) => page.locator('figure svg').first().getAttribute('aria-label');
const slider = (page: Page) => page.getByRole('slider', { name: 'Chosen day' });
const shownDay = (page: Page) => slider(page).getAttribute('aria-valuetext');
const chosenDay = async (page: Page) => Number(await slider(page).getAttribute('aria-valuenow'));
/** Middle of a box on the page. */
const middle = (box: { x: number; y: number; width: number; height: number } | null) =>
  box ? [box.x + box.width / 2, box.y + box.height / 2] : [Number.NaN, Number.NaN];
/** How far the handle that takes the keyboard lies from the one that is drawn [px]. */
async function handleOffset(page: Page): Promise<number> {
  const [x = 0, y = 0] = middle(await slider(page).boundingBox());
  const [drawnX = 0, drawnY = 0] = middle(await page.locator('[data-part="handle"]').boundingBox());
  return Math.hypot(x - drawnX, y - drawnY);
}
const background = (page: Page) =>
  page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
const rgb = (colour: string) => {
  const [red, green, blue] = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16));
  return `rgb(${red}, ${green}, ${blue})`;
};

describe.skipIf(leaveOut)('the app in a browser', JOURNEY, () => {
  let underTest: UnderTest;
  beforeAll(async () => {
    underTest = await startUnderTest();
  }, JOURNEY.timeout);
  afterAll(() => underTest?.end());

  test('from the example to its outlook, along the ribbon, into the night', async () => {
    const { page, complaints, hosts, close } = await openPage(underTest, '/', LAPTOP);
    await page.getByRole('link', { name: 'Look ahead' }).first().click();
    await page.getByRole('heading', { level: 1, name: NAME }).waitFor();
    await page.getByText('All 200 runs are done.').waitFor({ timeout: 300_000 });
    await soon(() => page.getByRole('region', { name: 'Days left to itself' }).textContent()).toMatch(
      /\d+ days?/,
    );

    await slider(page).focus();
    await page.keyboard.press('Home');
    await soon(() => shownDay(page)).toBe('1 March 2026, day 0');
    const atStart = await drawing(page);
    await page.keyboard.press('PageUp');
    await page.keyboard.press('ArrowRight');
    await soon(() => shownDay(page)).toBe('1 April 2026, day 31');
    await page.keyboard.press('End');
    await soon(() => chosenDay(page)).toBe(299);

    const strip = await slider(page).locator('..').boundingBox();
    if (!strip) throw new Error('the ribbon has no place on the page');
    const y = strip.y + 60;
    await page.mouse.move(strip.x + strip.width * 0.9, y);
    await page.mouse.down();
    const seen = new Set<string | null>([atStart]);
    for (const share of [0.7, 0.5, 0.3]) {
      await page.mouse.move(strip.x + strip.width * share, y, { steps: 4 });
      // The drawing is of the same moment as the handle.
      await soon(() => chosenDay(page)).toBe(300 * share);
      seen.add(await drawing(page));
    }
    await page.mouse.up();
    expect(seen.size, 'the drawing says something else of each day').toBe(4);
    await soon(() => chosenDay(page)).toBe(90);
    await soon(() => handleOffset(page)).toBeLessThan(2);

    expect(await accessibilityProblems(page)).toEqual([]);
    await byNight(page);
    expect(await background(page)).toBe(rgb(palette('night').paper));
    expect(await accessibilityProblems(page)).toEqual([]);
    await page.reload();
    await page.getByRole('heading', { level: 1, name: NAME }).waitFor();
    await soon(() => background(page)).toBe(rgb(palette('night').paper));

    expect(await complaints()).toEqual([]);
    expect([...hosts]).toEqual([new URL(underTest.address).host]);
    await close();
  });

  test('the worker computes the same year as Node, bit for bit', async () => {
    const { page, close } = await openPage(underTest, `/#/ahead/${EXAMPLE}`, LAPTOP);
    const shown = await page.locator('[data-fingerprint]').getAttribute('data-fingerprint');
    const { plan } = openEnclosure(TEXT, `${EXAMPLE}.yaml`);
    if (!plan) throw new Error('the example has errors');
    const prepared = prepareOutlook(plan, { days: 300, members: 200, seed: 1 });
    expect(shown).toBe(fingerprint(expectedDocument(prepared, expectedRun(prepared))));
    await close();
  });

  test('on a phone the drawing is above, the ribbon at the thumb, and both move together', async () => {
    const { page, complaints, close } = await openPage(underTest, `/#/ahead/${EXAMPLE}`, PHONE, {
      ...QUICK,
      days: 300,
    });
    await page.getByText(`All ${QUICK.members} runs are done.`).waitFor();
    const handle = async () => slider(page).boundingBox();
    await soon(async () => (await handle())?.y).toBeGreaterThan(844 / 2);
    await soon(async () => (await handle())?.height).toBeGreaterThanOrEqual(44);
    await soon(overflow(page), 'nothing reaches past the edge').toBeLessThanOrEqual(0);

    await slider(page).press('Home');
    await soon(() => chosenDay(page)).toBe(0);
    const before = await drawing(page);
    const strip = await slider(page).locator('..').boundingBox();
    if (!strip) throw new Error('the ribbon has no place on the page');
    await page.touchscreen.tap(strip.x + strip.width * 0.25, strip.y + 80);
    await soon(() => chosenDay(page)).toBe(75);
    await soon(() => handleOffset(page)).toBeLessThan(2);
    await soon(() => drawing(page)).not.toBe(before);

    expect(await accessibilityProblems(page)).toEqual([]);
    await byNight(page);
    expect(await accessibilityProblems(page)).toEqual([]);
    expect(await complaints()).toEqual([]);
    await close();
  });

  test.each([
    ['laptop', LAPTOP],
    ['phone', PHONE],
  ])('every other place is accessible on a %s, by day and by night', async (_, size) => {
    for (const colorScheme of ['light', 'dark'] as const) {
      const { page, complaints, close } = await openPage(underTest, '/#/cautions', { ...size, colorScheme });
      await page.getByRole('heading', { name: 'Mains electricity beside water' }).waitFor();
      await soon(() => background(page)).toBe(rgb(palette(colorScheme === 'dark' ? 'night' : 'day').paper));
      expect(await accessibilityProblems(page)).toEqual([]);
      await page.getByRole('link', { name: 'Enclosures' }).click();
      await page.getByRole('heading', { level: 3, name: NAME }).waitFor();
      expect(await accessibilityProblems(page)).toEqual([]);
      await page.getByRole('link', { name: 'Text' }).first().click();
      await page.getByRole('heading', { name: /remark|No errors/ }).waitFor();
      expect(await accessibilityProblems(page)).toEqual([]);
      expect(await complaints()).toEqual([]);
      await close();
    }
  });

  test('an own file: the error is placed, mended and saved with its comments', async () => {
    const { page, complaints, close } = await openPage(underTest, '/#/enclosures/new', LAPTOP);
    const area = page.getByRole('textbox', { name: 'Text of the enclosure' });
    const mine = `# my own glass, half a year of thinking\n${TEXT.replace(NAME, 'North window')}`;
    const broken = mine.replace('length: 90 cm', 'length: 90');
    const line = broken.split('\n').findIndex((each) => each.includes('length: 90')) + 1;
    await page.getByLabel('Open a file from this device').setInputFiles({
      name: 'north.yaml',
      mimeType: 'application/yaml',
      buffer: Buffer.from(broken),
    });
    const place = page.getByRole('button', { name: `line ${line}`, exact: true });
    await place.waitFor();
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('Not saved: the text has an error.', { exact: false }).waitFor();

    await place.click();
    await soon(() =>
      area.evaluate((field: HTMLTextAreaElement) =>
        field.value.slice(field.selectionStart, field.selectionEnd),
      ),
    ).toContain('90');
    await page.reload();
    await soon(() => area.inputValue(), 'what was typed outlives a reload').toBe(broken);

    // Saved in the same breath, under the name that the text gives itself.
    await area.fill(mine);
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('Saved.').waitFor();
    await page.getByRole('heading', { name: /^\d+ remarks?$/ }).waitFor();
    await place.waitFor({ state: 'detached' });
    expect(await readFile(join(underTest.dataFolder, 'north-window.yaml'), 'utf8')).toBe(mine);

    await writeFile(join(underTest.dataFolder, 'north-window.yaml'), `${mine}# changed by another hand\n`);
    await area.fill(`${mine}# and by this one\n`);
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('changed elsewhere', { exact: false }).waitFor();
    await page.getByLabel('Save as').fill('north-window-2');
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('Saved.').waitFor();
    await page.getByRole('link', { name: 'Look ahead' }).click();
    await slider(page).waitFor();
    const refusals = (await complaints()).filter((complaint) => !complaint.includes('409'));
    expect(refusals).toEqual([]);
    await close();
  });

  test('when at last the server is gone the app says so, and what was typed stays', async () => {
    const { page, close } = await openPage(underTest, '/#/enclosures/new', LAPTOP);
    const area = page.getByRole('textbox', { name: 'Text of the enclosure' });
    await area.fill(TEXT.replace(NAME, 'South window'));
    await page.getByRole('heading', { name: /^\d+ remarks?$/ }).waitFor();
    await underTest.stopServer();
    await page.getByRole('button', { name: 'Save' }).click();
    await page.getByText('does not answer', { exact: false }).waitFor();
    await soon(() => area.inputValue()).toContain('South window');
    await page.getByRole('link', { name: 'Enclosures' }).click();
    await page.getByRole('button', { name: 'Try again' }).waitFor();
    expect(underTest.serverLog).toEqual([]);
    await close();
  });
});
