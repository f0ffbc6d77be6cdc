import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nonNegativeLeastSquares } from './non-negative-least-squares.ts';

const solve = (rows: readonly (readonly number[])[], right: readonly number[]) =>
  nonNegativeLeastSquares({
    matrix: Float64Array.from(rows.flat()),
    right: Float64Array.from(right),
    columns: rows[0]?.length ?? 0,
  });

describe('against SciPy 1.17.1, scipy.optimize.nnls on the same numbers', () => {
  it('one unknown held at zero', () => {
    const { x, residual } = solve(
      [
        [0, 0.3, -0.27],
        [-0.89, -0.45, -0.99],
        [0.06, 1.34, -0.49],
        [-0.62, 0.49, 0.36],
      ],
      [0.11, -0.93, -0.03, 0.7],
    );
    expect(x[0]).toBe(0);
    expect(x[1]).toBeCloseTo(0.3659015212339258, 12);
    expect(x[2]).toBeCloseTo(0.8434911126778414, 12);
    expect(residual).toBeCloseTo(0.3396922451074098, 12);
  });

  it('nothing helps', () => {
    const { x, residual } = solve(
      [
        [-1.34, -0.46, -1.9, -1.29, -1.84],
        [-0.24, -1.27, 0.27, 0.16, -0.19],
        [-2.52, -0.54, -0.05, 0.11, -1.53],
        [-0.48, -0.98, -0.81, 1.06, -0.81],
        [-0.03, 0.88, -0.58, -0.11, 0.11],
        [0.06, -1.23, 0.08, 1.36, -1.55],
      ],
      [0.86, 0.12, -0.64, 2, 0.76, -1.2],
    );
    expect([...x]).toEqual([0, 0, 0, 0, 0]);
    expect(residual).toBeCloseTo(2.679776110050987, 12);
  });

  it('more unknowns than equations', () => {
    const { residual } = solve(
      [
        [0.07, 0.58, -0.19, 0.68, -0.07, 0.67, 1.44, -0.68],
        [0.2, -0.46, 0.13, -1.19, -0.58, -0.2, 0.9, 1.15],
        [-1.32, -0.79, 0.65, -1.99, -0.46, -0.1, 1.26, 0.69],
        [-0.33, -0.37, -0.25, 1.52, -0.43, -0.3, 0.35, -0.12],
        [-0.2, -1.11, -0.01, -0.44, 1.17, 0.65, -0.02, 0.67],
      ],
      [-0.34, 1.05, -0.01, 0.58, -1.29],
    );
    expect(residual).toBeLessThan(1e-12);
  });
});

describe('the conditions of a minimum', () => {
  const number = fc.integer({ min: -100, max: 100 }).map((n) => n / 20);
  const problem = fc
    .tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 1, max: 9 }))
    .chain(([rows, columns]) =>
      fc.tuple(
        fc.array(fc.array(number, { minLength: columns, maxLength: columns }), {
          minLength: rows,
          maxLength: rows,
        }),
        fc.array(number, { minLength: rows, maxLength: rows }),
      ),
    );

  it('hold for any numbers: no entry below zero, no gradient above zero, none where an entry is positive', () => {
    fc.assert(
      fc.property(problem, ([rows, right]) => {
        const { x, residual } = solve(rows, right);
        const rest = right.map((b, i) => b - (rows[i] ?? []).reduce((sum, a, j) => sum + a * x[j]!, 0));
        expect(Math.abs(Math.hypot(...rest) - residual)).toBeLessThan(1e-8);
        x.forEach((value, j) => {
          const gradient = rows.reduce((sum, row, i) => sum + row[j]! * rest[i]!, 0);
          expect(value).toBeGreaterThanOrEqual(0);
          expect(gradient).toBeLessThan(1e-7);
          if (value > 1e-7) expect(Math.abs(gradient)).toBeLessThan(1e-7);
        });
      }),
      { numRuns: 500 },
    );
  });

  it('refuses what is no number and what does not fit', () => {
    expect(() => solve([[Number.NaN]], [1])).toThrow('not finite');
    expect(() => solve([[1, 2]], [1, 2])).toThrow('does not fit');
  });
});
