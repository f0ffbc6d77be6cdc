import type { Budget } from '@shoreglass/engine';
import { expect, it } from 'vitest';
import { textBudget } from './text-budget.ts';

const budget: Budget = {
  id: 'alkalinity',
  name: 'alkalinity',
  unit: 'meq',
  about: 'Invented.',
  periods: [0, 10, 20, 30].map((from) => ({ from, to: from + 10 })),
  terms: [
    { term: 'ammonia oxidation', amounts: [-10, -10, -10, -10] },
    { term: 'top-off', amounts: [5, 5, 5, 5] },
    { term: 'a process with a long name', amounts: [0.1, 0, 0, 0] },
  ],
  stock: [100, 95, 90, 85, 80],
};

it('draws what takes to the left and what gives to the right, in proportion, with sums by period', () => {
  const lines = textBudget({ budget, width: 78, periods: 2, most: 5, ascii: true });
  expect(lines[0]).toMatch(/takes gives +in all +1-20 +21-40$/);
  expect(lines[1]).toMatch(/^ammonia oxidation +-+\| +-40\.0 +-20\.0 +-20\.0$/);
  expect(lines[2]).toMatch(/^top-off +\|\++ +\+20\.0 +\+10\.0 +\+10\.0$/);
  const marks = (line: string | undefined, mark: RegExp) =>
    (line?.split('|').join('').match(mark) ?? [''])[0].length;
  expect(marks(lines[1], /-{3,}/)).toBeGreaterThanOrEqual(2 * marks(lines[2], /\+{3,}/) - 1);
  for (const line of lines) expect(line.length).toBeLessThanOrEqual(78);
});

it('uses blocks where the terminal has them, and cuts names that are too long', () => {
  const lines = textBudget({ budget, width: 60, periods: 4, most: 5 });
  expect(lines[1]).toMatch(/█│/);
  expect(lines.some((line) => /^a process with a .*\. /.test(line))).toBe(true);
  for (const line of lines) expect(line.length).toBeLessThanOrEqual(60);
});
