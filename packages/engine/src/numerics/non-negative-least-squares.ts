/** Least |A x - b| over x >= 0; the matrix row by row. */
export interface NonNegativeProblem {
  /** length rows x columns, row by row. */
  readonly matrix: Float64Array;
  /** length rows */
  readonly right: Float64Array;
  readonly columns: number;
}

export interface NonNegativeSolution {
  /** length columns, >= 0 */
  readonly x: Float64Array;
  /** |A x - b| [unit of b] */
  readonly residual: number;
}

/** Columns as arrays of unit length, and how long they were; a column of zeros stays zero. */
function unitColumns({ matrix, right, columns }: NonNegativeProblem) {
  const rows = right.length;
  const lengths = new Float64Array(columns);
  const units = Array.from({ length: columns }, (_, j) => {
    const column = Float64Array.from({ length: rows }, (_, i) => matrix[i * columns + j]!);
    const length = norm(column);
    lengths[j] = length;
    return length > 0 ? column.map((value) => value / length) : column;
  });
  return { units, lengths };
}

function norm(values: Float64Array): number {
  let sum = 0;
  for (const value of values) sum += value * value;
  return Math.sqrt(sum);
}

function dot(a: Float64Array, b: Float64Array, from = 0): number {
  let sum = 0;
  for (let i = from; i < a.length; i += 1) sum += a[i]! * b[i]!;
  return sum;
}

/**
 * Least squares over some columns by Householder reflections, or undefined where they depend on each other.
 * @source derived: Golub & Van Loan's Householder QR, memory
 */
function leastSquares(columns: readonly Float64Array[], right: Float64Array): Float64Array | undefined {
  const work = columns.map((column) => column.slice());
  const b = right.slice();
  const n = work.length;
  const diagonal = new Float64Array(n);
  for (let k = 0; k < n; k += 1) {
    const column = work[k]!;
    const length = Math.sqrt(dot(column, column, k));
    if (!(length > DEPENDENT)) return undefined;
    diagonal[k] = column[k]! > 0 ? -length : length;
    column[k] = column[k]! - diagonal[k]!;
    const half = dot(column, column, k) / 2;
    for (const other of [...work.slice(k + 1), b]) {
      const factor = dot(column, other, k) / half;
      for (let i = k; i < other.length; i += 1) other[i] = other[i]! - factor * column[i]!;
    }
  }
  const x = new Float64Array(n);
  for (let k = n - 1; k >= 0; k -= 1) {
    let sum = b[k]!;
    for (let j = k + 1; j < n; j += 1) sum -= work[j]![k]! * x[j]!;
    x[k] = sum / diagonal[k]!;
  }
  return x;
}

/** Part of a unit column that must stand out of the others. */
const DEPENDENT = 1e-11;
/** Gradient, over |b|, below which a column would not help. */
const STATIONARY = 1e-13;

/** The column whose increase lowers the residual most, or -1. */
function steepest(
  units: readonly Float64Array[],
  rest: Float64Array,
  open: (j: number) => boolean,
  least: number,
) {
  let best = -1;
  let slope = least;
  units.forEach((unit, j) => {
    if (!open(j)) return;
    const gain = dot(unit, rest);
    if (gain > slope) {
      slope = gain;
      best = j;
    }
  });
  return best;
}

/**
 * Minimises |A x - b| over x >= 0 by Lawson and Hanson's active set; among several minima a basic one, with no more
 * positive entries than independent columns.
 * @throws RangeError when a number is not finite or the sizes do not fit.
 * @source lawson-hanson-1974, algorithm 23.10
 */
export function nonNegativeLeastSquares(problem: NonNegativeProblem): NonNegativeSolution {
  const { right, columns, matrix } = problem;
  if (matrix.length !== right.length * columns)
    throw new RangeError('the matrix does not fit its right side');
  if (![...matrix, ...right].every(Number.isFinite)) throw new RangeError('a number is not finite');
  const { units, lengths } = unitColumns(problem);
  const y = new Float64Array(columns);
  const passive: number[] = [];
  const barred = new Set<number>();
  const rest = right.slice();
  const least = STATIONARY * Math.max(norm(right), Number.MIN_VALUE);
  for (let turn = 0; turn < 30 * (columns + 1); turn += 1) {
    const next = steepest(units, rest, (j) => !passive.includes(j) && !barred.has(j), least);
    if (next < 0) break;
    passive.push(next);
    if (settle(passive, y, units, right)) barred.clear();
    else barred.add(next);
    rest.set(right);
    for (const j of passive)
      for (let i = 0; i < rest.length; i += 1) rest[i] = rest[i]! - units[j]![i]! * y[j]!;
  }
  const x = y.map((value, j) => (lengths[j]! > 0 ? value / lengths[j]! : 0));
  return { x, residual: norm(rest) };
}

/**
 * Solves on the passive columns and lets go of those that would turn negative, until none does. Returns false, with
 * the newest column dropped again, where it depends on the others or would itself turn negative at once.
 */
function settle(
  passive: number[],
  y: Float64Array,
  units: readonly Float64Array[],
  right: Float64Array,
): boolean {
  const newest = passive[passive.length - 1]!;
  for (let turn = 0; passive.length > 0; turn += 1) {
    const trial = leastSquares(
      passive.map((j) => units[j]!),
      right,
    );
    if (!trial || (turn === 0 && !(trial[passive.length - 1]! > 0))) {
      passive.splice(passive.indexOf(newest), 1);
      return false;
    }
    let step = 1;
    passive.forEach((j, k) => {
      if (trial[k]! <= 0) step = Math.min(step, y[j]! / (y[j]! - trial[k]!));
    });
    passive.forEach((j, k) => {
      y[j] = y[j]! + step * (trial[k]! - y[j]!);
    });
    if (step === 1 && trial.every((value) => value > 0)) return true;
    for (const j of passive.filter((each) => !(y[each]! > 1e-15))) {
      y[j] = 0;
      passive.splice(passive.indexOf(j), 1);
    }
  }
  return true;
}
