import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chiSquaredQuantile, logNormalCumulative, millsRatio, studentQuantile } from './distributions.ts';
import { exp } from './elementary.ts';
import { incompleteBeta } from './incomplete-beta.ts';
import { logUpperIncompleteGamma, lowerIncompleteGamma } from './incomplete-gamma.ts';
import { logGamma } from './log-gamma.ts';

describe('distributions', () => {
  // Values at these points are those of the tables named, Abramowitz & Stegun 1964.
  it.each([
    [0, 0.5],
    [1, 0.841344746068543],
    [-1.96, 0.024997895148220435],
    [-3, 0.0013498980316301],
    [-5, 2.866515718791939e-7],
  ])('normal below %d is %d (table 26.1)', (x, part) => {
    expect(exp(logNormalCumulative(x)) / part).toBeCloseTo(1, 12);
  });
  // Table 26.2: -log10 of the tail at 50 is 544.96634.
  it('normal far out in the tail', () => {
    expect(-logNormalCumulative(-50) / Math.LN10).toBeCloseTo(544.96634, 5);
  });
  it('the ratio of Mills joins where it changes its way, and falls as 1/z', () => {
    expect(millsRatio(0)).toBeCloseTo(Math.sqrt(Math.PI / 2), 14);
    expect(millsRatio(2 - 1e-9) / millsRatio(2)).toBeCloseTo(1, 8);
    expect(millsRatio(1e8) * 1e8).toBeCloseTo(1, 12);
    expect(millsRatio(1e200) * 1e200).toBeCloseTo(1, 12);
    expect(logNormalCumulative(Number.NEGATIVE_INFINITY)).toBe(Number.NEGATIVE_INFINITY);
    expect(exp(logNormalCumulative(1e200))).toBe(1);
  });
  // Table 26.8
  it.each([
    [0.95, 1, 3.84146],
    [0.025, 10, 3.24697],
    [0.975, 10, 20.4832],
    [0.99, 30, 50.8922],
  ])('chi-squared at %d with %d degrees of freedom is %d', (p, freedom, value) => {
    expect(Math.abs(chiSquaredQuantile(p, freedom) / value - 1)).toBeLessThan(3e-6);
  });
  // Table 26.10
  it.each([
    [0.975, 1, 12.706],
    [0.975, 4, 2.776],
    [0.975, 37, 2.0262],
    [0.995, 10, 3.169],
    [0.05, 3, -2.353],
  ])('Student at %d with %d degrees of freedom is %d', (p, freedom, value) => {
    expect(Math.abs(studentQuantile(p, freedom) - value)).toBeLessThan(6e-4);
  });
  it('gamma of whole and half numbers', () => {
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.sqrt(Math.PI)), 14);
    expect(logGamma(5)).toBeCloseTo(Math.log(24), 14);
    expect(logGamma(171)).toBeCloseTo(706.5730622457874, 9);
  });
  it('the parts below and above make one', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 80, noNaN: true }),
        fc.double({ min: 0, max: 200, noNaN: true }),
        (a, x) => {
          const sum = lowerIncompleteGamma(a, x) + exp(logUpperIncompleteGamma(a, x));
          expect(sum).toBeCloseTo(1, 12);
        },
      ),
    );
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 1024 }).map((n) => n / 1024),
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        (x, a, b) => {
          expect(incompleteBeta(x, a, b) + incompleteBeta(1 - x, b, a)).toBeCloseTo(1, 10);
        },
      ),
    );
  });
  it('refuses what is outside', () => {
    expect(() => logGamma(0)).toThrow(RangeError);
    expect(() => lowerIncompleteGamma(1, -1)).toThrow(RangeError);
    expect(() => incompleteBeta(2, 1, 1)).toThrow(RangeError);
    expect(() => studentQuantile(1, 3)).toThrow(RangeError);
    expect(() => chiSquaredQuantile(0.5, 0)).toThrow(RangeError);
    expect(() => logNormalCumulative(Number.NaN)).toThrow(RangeError);
  });
});
