import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
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
const plain = (text: string | null) => (text ?? '').replaceAll('\u00a0', ' ');

/** Weakly buffered water over bog wood, which nobody lives in: below pH 7 within weeks. */
const SOFT_BOX = [
  'shoreglass: 1',
  'name: Soft box',
  'start: 2026-03-01',
  'glass: { length: 50 cm, width: 30 cm, height: 35 cm, thickness: 6 mm }',
  'cover: { open: 10 % }',
  'zones:',
  '  - id: pool',
  '    kind: pool',
  '    from: 0 cm',
  '    to: 50 cm',
  '    ground: { left: 3 cm, right: 3 cm }',
  '    layers: [{ kind: substrate, material: coarse-sand }]',
  'water:',
  '  level: 19 cm',
  '  fill: [{ water: distilled, share: 96 % }, { water: hard-tap, share: 4 % }]',
  '  top-off: distilled',
  'room:',
  '  temperature: { mean: 23 °C }',
  '  humidity: { mean: 55 % }',
  'hardscape:',
  '  - { id: wood, material: bog-wood, mass: 1500 g } # kept by hand',
  'routines:',
  '  - { do: top-off, every: 3 d }',
  '',
].join('\n');

/** Grams of a salt in the first table of the recipe for what is asked last. */
async function gramsOf(page: Page, salt: RegExp): Promise<number> {
  await page.locator('section[aria-labelledby="recipe"][aria-busy="false"]').waitFor();
  const row = page.getByRole('table', { name: 'Take' }).getByRole('row', { name: salt });
  return Number.parseFloat(plain(await row.getByRole('cell').first().textContent()));
}

describe.skipIf(leaveOut)('the Water place in a browser', JOURNEY, () => {
  let underTest: UnderTest;
  beforeAll(async () => {
    underTest = await startUnderTest();
  }, JOURNEY.timeout);
  afterAll(() => underTest?.end());

  test('a target typed in any unit becomes grams, and the recipe goes into a file of one’s own and out again', async () => {
    const { page, complaints, hosts, close } = await openPage(
      underTest,
      `/#/water/${EXAMPLE}/mix`,
      LAPTOP,
      QUICK,
    );
    await page.getByRole('table', { name: 'Take' }).waitFor();
    for (const water of ['hard tap water', 'clean rain'])
      await page.getByRole('checkbox', { name: new RegExp(water) }).uncheck();
    await page.getByLabel('How much of it').fill('10 L');
    await page.getByRole('textbox', { name: 'Carbonate hardness, KH' }).fill('');
    await page.getByLabel('General hardness, GH').fill('107 ppm');
    // 10 L of distilled water to 107 mg/L CaCO3 (6 dGH): 10.7 mmol; the steps name every salt that is weighed.
    await page.getByText('= 6 °dGH = 1.07 mmol/L').waitFor();
    const gypsum = await gramsOf(page, /gypsum/);
    await page.getByLabel('General hardness, GH').fill('214');
    await soon(() => gramsOf(page, /gypsum/)).toBeCloseTo(2 * gypsum, 1);
    await page.getByLabel('General hardness, GH').fill('six');
    await page.getByText('Begin with a number', { exact: false }).waitFor();
    await page.getByLabel('General hardness, GH').fill('6 dGH');
    expect(await accessibilityProblems(page)).toEqual([]);

    await page.getByRole('button', { name: 'Top off with it' }).click();
    await page.getByText('The mixed water now replaces what evaporates.').waitFor();
    await soon(
      () => page.getByRole('textbox', { name: 'How much of it' }).inputValue(),
      'the desk comes along',
    ).toBe('10 L');
    const file = join(underTest.dataFolder, `my-${EXAMPLE}.yaml`);
    const changed = await readFile(file, 'utf8');
    expect(changed).toMatch(/top-off: mixed-1/);
    expect(changed).toMatch(/Recipe of \d{4}-\d{2}-\d{2} for 10.0 L/);
    expect(changed).toContain('# a sponge from a running tank');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Taken back:', { exact: false }).waitFor();
    expect(await readFile(file, 'utf8')).not.toContain('mixed-1');
    expect(await complaints()).toEqual([]);
    expect([...hosts]).toEqual([new URL(underTest.address).host]);
    await close();
  });

  test('who adds and who removes, by month and as a table, by day and by night', async () => {
    const { page, complaints, close } = await openPage(
      underTest,
      `/#/water/${EXAMPLE}/budget`,
      LAPTOP,
      QUICK,
    );
    const figure = page.getByRole('img', { name: /^Who adds and who removes alkalinity/ });
    await figure.waitFor();
    // What the runs still bring in would change the ledger as well.
    await page.getByText('So far the expected run alone', { exact: false }).waitFor({ state: 'detached' });
    const ledger = async () => plain(await page.getByRole('table').textContent());
    const whole = await ledger();
    expect(whole).toContain('Left of both');
    await page.getByLabel('Summed over').selectOption({ index: 2 });
    await changedFrom(whole, ledger);
    await page.getByRole('radio', { name: 'Dissolved nitrogen' }).check();
    await page.getByRole('img', { name: /dissolved nitrogen/ }).waitFor();
    expect(await accessibilityProblems(page)).toEqual([]);
    await byNight(page);
    expect(await accessibilityProblems(page)).toEqual([]);
    expect(await complaints()).toEqual([]);
    await close();
  });

  test('on a phone: a reading held against the bands, the year with it, a buffer worked out and stopped', async () => {
    const { page, complaints, close } = await openPage(underTest, `/#/water/${EXAMPLE}/today`, PHONE, QUICK);
    const hardness = page.getByRole('textbox', { name: 'Carbonate hardness' });
    await hardness.waitFor();
    await hardness.fill('1 dKH');
    await page.getByText('Below 3.0 °dKH, the limit of', { exact: false }).waitFor();
    const keep = page.getByRole('button', { name: 'Keep this one' });
    await soon(async () => (await keep.boundingBox())?.height).toBeGreaterThanOrEqual(44);
    expect(await accessibilityProblems(page)).toEqual([]);
    await keep.click();
    await page.getByText('Carbonate hardness 1.0 °dKH').waitFor();

    await page.getByRole('link', { name: 'The year' }).first().click();
    await page.getByRole('img', { name: /^Carbonate hardness until/ }).waitFor();
    await soon(overflow(page), 'nothing reaches past the edge').toBeLessThanOrEqual(0);
    expect(await accessibilityProblems(page)).toEqual([]);

    await page.getByRole('link', { name: 'Buffer' }).click();
    await page.getByRole('textbox', { name: 'Hold for' }).fill('20 d');
    await Promise.all([
      pressOnceThere(page, 'Stop'),
      page.getByRole('button', { name: 'Work it out' }).click(),
    ]);
    await page.getByRole('button', { name: 'Stop' }).waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Work it out' }).click();
    await page.getByText('None is needed').waitFor();
    expect(await accessibilityProblems(page)).toEqual([]);
    expect(await complaints()).toEqual([]);
    await close();
  });

  test('a buffer that was found goes into the file as a piece, and out again', async () => {
    const file = join(underTest.dataFolder, 'soft-box.yaml');
    await mkdir(underTest.dataFolder, { recursive: true });
    await writeFile(file, SOFT_BOX);
    const { page, complaints, close } = await openPage(underTest, '/#/water/soft-box/buffer', LAPTOP, QUICK);
    await page.getByRole('textbox', { name: 'Hold for' }).fill('40 d');
    await page.getByRole('textbox', { name: 'pH at least' }).fill('7');
    await page.getByRole('button', { name: 'Work it out' }).click();
    const put = page.getByRole('button', { name: 'Put it into the file' }).first();
    await put.waitFor();
    await put.click();
    await soon(() => readFile(file, 'utf8')).toMatch(/material: crushed-coral/);
    expect(await readFile(file, 'utf8')).toContain('# kept by hand');
    await page.getByRole('button', { name: 'Undo' }).click();
    await page.getByText('Taken back:', { exact: false }).waitFor();
    expect(await readFile(file, 'utf8')).toBe(SOFT_BOX);
    expect(await complaints()).toEqual([]);
    await close();
  });

  test('part of the enclosure stays: the rest is mixed, and poured in steps', async () => {
    const { page, complaints, close } = await openPage(underTest, `/#/water/${EXAMPLE}/mix`, PHONE, QUICK);
    await page.getByRole('table', { name: 'Take' }).waitFor();
    await page.getByRole('textbox', { name: 'Of that, stays in the enclosure' }).fill('30 L');
    await page.getByText('of which 30.0', { exact: false }).first().waitFor();
    await page.getByRole('combobox', { name: 'What is in it now' }).first().selectOption('computed');
    await page.getByText('Changing over, when animals live there already').click();
    await page.getByText('by the new mix', { exact: false }).waitFor();
    expect(await accessibilityProblems(page)).toEqual([]);
    await page.getByRole('textbox', { name: 'Of that, stays in the enclosure' }).fill('60 L');
    await page.getByText('are to stay in a volume of', { exact: false }).first().waitFor();
    expect(await complaints()).toEqual([]);
    await close();
  });
});
