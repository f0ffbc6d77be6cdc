import type { Budget } from '@shoreglass/engine';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { palette } from '../palette/palette.ts';
import { walkScene } from '../scene/scene.ts';
import { sceneToSvg } from '../scene/scene-to-svg.ts';
import { INVENTED_BUDGET } from '../testdata/invented-budget.ts';
import { amountText } from './amount-text.ts';
import { budgetCourseScene } from './budget-course.ts';
import { gatheredBudget, REST, termTotal } from './gathered.ts';
import { termLooks } from './term-look.ts';

const sum = (values: readonly number[]) => values.reduce((all, value) => all + value, 0);

const budgets: fc.Arbitrary<Budget> = fc
  .record({ count: fc.integer({ min: 1, max: 40 }), terms: fc.integer({ min: 0, max: 14 }) })
  .chain(({ count, terms }) =>
    fc
      .array(
        fc.array(fc.double({ min: -1e4, max: 1e4, noNaN: true }), { minLength: count, maxLength: count }),
        {
          minLength: terms,
          maxLength: terms,
        },
      )
      .map((rows) => ({
        ...INVENTED_BUDGET,
        periods: Array.from({ length: count }, (_, index) => ({ from: index * 10, to: index * 10 + 10 })),
        terms: rows.map((amounts, index) => ({ term: `term ${index}`, amounts })),
        stock: Array.from({ length: count + 1 }, () => 1),
      })),
  );

describe('gathering', () => {
  it('keeps every sum, however long the periods and however few the names', () => {
    fc.assert(
      fc.property(
        budgets,
        fc.integer({ min: 1, max: 90 }),
        fc.integer({ min: 1, max: 9 }),
        (budget, days, most) => {
          const gathered = gatheredBudget(budget, { days, most });
          const before = sum(budget.terms.flatMap(({ amounts }) => amounts));
          const after = sum(gathered.terms.map((term) => termTotal(term)));
          expect(Math.abs(after - before)).toBeLessThanOrEqual(1e-6);
          expect(gathered.periods[0]?.from).toBe(0);
          expect(gathered.periods.at(-1)?.to).toBe(budget.periods.at(-1)?.to);
          for (const [index, { from }] of gathered.periods.entries())
            if (index > 0) expect(from).toBe(gathered.periods[index - 1]?.to);
        },
      ),
    );
  });

  it('makes thirty days of three blocks, and names what is small together', () => {
    const { periods, terms } = gatheredBudget(INVENTED_BUDGET, { days: 30, most: 6 });
    expect(periods.map(({ from, to }) => to - from)).toEqual(Array.from({ length: 10 }, () => 30));
    expect(terms.map(({ term }) => term).at(-1)).toBe(REST);
    expect(terms).toHaveLength(7);
  });

  it('a short rest joins the period before it', () => {
    const periods = [...INVENTED_BUDGET.periods.slice(0, 6), { from: 60, to: 65 }];
    const terms = [{ term: 'wood', amounts: [1, 1, 1, 1, 1, 1, 0.5] }];
    const gathered = gatheredBudget({ ...INVENTED_BUDGET, periods, terms }, { days: 30, most: 6 });
    expect(gathered.periods).toEqual([
      { from: 0, to: 30 },
      { from: 30, to: 65 },
    ]);
  });
});

describe('the figure', () => {
  it('is drawable for any budget and width', () => {
    fc.assert(
      fc.property(budgets, fc.integer({ min: 260, max: 1400 }), (budget, width) => {
        const scene = budgetCourseScene({
          budget: gatheredBudget(budget, { days: 30, most: 7 }),
          name: 'alkalinity',
          startDate: '2026-03-01',
          width,
          height: 320,
          palette: palette('night'),
          chosen: 0,
        });
        expect(sceneToSvg(scene)).not.toMatch(/NaN|Infinity|undefined/);
      }),
      { numRuns: 60 },
    );
  });

  it('says who adds and who removes most', () => {
    const scene = budgetCourseScene({
      budget: gatheredBudget(INVENTED_BUDGET, { days: 30, most: 7 }),
      name: 'alkalinity',
      startDate: '2026-03-01',
      width: 900,
      height: 320,
      palette: palette('day'),
    });
    const label = String(scene.attributes['aria-label']).replaceAll('\u00a0', ' ');
    expect(label).toMatch(/carbonate dissolving adds most, \+\d/);
    expect(label).toMatch(/ammonia oxidation removes most, −\d+ meq/);
  });

  it('tells no two terms apart by colour alone', () => {
    const looks = termLooks(gatheredBudget(INVENTED_BUDGET, { days: 30, most: 7 }).terms);
    expect(new Set(looks.map(({ pattern }) => pattern)).size).toBe(looks.length);
    expect(new Set(looks.map(({ letter }) => letter)).size).toBe(looks.length);
  });

  it('puts what adds above the line and what removes below it', () => {
    const budget = {
      ...INVENTED_BUDGET,
      periods: [{ from: 0, to: 10 }],
      terms: [
        { term: 'wood', amounts: [-4] },
        { term: 'lime', amounts: [2] },
      ],
    };
    const scene = budgetCourseScene({
      budget,
      name: 'alkalinity',
      startDate: '2026-03-01',
      width: 400,
      height: 300,
      palette: palette('day'),
    });
    const bars = [...walkScene(scene)].filter(
      ({ tag, attributes }) => tag === 'rect' && String(attributes.fill).startsWith('url('),
    );
    const [wood, lime] = bars.map(({ attributes }) => attributes as { y: number; height: number });
    expect((lime?.y ?? 0) + (lime?.height ?? 0)).toBeCloseTo(wood?.y ?? 0, 1);
    expect(wood?.height).toBeCloseTo(2 * (lime?.height ?? 0), 1);
  });
});

it('amounts carry their sign and three figures', () => {
  const plain = (text: string) => text.replaceAll('\u00a0', ' ');
  expect(plain(amountText(-123.4, 'meq'))).toBe('−123 meq');
  expect(plain(amountText(4.123, 'meq'))).toBe('+4.12 meq');
  expect(plain(amountText(0, 'meq'))).toBe('0 meq');
  expect(plain(amountText(1e-9, 'meq'))).toBe('0 meq');
});
