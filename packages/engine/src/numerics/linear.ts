/**
 * Factors a square matrix in place, P A = L U with partial pivoting, and returns the ratio of the smallest to the
 * largest pivot [1], > 0: below about 1e-14 the solution has no correct digit left.
 * @param matrix length >= n n, row by row; holds L (unit diagonal, below) and U (above) afterwards
 * @param pivots length >= n; receives the row exchanged in each step
 * @param n order, >= 1
 * @throws RangeError when the matrix is singular or holds NaN
 * @source derived: Gaussian elimination
 */
export function factorise(matrix: Float64Array, pivots: Int32Array, n: number): number {
  let smallest = Number.POSITIVE_INFINITY;
  let largest = 0;
  for (let column = 0; column < n; column += 1) {
    const pivotRow = largestBelow(matrix, column, n);
    pivots[column] = pivotRow;
    if (pivotRow !== column) swapRows(matrix, column, pivotRow, n);
    const pivot = matrix[column * n + column]!;
    const size = Math.abs(pivot);
    if (!(size > 0)) throw new RangeError(`singular matrix, column ${column}`);
    smallest = Math.min(smallest, size);
    largest = Math.max(largest, size);
    for (let row = column + 1; row < n; row += 1) {
      const factor = matrix[row * n + column]! / pivot;
      if (factor === 0) continue;
      matrix[row * n + column] = factor;
      for (let k = column + 1; k < n; k += 1) {
        matrix[row * n + k] = matrix[row * n + k]! - factor * matrix[column * n + k]!;
      }
    }
  }
  return smallest / largest;
}

function largestBelow(matrix: Float64Array, column: number, n: number): number {
  let row = column;
  let size = Math.abs(matrix[column * n + column]!);
  for (let i = column + 1; i < n; i += 1) {
    const candidate = Math.abs(matrix[i * n + column]!);
    if (candidate > size) {
      size = candidate;
      row = i;
    }
  }
  return row;
}

function swapRows(matrix: Float64Array, first: number, second: number, n: number): void {
  for (let k = 0; k < n; k += 1) {
    const held = matrix[first * n + k]!;
    matrix[first * n + k] = matrix[second * n + k]!;
    matrix[second * n + k] = held;
  }
}

/**
 * Solves A x = b in place by a factorisation; `right` holds x afterwards [unit of b / unit of A].
 * @param matrix, pivots as left by `factorise`
 * @param right length >= n, right-hand side
 * @param n order, >= 1
 * @source derived: forward and back substitution
 */
export function solveFactorised(
  matrix: Float64Array,
  pivots: Int32Array,
  right: Float64Array,
  n: number,
): void {
  for (let row = 0; row < n; row += 1) {
    const exchanged = pivots[row]!;
    const held = right[exchanged]!;
    right[exchanged] = right[row]!;
    right[row] = held;
  }
  for (let row = 1; row < n; row += 1) {
    let sum = right[row]!;
    for (let k = 0; k < row; k += 1) sum -= matrix[row * n + k]! * right[k]!;
    right[row] = sum;
  }
  for (let row = n - 1; row >= 0; row -= 1) {
    let sum = right[row]!;
    for (let k = row + 1; k < n; k += 1) sum -= matrix[row * n + k]! * right[k]!;
    right[row] = sum / matrix[row * n + row]!;
  }
}
