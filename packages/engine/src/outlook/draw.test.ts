import { describe, expect, test } from 'vitest';
import { quantiles } from '../numerics/quantiles.ts';
import { createRandom } from '../numerics/random.ts';
import type { Prior, PriorTable } from '../plan/prior.ts';
import { drawParameters, drawPrior, medianParameters } from './draw.ts';

const prior = (given: Partial<Prior>): Prior => ({
  kind: 'lognormal',
  median: 2,
  spread: 1.5,
  min: 0.01,
  max: 400,
  ...given,
});

function sample(given: Partial<Prior>): Float64Array {
  const random = createRandom(7, 'draw test');
  return Float64Array.from({ length: 20000 }, () => drawPrior(prior(given), random));
}

describe('draws from a prior', () => {
  test('lognormal: median, and the geometric sd at 84.13 %', () => {
    const [median = 0, high = 0] = quantiles(sample({}), [0.5, 0.8413447]);
    // 1 % is about three standard errors of a quantile of 20000 draws here.
    expect(Math.abs(median / 2 - 1)).toBeLessThan(0.015);
    expect(Math.abs(high / 3 - 1)).toBeLessThan(0.02);
  });
  test('normal: median and sd', () => {
    const [median = 0, high = 0] = quantiles(sample({ kind: 'normal', spread: 0.3 }), [0.5, 0.8413447]);
    expect(Math.abs(median - 2)).toBeLessThan(0.01);
    expect(Math.abs(high - 2.3)).toBeLessThan(0.015);
  });
  test('uniform and truncated draws stay inside their range', () => {
    for (const kind of ['uniform', 'normal', 'lognormal'] as const) {
      const drawn = sample({ kind, min: 1.8, max: 2.5, spread: kind === 'normal' ? 1 : 1.5 });
      expect(Math.min(...drawn)).toBeGreaterThanOrEqual(1.8);
      expect(Math.max(...drawn)).toBeLessThanOrEqual(2.5);
    }
  });
  test('a prior that contradicts its range is refused instead of drawn for ever', () => {
    const random = createRandom(1, 'x');
    expect(() => drawPrior(prior({ kind: 'normal', spread: 0.01, min: 50, max: 60 }), random)).toThrow(
      RangeError,
    );
  });
});

describe('a table of parameters', () => {
  const table: PriorTable = { light: { a: prior({}), b: prior({}) }, water: { c: prior({}) } };
  test('a further parameter leaves the draws of the others as they were', () => {
    const more: PriorTable = { light: { z: prior({}), a: prior({}), b: prior({}) }, water: { c: prior({}) } };
    const first = drawParameters(table, createRandom(3, 'member 5'));
    const second = drawParameters(more, createRandom(3, 'member 5'));
    expect(second.light?.a).toBe(first.light?.a);
    expect(second.water?.c).toBe(first.water?.c);
  });
  test('other members draw other values; medians are medians', () => {
    const first = drawParameters(table, createRandom(3, 'member 5'));
    const other = drawParameters(table, createRandom(3, 'member 6'));
    expect(other.light?.a).not.toBe(first.light?.a);
    expect(medianParameters(table).light).toEqual({ a: 2, b: 2 });
  });
});
