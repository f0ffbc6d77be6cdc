import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
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
  pressOnceThere,
  QUICK,
  soon,
  startUnderTest,
  type UnderTest,
} from './under-test.ts';

const EXAMPLE = 'beck-bank';
const OTHER = 'espoo-window';
const plain = (text: string | null) => (text ?? '').replaceAll('\u00a0', ' ');
/** The number before a unit, once there is one. */
async function amount(read: () => Promise<string>, unit: string): Promise<number> {
  const before = new RegExp(`([\\d.]+) ${unit}`);
  await soon(read).toMatch(before);
  return Number(before.exec(await read())?.[1]);
}

describe.skipIf(leaveOut)('the Life place in a browser', JOURNEY, () => {
  let underTest: UnderTest;
  beforeAll(async () => {
    underTest = await startUnderTest();
  }, JOURNEY.timeout);
  afterAll(() => underTest?.end());

  test('a species brought in shows what it does not go with; it goes into a copy and out again', async () => {
    const { page, complaints, close } = await openPage(underTest, `/#/life/${EXAMPLE}/who`, LAPTOP, QUICK);
    const conflicts = page.getByRole('region', { name: 'What does not go together' });
    const looked = () => page.locator('section[aria-labelledby="conflicts"][aria-busy="false"]').waitFor();
    await page.getByRole('heading', { name: 'In this enclosure' }).waitFor();
    await looked();
    expect(plain(await conflicts.textContent())).not.toContain('assassin snails');
    await page.getByRole('searchbox', { name: 'Name or word' }).fill('assassin');
    await page.getByRole('button', { name: 'Bring in Assassin snails', exact: false }).click();
    // A hunter of snails beside ramshorns: the sentence names both, its source and what would help.
    const eaten = conflicts
      .getByRole('listitem')
      .filter({ hasText: /ramshorn/i })
      .filter({ hasText: /assassin/i });
    await eaten.first().waitFor();
    await soon(async () => plain(await eaten.first().textContent())).toMatch(/What helps:[\s\S]*Source: /);
    // What resolves it in one step is a button, and is not in the file yet.
    await eaten
      .first()
      .getByRole('button', { name: /^Take out assassin snails/i })
      .click();
    await eaten.first().waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Bring in Assassin snails', exact: false }).click();
    await page.getByRole('textbox', { name: /^Adults, assassin snails/i }).fill('many');
    await page.getByText('adults must be a whole number', { exact: false }).waitFor();
    await page.getByRole('textbox', { name: /^Adults, assassin snails/i }).fill('4');
    expect(await accessibilityProblems(page)).toEqual([]);

    await page.getByRole('button', { name: 'Put into the file' }).click();
    await page.getByText('assassin snails added.', { exact: false }).first().waitFor();
    const file = join(underTest.dataFolder, `my-${EXAMPLE}.yaml`);
    await soon(async () => readFile(file, 'utf8')).toMatch(/species: anentome-helena[\s\S]*adults: 4/);
    expect(await readFile(file, 'utf8'), 'comments stay').toContain('# a sponge from a running tank');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Taken back:', { exact: false }).waitFor();
    expect(await readFile(file, 'utf8')).not.toContain('anentome-helena');
    await page.getByRole('button', { name: 'Redo' }).click();
    await soon(async () => readFile(file, 'utf8')).toMatch(/species: anentome-helena/);
    await page.getByRole('button', { name: 'Undo' }).click();
    await soon(async () => readFile(file, 'utf8')).not.toMatch(/species: anentome-helena/);
    await looked();
    await soon(
      () => page.getByRole('button', { name: 'Put into the file' }).count(),
      'the sheet is clean',
    ).toBe(0);
    expect(await complaints()).toEqual([]);
    await close();
  });

  test('the food web shows amounts as bands, list and table, by week; by day and by night', async () => {
    const { page, complaints, close } = await openPage(underTest, `/#/life/${EXAMPLE}/web`, LAPTOP, QUICK);
    const drawing = page.getByRole('img', { name: /^Who eats what, a week, mean of 120 days/ });
    await drawing.waitFor();
    await page.getByText('As a table').click();
    const row = page.getByRole('table').getByRole('row', { name: /^Ramshorn snails feed/ });
    const told = async () => plain(await row.textContent());
    const carbon = await amount(told, 'mg C');
    expect(carbon).toBeGreaterThan(0);
    await page.getByRole('radio', { name: 'dry food' }).check();
    // Two and a half of dry food to one of carbon, both rounded.
    expect((await amount(told, 'mg dry')) / carbon).toBeCloseTo(2.5, 0);
    const whole = await told();
    await page.getByRole('radio', { name: 'one week' }).check();
    await page.getByRole('img', { name: /^Who eats what, in the week from/ }).waitFor();
    await changedFrom(whole, told);
    expect(await accessibilityProblems(page)).toEqual([]);
    await byNight(page);
    expect(await accessibilityProblems(page)).toEqual([]);
    expect(await complaints()).toEqual([]);
    await close();
  });

  test('on a phone: counts are told line by line what is wrong, then what they tell, and stay in the browser', async () => {
    const { page, complaints, close } = await openPage(underTest, `/#/life/${EXAMPLE}/counts`, PHONE, QUICK);
    const field = page.getByRole('textbox', { name: /^A count a line/ });
    const tell = page.getByRole('button', { name: 'Tell what they say' });
    await field.fill('2026-04-05 30\n2026-04-19 many');
    await tell.click();
    await page.getByText(/no number under 'count'/).waitFor();
    await field.fill('2026-04-05 30\n2026-04-19 38\n2026-05-04 52');
    await tell.click();
    await page.getByRole('img', { name: /, 3 counts until 4 May: 30 first, 52 last/ }).waitFor();
    await page.getByText('3 counts tell little').waitFor();
    await page.getByText(/^Of 3 counts \d lies? where nine runs in ten do/).waitFor();
    await soon(overflow(page)).toBeLessThanOrEqual(0);
    expect(await accessibilityProblems(page)).toEqual([]);
    await byNight(page);
    expect(await accessibilityProblems(page)).toEqual([]);
    await page.reload();
    await soon(() => field.inputValue()).toContain('2026-05-04 52');
    expect(await complaints()).toEqual([]);
    await close();
  });

  test('on a phone: numbers by stage, what the food carries, and what more animals would change, stopped and asked again', async () => {
    const { page, complaints, close } = await openPage(underTest, `/#/life/${EXAMPLE}/numbers`, PHONE, QUICK);
    await page
      .getByRole('img', { name: /^By stage until/ })
      .first()
      .waitFor();
    await soon(overflow(page), 'nothing reaches past the edge').toBeLessThanOrEqual(0);
    expect(await accessibilityProblems(page)).toEqual([]);

    await page.getByRole('link', { name: 'What the food carries' }).click();
    await page.getByRole('table', { name: 'Each food by itself' }).waitFor();
    await soon(overflow(page)).toBeLessThanOrEqual(0);
    expect(await accessibilityProblems(page)).toEqual([]);

    await page.getByRole('link', { name: 'What if I add' }).click();
    const ask = page.getByRole('button', { name: 'Work it out' });
    await ask.waitFor();
    await soon(async () => (await ask.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    await soon(() => ask.isEnabled()).toBe(true);
    await Promise.all([pressOnceThere(page, 'Stop'), ask.click()]);
    await page.getByRole('button', { name: 'Stop' }).waitFor({ state: 'detached' });
    await ask.click();
    await page
      .getByText(/^On the last day .* with them, .* without/)
      .first()
      .waitFor();
    await soon(overflow(page)).toBeLessThanOrEqual(0);
    expect(await accessibilityProblems(page)).toEqual([]);
    expect(await complaints()).toEqual([]);
    await close();
  });

  test('what helps against too many snails is compared on one scale, and goes into the file', async () => {
    const { page, complaints, close } = await openPage(underTest, `/#/life/${OTHER}/pest`, LAPTOP, QUICK);
    const ask = page.getByRole('button', { name: 'Compare the answers' });
    await ask.waitFor();
    await soon(() => page.getByRole('combobox', { name: 'Whom' }).inputValue()).toBe('planorbella-duryi');
    await page.getByRole('textbox', { name: 'Adults, assassin snails' }).fill('lots');
    await page.getByText('Write how many assassin snails', { exact: false }).waitFor();
    await page.getByRole('textbox', { name: 'Adults, assassin snails' }).fill('6');
    await soon(() => ask.isEnabled()).toBe(true);
    await ask.click();
    const answers = page.locator('ol > li');
    await answers.first().waitFor();
    const told = (await answers.allTextContents()).map(plain);
    for (const [at, name] of [
      'Nothing is done',
      'Half the feed',
      'A bait a week',
      '6 assassin snails',
    ].entries())
      expect(told[at]).toMatch(new RegExp(`^${name}.* on the last day`));
    // Each says what becomes of the pest; a hunter also what becomes of itself.
    expect(told[3]).toMatch(
      /assassin snails (themselves die out|multiply|are still there|\d+ (is|are) left)/,
    );
    await soon(() => answers.getByRole('img', { name: /^Ramshorn snails until/ }).count()).toBe(told.length);
    expect(await accessibilityProblems(page)).toEqual([]);
    await page.getByRole('button', { name: 'Put into the file: half the feed' }).click();
    const file = join(underTest.dataFolder, `my-${OTHER}.yaml`);
    await soon(async () => readFile(file, 'utf8').catch(() => '')).toMatch(/amount: 0\.03 g/);
    expect(await complaints()).toEqual([]);
    await close();
  });

  test('on a phone the other places stand behind More, and the year is run as long as chosen', async () => {
    const { page, complaints, close } = await openPage(underTest, `/#/ahead/${EXAMPLE}`, PHONE, QUICK);
    await page.getByText('Run it longer, shorter or more often').click();
    const days = page.getByRole('textbox', { name: 'Days' });
    await soon(() => days.inputValue()).toBe('120');
    await days.fill('99');
    await page.getByText('Days: a whole number from 100 to 730.').waitFor();
    await soon(() => page.getByRole('button', { name: 'Run it so' }).isEnabled()).toBe(false);
    await days.fill('110');
    await page.getByRole('button', { name: 'Run it so' }).click();
    await page.getByText(', 110 days', { exact: false }).waitFor();
    const row = page.getByRole('navigation', { name: 'Places' });
    await row.getByRole('button', { name: 'More' }).waitFor();
    expect(await row.getByRole('link', { name: 'Library' }).isVisible()).toBe(false);
    await row.getByRole('button', { name: 'More' }).tap();
    expect(await accessibilityProblems(page)).toEqual([]);
    await row.getByRole('link', { name: 'Library' }).tap();
    await page.getByRole('heading', { level: 1, name: 'Library' }).waitFor();
    await soon(() => row.getByRole('button', { name: 'More' }).getAttribute('aria-expanded')).toBe('false');
    expect(await complaints()).toEqual([]);
    await close();
  });
});
