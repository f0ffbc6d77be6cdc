import { loadBundledEnclosure } from '@shoreglass/contract';
import {
  type Budget,
  type BudgetId,
  expectedDocument,
  expectedRun,
  prepareOutlook,
} from '@shoreglass/engine';
import { beforeAll, describe, expect, test } from 'vitest';

const DAYS = 73;

const total = (amounts: readonly number[]): number => amounts.reduce((sum, amount) => sum + amount, 0);

/** What the terms of a budget moved in a period, without regard to direction. */
function gross({ terms }: Budget, period: number): number {
  return terms.reduce((sum, { amounts }) => sum + Math.abs(amounts[period]!), 0);
}

describe('budgets of the demo over ten weeks', () => {
  let budgets: readonly Budget[];
  let lastDay: (series: string) => number;
  const budget = (id: BudgetId): Budget => {
    const found = budgets.find((each) => each.id === id);
    if (!found) throw new Error(`the outlook carries the budget of ${id}`);
    return found;
  };
  beforeAll(() => {
    const { plan } = loadBundledEnclosure('beck-bank');
    const prepared = prepareOutlook(plan, { days: DAYS, members: 2, seed: 1 });
    const document = expectedDocument(prepared, expectedRun(prepared));
    budgets = document.budgets;
    lastDay = (series) => document.series[series]?.expected.at(-1) ?? Number.NaN;
  });

  test('in every period the terms add up to the change of the stock', () => {
    for (const each of budgets) {
      for (const period of each.periods.keys()) {
        const change = each.stock[period + 1]! - each.stock[period]!;
        const moved = each.terms.reduce((sum, { amounts }) => sum + amounts[period]!, 0);
        const scale = gross(each, period) + Math.abs(each.stock[period]!);
        expect(Math.abs(moved - change) / scale, `${each.id} in period ${period}`).toBeLessThan(1e-9);
      }
    }
  });

  test('periods cover the run, the last one short', () => {
    for (const { stock, periods } of budgets) {
      expect(periods).toHaveLength(8);
      expect(periods[0]).toEqual({ from: 0, to: 10 });
      expect(periods.at(-1)).toEqual({ from: 70, to: 73 });
      expect(stock).toHaveLength(9);
    }
  });

  test('the stock at the end is what the keeper reads', () => {
    const litres = lastDay('waterVolume');
    const stock = (id: BudgetId): number => (budget(id).stock.at(-1) ?? Number.NaN) / litres;
    expect(stock('ammonia')).toBeCloseTo(lastDay('totalAmmonia'), 9);
    expect(stock('phosphorus')).toBeCloseTo(lastDay('phosphate'), 9);
    // 1 °dGH is 0.17833 mmol/L of calcium and magnesium (DIN 38409-6).
    expect(stock('hardness') / 0.17833).toBeCloseTo(lastDay('GH'), 2);
  });

  test('acid comes from oxidising ammonia: two equivalents for each mole', () => {
    const moved = (id: BudgetId): number =>
      total(budget(id).terms.find(({ term }) => term === 'ammonia oxidation')?.amounts ?? []);
    // Oxidation gives two H+ per N; ammonium built into the cells gives one, so the mean is a little less.
    const ratio = moved('alkalinity') / (moved('ammonia') / 14.007);
    expect(ratio).toBeGreaterThan(1.9);
    expect(ratio).toBeLessThanOrEqual(2.001);
  });
});
