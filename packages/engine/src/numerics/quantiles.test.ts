import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantileOfSorted, quantiles } from './quantiles.ts';

describe('quantiles', () => {
  it('interpolate between order statistics', () => {
    // Definition 7 by hand: position p (n - 1) = 0.25 x 4 = 1, 0.9 x 4 = 3.6.
    expect(quantiles(Float64Array.of(5, 1, 3, 2, 10), [0, 0.25, 0.5, 0.9, 1])).toEqual([1, 2, 3, 8, 10]);
    expect(quantiles(Float64Array.of(4), [0.3])).toEqual([4]);
  });

  it('rise with the probability and stay within the values', () => {
    const value = fc.double({ min: -1e6, max: 1e6, noNaN: true });
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(fc.array(value, { minLength: 1, maxLength: 40 }), share, share, (list, p, q) => {
        const [low, high] = quantiles(Float64Array.from(list), [Math.min(p, q), Math.max(p, q)]);
        const slack = 1e-9;
        expect(low! - slack <= high!).toBe(true);
        expect(low! >= Math.min(...list) - slack && high! <= Math.max(...list) + slack).toBe(true);
      }),
    );
  });

  it('refuse the senseless', () => {
    expect(() => quantileOfSorted(new Float64Array(0), 0.5)).toThrow(RangeError);
    expect(() => quantileOfSorted(Float64Array.of(1), 1.5)).toThrow(RangeError);
  });
});
