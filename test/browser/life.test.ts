import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { accessibilityProblems } from './accessibility.ts';
import { leaveOut } from './chromium.ts';
import { LAPTOP, openPage, PHONE, startUnderTest, type UnderTest } from './under-test.ts';

const EXAMPLE = 'beck-bank';
const PATIENCE = { timeout: 90_000 };
const plain = (text: string | null) => (text ?? '').replaceAll('\u00a0', ' ');
const number = (text: string | undefined) => Number((text ?? '').replaceAll(' ', ''));

describe.skipIf(leaveOut)('the Life place in a browser', { timeout: 180_000 }, () => {
  let underTest: UnderTest;
  beforeAll(async () => {
    underTest = await startUnderTest();
  }, 90_000);
  afterAll(() => underTest?.end());

  test('a species brought in shows what it does not go with; it goes into a copy and out again', async () => {
    const { page, complaints, close } = await openPage(underTest, `/#/life/${EXAMPLE}/who`, LAPTOP);
    const conflicts = page.getByRole('region', { name: 'What does not go together' });
    await page.getByRole('heading', { name: 'In this enclosure' }).waitFor(PATIENCE);
    expect(plain(await conflicts.textContent())).not.toContain('assassin snails');
    await page.getByRole('searchbox', { name: 'Name or word' }).fill('assassin');
    await page.getByRole('button', { name: 'Bring in Assassin snails', exact: false }).click();
    // A hunter of snails beside ramshorns: the sentence names both, its source and what would help.
    const eaten = conflicts
      .getByRole('listitem')
      .filter({ hasText: /ramshorn/i })
      .filter({ hasText: /assassin/i });
    await eaten.first().waitFor();
    expect(plain(await eaten.first().textContent())).toMatch(/What helps:/);
    await page.getByRole('textbox', { name: /^Adults, assassin snails/i }).fill('many');
    await page.getByText('adults must be a whole number', { exact: false }).waitFor();
    await page.getByRole('textbox', { name: /^Adults, assassin snails/i }).fill('4');
    expect(await accessibilityProblems(page)).toEqual([]);

    await page.getByRole('button', { name: 'Put into the file' }).click();
    await page.getByText('assassin snails added.', { exact: false }).first().waitFor(PATIENCE);
    const file = join(underTest.dataFolder, `my-${EXAMPLE}.yaml`);
    await expect.poll(async () => readFile(file, 'utf8')).toMatch(/species: anentome-helena[\s\S]*adults: 4/);
    expect(await readFile(file, 'utf8'), 'comments stay').toContain('# a sponge from a running tank');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Taken back:', { exact: false }).waitFor();
    expect(await readFile(file, 'utf8')).not.toContain('anentome-helena');
    await page.getByRole('heading', { name: 'In this enclosure' }).waitFor(PATIENCE);
    expect(await page.getByRole('button', { name: 'Put into the file' }).count(), 'the sheet is clean').toBe(
      0,
    );
    expect(complaints).toEqual([]);
    await close();
  });

  test('the food web shows amounts as bands, list and table, by week; by day and by night', async () => {
    const { page, complaints, close } = await openPage(underTest, `/#/life/${EXAMPLE}/web`, LAPTOP);
    const drawing = page.getByRole('img', { name: /^Who eats what, a week, mean of 300 days/ });
    await drawing.waitFor(PATIENCE);
    await page.getByText('As a table').click();
    const row = page.getByRole('table').getByRole('row', { name: /^Ramshorn snails feed/ });
    const whole = plain(await row.textContent());
    const [, carbon] = /([\d.]+) mg C/.exec(whole) ?? [];
    expect(number(carbon)).toBeGreaterThan(0);
    await page.getByRole('radio', { name: 'dry food' }).check();
    const [, dry] = /([\d.]+) mg dry/.exec(plain(await row.textContent())) ?? [];
    // Two and a half of dry food to one of carbon, both rounded.
    expect(number(dry) / number(carbon)).toBeCloseTo(2.5, 0);
    await page.getByRole('radio', { name: 'one week' }).check();
    await page.getByRole('img', { name: /^Who eats what, in the week from/ }).waitFor();
    expect(plain(await row.textContent())).not.toBe(whole);
    expect(await accessibilityProblems(page)).toEqual([]);
    await page.getByRole('radio', { name: 'Night' }).check();
    expect(await accessibilityProblems(page)).toEqual([]);
    expect(complaints).toEqual([]);
    await close();
  });

  test('on a phone: numbers by stage, what the food carries, and what more animals would change, stopped and asked again', async () => {
    const { page, complaints, close } = await openPage(underTest, `/#/life/${EXAMPLE}/numbers`, PHONE);
    await page
      .getByRole('img', { name: /^By stage until/ })
      .first()
      .waitFor(PATIENCE);
    const overflow = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(await overflow(), 'nothing reaches past the edge').toBeLessThanOrEqual(0);
    expect(await accessibilityProblems(page)).toEqual([]);

    await page.getByRole('link', { name: 'What the food carries' }).click();
    await page.getByRole('table', { name: 'Each food by itself' }).waitFor(PATIENCE);
    expect(await overflow()).toBeLessThanOrEqual(0);
    expect(await accessibilityProblems(page)).toEqual([]);

    await page.getByRole('link', { name: 'What if I add' }).click();
    const ask = page.getByRole('button', { name: 'Work it out' });
    await ask.waitFor(PATIENCE);
    expect((await ask.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    await expect.poll(() => ask.isEnabled(), PATIENCE).toBe(true);
    await ask.click();
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.getByRole('button', { name: 'Stop' }).waitFor({ state: 'detached' });
    await ask.click();
    await page
      .getByText(/^On the last day .* with them, .* without/)
      .first()
      .waitFor(PATIENCE);
    expect(await overflow()).toBeLessThanOrEqual(0);
    expect(await accessibilityProblems(page)).toEqual([]);
    expect(complaints).toEqual([]);
    await close();
  });
});
