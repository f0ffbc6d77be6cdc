import { expect, it } from 'vitest';
import { GRAZER, populationOf } from '../life/life-test-kit.ts';
import { lifeTable } from './life-table.ts';
import { lifeTableSpread } from './life-table-spread.ts';

const { traits } = populationOf('grazer', [], GRAZER, { mating: 'two sexes', brood: 'carried' });

it('a species that is known exactly has no spread, and one whose growth is not has one around the median', () => {
  const { doubling, firstYoung } = lifeTable({ id: 'grazer', traits, values: GRAZER }, 20);
  const exact = lifeTableSpread({ id: 'grazer', traits }, 20, { draws: 3 });
  expect(exact.doubling).toEqual({ q10: doubling, q50: doubling, q90: doubling });
  expect(exact).toMatchObject({ draws: 3, breeding: 1, growing: 1 });
  const growthRate = { kind: 'lognormal', median: 0.02, spread: 1.3, min: 0.01, max: 0.04 } as const;
  const unsure = { ...traits, priors: { ...traits.priors, growthRate } };
  const spread = lifeTableSpread({ id: 'grazer', traits: unsure }, 20, { draws: 30 });
  expect(spread.firstYoung!.q10).toBeLessThan(firstYoung!);
  expect(spread.firstYoung!.q90).toBeGreaterThan(firstYoung!);
  // A growth rate 1.3 times slower or faster moves the time to puberty by as much, at 1.28 spreads a factor 1.4.
  expect(spread.firstYoung!.q90 / spread.firstYoung!.q10).toBeLessThan(2.2);
  expect(lifeTableSpread({ id: 'grazer', traits: unsure }, 20, { draws: 30 })).toEqual(spread);
});

it('tells where nobody breeds, and asks for two draws', () => {
  const cold = lifeTableSpread({ id: 'grazer', traits }, 5, { draws: 2 });
  expect(cold).toMatchObject({ breeding: 0, growing: 0, clutch: { q50: 0 } });
  expect(cold.firstYoung).toBeUndefined();
  expect(() => lifeTableSpread({ id: 'grazer', traits }, 20, { draws: 1 })).toThrow('two draws at least');
});
