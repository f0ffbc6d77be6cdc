import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { leaveOut } from './chromium.ts';
import { LAPTOP, openPage, startUnderTest, type UnderTest } from './under-test.ts';

const EXAMPLE = 'beck-bank';
const PATIENCE = { timeout: 40_000 };
const QUICK = { days: 120, members: 20 };

describe.skipIf(leaveOut)('what can be undone', { timeout: 180_000 }, () => {
  let underTest: UnderTest;
  beforeAll(async () => {
    underTest = await startUnderTest();
  }, 90_000);
  afterAll(() => underTest?.end());

  test('outlasts a reload, and is dropped when another program changed the file', async () => {
    const { page, complaints, close } = await openPage(underTest, `/#/life/${EXAMPLE}/who`, LAPTOP, QUICK);
    const file = join(underTest.dataFolder, `my-${EXAMPLE}.yaml`);
    const resident = page.getByRole('heading', { name: 'In this enclosure' });
    const undo = page.getByRole('button', { name: 'Undo' });
    await resident.waitFor(PATIENCE);
    await page.getByRole('searchbox', { name: 'Name or word' }).fill('assassin');
    await page.getByRole('button', { name: 'Bring in Assassin snails', exact: false }).click(PATIENCE);
    await page.getByRole('button', { name: 'Put into the file' }).click(PATIENCE);
    await expect
      .poll(() => readFile(file, 'utf8').catch(() => ''), PATIENCE)
      .toMatch(/species: anentome-helena/);
    // The page has heard of it too, and shows the copy.
    await undo.waitFor(PATIENCE);
    await page.waitForURL(`**/my-${EXAMPLE}/**`);

    await page.reload();
    await undo.click(PATIENCE);
    await expect.poll(() => readFile(file, 'utf8'), PATIENCE).not.toContain('anentome-helena');
    await page.getByText('Taken back:', { exact: false }).waitFor(PATIENCE);
    await page.reload();
    await page.getByRole('button', { name: 'Redo' }).waitFor(PATIENCE);

    await writeFile(file, `${await readFile(file, 'utf8')}# written by another program\n`);
    await page.reload();
    await resident.waitFor(PATIENCE);
    expect(await undo.count()).toBe(0);
    expect(await page.getByRole('button', { name: 'Redo' }).count()).toBe(0);
    expect(await complaints()).toEqual([]);
    await close();
  });
});
