import { readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { leaveOut } from './chromium.ts';
import { JOURNEY, LAPTOP, openPage, QUICK, soon, startUnderTest, type UnderTest } from './under-test.ts';

const EXAMPLE = 'beck-bank';

describe.skipIf(leaveOut)('what can be undone', JOURNEY, () => {
  let underTest: UnderTest;
  beforeAll(async () => {
    underTest = await startUnderTest();
  }, JOURNEY.timeout);
  afterAll(() => underTest?.end());

  test('outlasts a reload, and is dropped when another program changed the file', async () => {
    const { page, complaints, close } = await openPage(underTest, `/#/life/${EXAMPLE}/who`, LAPTOP, QUICK);
    const file = join(underTest.dataFolder, `my-${EXAMPLE}.yaml`);
    const resident = page.getByRole('heading', { name: 'In this enclosure' });
    const undo = page.getByRole('button', { name: 'Undo' });
    await resident.waitFor();
    await page.getByRole('searchbox', { name: 'Name or word' }).fill('assassin');
    await page.getByRole('button', { name: 'Bring in Assassin snails', exact: false }).click();
    await page.getByRole('button', { name: 'Put into the file' }).click();
    await soon(() => readFile(file, 'utf8').catch(() => '')).toMatch(/species: anentome-helena/);
    // The page has heard of it too, and shows the copy.
    await undo.waitFor();
    await page.waitForURL(`**/my-${EXAMPLE}/**`);

    await page.reload();
    await undo.click();
    await soon(() => readFile(file, 'utf8')).not.toContain('anentome-helena');
    await page.getByText('Taken back:', { exact: false }).waitFor();
    await page.reload();
    await page.getByRole('button', { name: 'Redo' }).waitFor();

    await writeFile(file, `${await readFile(file, 'utf8')}# written by another program\n`);
    await page.reload();
    await resident.waitFor();
    expect(await undo.count()).toBe(0);
    expect(await page.getByRole('button', { name: 'Redo' }).count()).toBe(0);
    expect(await complaints()).toEqual([]);
    await close();
  });
});
