import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { library } from '@shoreglass/library';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { accessibilityProblems } from './accessibility.ts';
import { leaveOut } from './chromium.ts';
import {
  byNight,
  changedFrom,
  JOURNEY,
  LAPTOP,
  openPage,
  overflow,
  PHONE,
  soon,
  startUnderTest,
  type UnderTest,
} from './under-test.ts';

const EXAMPLE = 'beck-bank';
const TEXT = library.data.enclosures[EXAMPLE] ?? '';
const COMMENTS = TEXT.match(/#.*$/gm) ?? [];

const handle = (page: Page, name: string | RegExp): Locator =>
  page.getByRole('group', { name: 'Section: what can be moved' }).getByRole('button', { name });
const level = (page: Page) => handle(page, /^Water level:/);
const field = (page: Page, name: string) =>
  page.getByRole('region', { name: 'In the hand' }).getByRole('textbox', { name, exact: true });
const figure = async (page: Page, name: string) =>
  Number.parseFloat((await page.locator(`[data-key="${name}"]`).textContent()) ?? '');
const said = (locator: Locator) => locator.getAttribute('aria-label');
const levelSaid = (page: Page, why = '') => soon(() => said(level(page)), why);

/** Where to take hold of something, once it has come to rest within sight. */
async function middleOf(locator: Locator): Promise<{ x: number; y: number }> {
  await locator.scrollIntoViewIfNeeded();
  const box = await locator.boundingBox();
  if (!box) throw new Error('it has no place on the page');
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

async function openShape(underTest: UnderTest, options: Parameters<typeof openPage>[2], id = EXAMPLE) {
  const opened = await openPage(underTest, `/#/shape/${id}`, options);
  await level(opened.page).waitFor();
  return opened;
}

describe.skipIf(leaveOut)('the Shape place in a browser', JOURNEY, () => {
  let underTest: UnderTest;
  beforeAll(async () => {
    underTest = await startUnderTest();
  }, JOURNEY.timeout);
  afterAll(() => underTest?.end());

  test('the level by key, by drag and by number; every figure follows; undo gives back the text; the body turns', async () => {
    const { page, complaints, close } = await openShape(underTest, LAPTOP);
    const start = await figure(page, 'water');
    expect(start).toBeGreaterThan(20);

    await level(page).focus();
    await page.keyboard.press('ArrowUp');
    const byKey = await changedFrom(start, () => figure(page, 'water'));
    expect(byKey).toBeGreaterThan(start);
    await levelSaid(page).toContain('17.5\u00a0cm');
    await page.keyboard.press('Shift+ArrowUp');
    await changedFrom(byKey, () => figure(page, 'water'));
    await levelSaid(page).toContain('17.6\u00a0cm');

    await page.keyboard.press('Control+z');
    await levelSaid(page).toContain('16.5');
    await soon(() => figure(page, 'water'), 'steps of one key are undone together').toBe(start);
    await page.getByText('The example, unchanged.').waitFor();

    const from = await middleOf(level(page));
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x, from.y - 24, { steps: 6 });
    const whileDragging = await changedFrom(start, () => figure(page, 'water'));
    expect(whileDragging, 'figures follow while the hand still holds').toBeGreaterThan(start);
    await page.mouse.up();
    await page.getByText('Changed.', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await levelSaid(page).toContain('16.5');
    await page.keyboard.press('Control+Shift+z');
    await levelSaid(page).not.toContain('16.5');
    await page.keyboard.press('Control+z');
    await levelSaid(page).toContain('16.5');

    await level(page).focus();
    // What is typed right after Enter goes into the field: it has the focus before the key is let go.
    await page.keyboard.press('Enter');
    await page.keyboard.type('7 in');
    await soon(() => field(page, 'Above the base').inputValue()).toBe('7 in');
    await page.keyboard.press('Enter');
    await levelSaid(page).toContain('17.78');
    await field(page, 'Above the base').fill('75');
    await page.keyboard.press('Enter');
    await page.getByText('it fits; 75', { exact: false }).waitFor();
    // The next step comes after whatever the refused number would have done.
    await level(page).focus();
    await page.keyboard.press('ArrowUp');
    await levelSaid(page, 'what does not fit changes nothing').toContain('18.78');
    await page.keyboard.press('Control+z');
    await levelSaid(page).toContain('17.78');

    await page.getByRole('radio', { name: 'inches' }).check();
    await levelSaid(page).toContain('7\u00a0in');
    await page.getByRole('radio', { name: 'centimetres' }).check();

    // The body turns by key, by button and by drag, and says from where it is seen.
    const body = page.getByRole('slider', { name: 'Turn the enclosure' });
    const seen = () => body.getAttribute('aria-valuetext');
    const drawn = () => body.locator('svg').innerHTML();
    const [words, picture] = [await seen(), await drawn()];
    await body.focus();
    await page.keyboard.press('PageUp');
    await soon(seen).not.toBe(words);
    await soon(drawn).not.toBe(picture);
    await page.getByRole('button', { name: 'Turn right' }).click();
    const turned = 28 + 90;
    await soon(() => body.getAttribute('aria-valuenow')).toBe(String(turned));
    const { x, y } = await middleOf(body);
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 80, y, { steps: 4 });
    await page.mouse.up();
    await soon(() => body.getAttribute('aria-valuenow')).toBe(String(turned - 40));
    expect(await complaints()).toEqual([]);
    await close();
  });

  test('equipment is added, measured, given more and taken away, without the text', async () => {
    const { page, complaints, close } = await openShape(underTest, LAPTOP);
    const hand = page.getByRole('region', { name: 'In the hand' });
    await hand
      .getByRole('combobox', { name: 'Add equipment or an opening' })
      .selectOption({ label: 'Fogger' });
    await field(page, 'Water it turns to fog').waitFor();
    await soon(() => hand.getByRole('list', { name: 'To mind about it' }).textContent()).toMatch(/mist|fog/i);
    expect(await accessibilityProblems(page)).toEqual([]);
    await field(page, 'Water it turns to fog').fill('0,3');
    await page.keyboard.press('Enter');
    await field(page, 'Starts at').fill('25:00');
    await page.keyboard.press('Enter');
    await hand.getByText('is not a time of day', { exact: false }).waitFor();
    await field(page, 'Starts at').fill('7:30, 19:30');
    await page.keyboard.press('Enter');
    await soon(() => field(page, 'Starts at').inputValue()).toBe('07:30, 19:30');
    await hand
      .getByRole('combobox', { name: 'In the hand' })
      .selectOption({ label: 'Pump under the false bottom' });
    await hand.getByRole('combobox', { name: 'Give it also' }).selectOption({ label: 'Curve of its label' });
    await field(page, 'Highest lift on its label').waitFor();
    await hand.getByRole('combobox', { name: 'Give it also' }).selectOption({ label: 'Hose' });
    await field(page, 'Hose, inner diameter').waitFor();
    await hand
      .getByRole('combobox', { name: 'Leave out' })
      .selectOption({ label: 'Flow, at its real height' });
    await page.locator('[aria-label*="they meet at"]').first().waitFor();
    for (let step = 0; step < 6; step++) await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('The example, unchanged.').waitFor();
    expect(await complaints()).toEqual([]);
    await close();
  });

  test('drawn, taken away, saved under a name; the file keeps its comments, and another hand is not written over', async () => {
    const { page, complaints, close } = await openShape(underTest, LAPTOP);
    await page.getByRole('button', { name: 'Draw an island' }).click();
    await page.getByRole('combobox', { name: 'In the hand' }).selectOption({ label: 'Island' });
    await page
      .getByRole('row', { name: /^Island/ })
      .first()
      .waitFor();
    await page
      .getByRole('combobox', { name: 'In the hand' })
      .selectOption({ label: 'Alder branch, point 2' });
    await page.getByRole('button', { name: 'Take this point away' }).click();
    await soon(() => page.locator('[data-handle="point:branch:3"]').count()).toBe(0);

    await page.getByLabel('Save as').fill('shaped-beck');
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.waitForURL(/shape\/shaped-beck/);
    await page.getByText('Saved.').waitFor();
    const path = join(underTest.dataFolder, 'shaped-beck.yaml');
    const saved = await readFile(path, 'utf8');
    expect(saved).toContain('id: island');
    for (const comment of COMMENTS.filter((each) => !each.includes('onto the bank')))
      expect(saved).toContain(comment);
    expect(saved.split('\n').filter((line) => !TEXT.includes(line)).length).toBeLessThan(14);

    await writeFile(path, `${saved}# changed by another hand\n`);
    await level(page).focus();
    await page.keyboard.press('ArrowDown');
    await page.getByText('Changed.', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'Save', exact: true }).click();
    await page.getByText('changed elsewhere', { exact: false }).waitFor();
    expect(await readFile(path, 'utf8')).toBe(`${saved}# changed by another hand\n`);
    await page.reload();
    await page.getByText('did not save', { exact: false }).waitFor();
    await levelSaid(page, 'what was shaped outlives a reload').toContain('15.5');
    expect((await complaints()).filter((complaint) => !complaint.includes('409'))).toEqual([]);
    await close();
  });

  test('the cover is asked for humid air and a clear pane, and opened as the answer says', async () => {
    const { page, complaints, close } = await openShape(underTest, LAPTOP);
    await page.getByText('over the year', { exact: false }).first().waitFor();
    const part = page.getByRole('region', { name: 'How far open must the cover be?' });
    await part.getByLabel('Humidity of the day at least').fill('150');
    await page.getByText('Ask for a humidity between', { exact: false }).waitFor();
    await part.getByLabel('Humidity of the day at least').fill('80');
    await part.getByRole('button', { name: 'Find the opening' }).click();
    const answer = part.getByText('on 19 days of 20', { exact: false });
    await answer.waitFor();
    await soon(() => answer.textContent()).toMatch(/open the cover between|both cannot be had/);
    await soon(() => part.getByRole('row').count()).toBeGreaterThan(2);
    const cover = handle(page, /^Cover:/);
    const before = await said(cover);
    await part.getByRole('button', { name: /^Open it/ }).click();
    await changedFrom(before, () => said(cover));
    await part.getByText('The shape has changed since', { exact: false }).waitFor();
    expect(await accessibilityProblems(page)).toEqual([]);
    expect(await complaints()).toEqual([]);
    await close();
  });

  test('what cannot be is not done, and says why; a text with errors is told line by line', async () => {
    const { page, close } = await openShape(underTest, LAPTOP);
    await page.getByRole('combobox', { name: 'In the hand' }).selectOption({ label: 'Pool, the whole zone' });
    await page.getByRole('button', { name: 'Take Pool away' }).click();
    await page.getByText('Not done:', { exact: false }).first().waitFor();
    await page.getByText('The example, unchanged.').waitFor();
    await soon(
      () => page.getByRole('row', { name: /^Pool/ }).count(),
      'the pool is still there',
    ).toBeGreaterThan(0);

    await page.evaluate(
      (text) => {
        localStorage.setItem('shoreglass.draft.beck-bank', JSON.stringify({ text, basedOn: 'another' }));
      },
      TEXT.replace('level: 16.5 cm', 'level: 16.5'),
    );
    await page.reload();
    await page.getByText('cannot be drawn', { exact: false }).waitFor();
    await page.getByText('water.level: has no unit', { exact: false }).waitFor();
    expect(await accessibilityProblems(page)).toEqual([]);
    await page.getByRole('button', { name: 'go back to the saved text' }).click();
    await level(page).waitFor();
    await close();
  });

  test.each([
    ['laptop', LAPTOP],
    ['phone', PHONE],
  ])('is accessible on a %s by day and by night, with a part in the hand', async (_, size) => {
    const { page, complaints, close } = await openShape(underTest, size);
    expect(await accessibilityProblems(page)).toEqual([]);
    await level(page).focus();
    await page
      .getByRole('region', { name: 'In the hand' })
      .getByRole('button', { name: 'more' })
      .first()
      .waitFor();
    await soon(overflow(page), 'nothing reaches past the edge').toBeLessThanOrEqual(0);
    await byNight(page);
    expect(await accessibilityProblems(page)).toEqual([]);
    expect(await complaints()).toEqual([]);
    await close();
  });

  test('on a phone a finger takes hold of a mark, and what it steps with is large enough', async () => {
    const { page, close } = await openShape(underTest, PHONE);
    const start = await figure(page, 'water');
    const { x, y } = await middleOf(level(page));
    await page.touchscreen.tap(x + 12, y + 10);
    const more = page.getByRole('button', { name: 'Above the base more' });
    await more.waitFor();
    await soon(async () => {
      const { width = 0, height = 0 } = (await more.boundingBox()) ?? {};
      return Math.min(width, height);
    }).toBeGreaterThanOrEqual(44);
    await more.tap();
    expect(await changedFrom(start, () => figure(page, 'water'))).toBeGreaterThan(start);
    await close();
  });

  test('a finger drags the level, and the page stays where it is', async () => {
    const { page, close } = await openShape(underTest, PHONE);
    const start = await figure(page, 'water');
    const { x, y } = await middleOf(level(page));
    const scrolled = await page.evaluate(() => scrollY);
    const finger = await page.context().newCDPSession(page);
    const touch = (type: 'touchStart' | 'touchMove' | 'touchEnd', by: number) =>
      finger.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x: x + 6, y: y - by }],
      });
    await touch('touchStart', 0);
    for (const by of [6, 12, 18, 24]) await touch('touchMove', by);
    expect(await changedFrom(start, () => figure(page, 'water')), 'figures follow').toBeGreaterThan(start);
    await touch('touchEnd', 24);
    await page.getByText('Changed.', { exact: false }).waitFor();
    expect(await page.evaluate(() => scrollY)).toBe(scrolled);
    await page.getByRole('button', { name: 'Undo' }).tap();
    await page.getByText('The example, unchanged.').waitFor();
    await close();
  });
});
