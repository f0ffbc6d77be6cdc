import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { accessibilityProblems } from './accessibility.ts';
import { leaveOut } from './chromium.ts';
import {
  JOURNEY,
  LAPTOP,
  openPage,
  overflow,
  PHONE,
  soon,
  startUnderTest,
  type UnderTest,
} from './under-test.ts';

describe.skipIf(leaveOut)('the library in a browser', JOURNEY, () => {
  let underTest: UnderTest;
  beforeAll(async () => {
    underTest = await startUnderTest();
  }, JOURNEY.timeout);
  afterAll(() => underTest?.end());

  test('from the list by word and need to a page with its ranges and sources', async () => {
    const { page, complaints, hosts, close } = await openPage(underTest, '/#/library', LAPTOP);
    await page.getByRole('link', { name: 'Vampire crabs' }).waitFor();
    expect(await accessibilityProblems(page)).toEqual([]);
    await page.getByLabel('Need or caution').selectOption('no young in fresh water');
    await page.getByLabel('Name or word').fill('shrimp algae');
    await page.getByText('1 entry', { exact: true }).waitFor();
    await page.getByRole('link', { name: 'Amano shrimp' }).click();
    await page.getByRole('heading', { level: 1, name: 'Amano shrimp' }).waitFor();
    await page.getByText('in fresh water its number never grows', { exact: false }).waitFor();
    await page.getByRole('heading', { name: 'What it stands' }).waitFor();
    await page.getByText('Hamano and Hayashi 1992', { exact: false }).first().waitFor();
    expect(await accessibilityProblems(page)).toEqual([]);
    expect(await complaints()).toEqual([]);
    expect(hosts.size).toBe(1);
    await close();
  });

  test('on a phone a page of a plant stays within the screen, and what is not there is said', async () => {
    const { page, close } = await openPage(underTest, '/#/library/plants/pistia-stratiotes', PHONE);
    await page.getByRole('heading', { level: 1, name: 'Water lettuce' }).waitFor();
    await page.getByText('On the Union list', { exact: false }).first().waitFor();
    await soon(overflow(page)).toBeLessThanOrEqual(0);
    expect(await accessibilityProblems(page)).toEqual([]);
    await page.goto(page.url().replace('pistia-stratiotes', 'pistia'));
    await page.getByText("The library holds no plants named 'pistia'", { exact: false }).waitFor();
    await close();
  });
});
