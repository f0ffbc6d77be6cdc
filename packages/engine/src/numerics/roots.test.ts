import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findRoot } from './roots.ts';

describe('findRoot', () => {
  it.each([
    // Dottie number and omega constant (OEIS A003957, A030178); cube root of 2; a root at a flat triple zero.
    ['cos x = x', (x: number) => Math.cos(x) - x, 0, 1, 0.7390851332151607],
    ['x e^x = 1', (x: number) => x * Math.exp(x) - 1, 0, 1, 0.5671432904097838],
    ['x^3 = 2', (x: number) => x ** 3 - 2, 0, 10, 1.2599210498948732],
    ['triple zero', (x: number) => (x - 1 / 3) ** 3, -1, 1, 1 / 3],
    ['step', (x: number) => (x < 0.7 ? -1 : 1), 0, 1, 0.7],
    ['falling', (x: number) => 5 - x, -100, 1e6, 5],
  ])('%s', (_name, f, low, high, root) => {
    expect(Math.abs(findRoot(f, { low, high, tolerance: 1e-12 }) - root)).toBeLessThanOrEqual(1.01e-12);
  });

  it('takes no more steps than bisection and two', () => {
    let calls = 0;
    const hard = (x: number) => {
      calls += 1;
      return x < 1e-9 ? -1 : 1e12 * x;
    };
    findRoot(hard, { low: -1, high: 1, tolerance: 1e-12 });
    expect(calls).toBeLessThanOrEqual(Math.ceil(Math.log2(1e12)) + 2 + 2);
  });

  it('finds the root of any rising line', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e3, max: 1e3, noNaN: true }),
        fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
        (root, slope) => {
          const found = findRoot((x) => slope * (x - root), { low: -1001, high: 1002, tolerance: 1e-9 });
          expect(Math.abs(found - root)).toBeLessThanOrEqual(1e-9);
        },
      ),
    );
  });

  it('ends where doubles are exhausted', () => {
    expect(findRoot((x) => x - 0.1, { low: 0, high: 1, tolerance: 1e-300 })).toBeCloseTo(0.1, 15);
  });

  it('refuses what holds no root', () => {
    expect(() => findRoot((x) => x * x + 1, { low: -1, high: 1, tolerance: 1e-9 })).toThrow(RangeError);
    expect(() => findRoot((x) => x, { low: 1, high: -1, tolerance: 1e-9 })).toThrow(RangeError);
    expect(() => findRoot((x) => Math.sqrt(x), { low: -1, high: 1, tolerance: 1e-9 })).toThrow(RangeError);
  });
});
