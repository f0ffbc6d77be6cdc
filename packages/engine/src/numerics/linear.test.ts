import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { factorise, solveFactorised } from './linear.ts';

function product(matrix: Float64Array, x: Float64Array): Float64Array {
  const n = x.length;
  return Float64Array.from(x, (_, row) => x.reduce((sum, value, k) => sum + matrix[row * n + k]! * value, 0));
}

function solveLinear(matrix: Float64Array, right: Float64Array, pivots: Int32Array): void {
  factorise(matrix, pivots, pivots.length);
  solveFactorised(matrix, pivots, right, pivots.length);
}

const entry = fc.double({ min: -1, max: 1, noNaN: true });

describe('a factorised matrix', () => {
  it('solves a worked system', () => {
    // 2x + y - z = 8, -3x - y + 2z = -11, -2x + y + 2z = -3 has the solution 2, 3, -1 (check by insertion).
    const right = Float64Array.of(8, -11, -3);
    solveLinear(Float64Array.of(2, 1, -1, -3, -1, 2, -2, 1, 2), right, new Int32Array(3));
    [2, 3, -1].forEach((x, i) => {
      expect(right[i]).toBeCloseTo(x, 13);
    });
  });

  it('exchanges rows where the diagonal is zero', () => {
    const right = Float64Array.of(5, 7, 9);
    solveLinear(Float64Array.of(0, 0, 1, 1, 0, 0, 0, 1, 0), right, new Int32Array(3));
    expect([...right]).toEqual([7, 9, 5]);
  });

  it('reproduces the right-hand side of any well-conditioned system', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 12 }),
        fc.array(entry, { minLength: 144, maxLength: 144 }),
        fc.array(entry, { minLength: 12, maxLength: 12 }),
        (n, entries, values) => {
          const matrix = Float64Array.from(entries.slice(0, n * n));
          // One entry of each row and column outweighs its row: nonsingular by the theorem of Levy and Desplanques.
          for (let i = 0; i < n; i += 1) matrix[i * n + ((i + 3) % n)]! += 13;
          const right = Float64Array.from(values.slice(0, n));
          const x = right.slice();
          const work = matrix.slice();
          expect(factorise(work.slice(), new Int32Array(n), n)).toBeGreaterThan(1e-3);
          solveLinear(work, x, new Int32Array(n));
          const back = product(matrix, x);
          const size = 1 + Math.max(...x.map(Math.abs));
          for (let i = 0; i < n; i += 1) expect(Math.abs(back[i]! - right[i]!)).toBeLessThan(1e-11 * size);
        },
      ),
    );
  });

  it('refuses a singular matrix', () => {
    expect(() => solveLinear(Float64Array.of(1, 2, 2, 4), Float64Array.of(1, 1), new Int32Array(2))).toThrow(
      RangeError,
    );
    expect(() => solveLinear(Float64Array.of(Number.NaN), Float64Array.of(1), new Int32Array(1))).toThrow(
      RangeError,
    );
  });
});
