import { exp, log } from '../numerics/elementary.ts';

/** Rows of a square matrix: element [i][j] is what one of stage j adds to stage i in a step. */
export type Matrix = readonly (readonly number[])[];

/** What a stage matrix says of a population in the long run. */
export interface Projection {
  /** Growth in a step [1], >= 0. */
  readonly growth: number;
  /** Parts of a settled population by stage, summing to 1. */
  readonly stable: readonly number[];
  /** What one of each stage is worth to later numbers, the first stage 1. */
  readonly worth: readonly number[];
  /** Relative change of growth by relative change of each element; they sum to 1. */
  readonly elasticity: Matrix;
  /** How fast waves die down: growth over the size of the next eigenvalue; undefined when there are none. */
  readonly damping: number | undefined;
}

/** Squarings after which a power of a matrix holds nothing but its largest eigenvalue. */
const SQUARINGS = 48;

function checkSquare(matrix: Matrix): void {
  if (matrix.length === 0) throw new RangeError('a stage matrix needs at least one stage');
  for (const [i, row] of matrix.entries()) {
    if (row.length !== matrix.length)
      throw new RangeError(`row ${i + 1} of a stage matrix has ${row.length} elements, not ${matrix.length}`);
    if (!row.every((element) => element >= 0 && element < Number.POSITIVE_INFINITY))
      throw new RangeError(`row ${i + 1} of a stage matrix holds a number below 0 or none`);
  }
}

const largest = (matrix: Matrix): number => Math.max(...matrix.flat().map(Math.abs));

function product(a: Matrix, b: Matrix): number[][] {
  return a.map((row) => b.map((_, j) => row.reduce((sum, element, k) => sum + element * b[k]![j]!, 0)));
}

/**
 * The size of a matrix's largest eigenvalue [1], and a high power of it scaled to a largest element of 1; `derived`
 * from Gelfand's formula by repeated squaring, exact to rounding also where eigenvalues are complex.
 */
function powerOf(matrix: Matrix): { radius: number; power: Matrix } {
  const scale = largest(matrix);
  if (scale === 0) return { radius: 0, power: matrix };
  let power: Matrix = matrix.map((row) => row.map((element) => element / scale));
  let logarithm = log(scale);
  let weight = 1;
  for (let i = 0; i < SQUARINGS; i += 1) {
    const next = product(power, power);
    const size = largest(next);
    if (size === 0) return { radius: 0, power };
    weight /= 2;
    logarithm += weight * log(size);
    power = next.map((row) => row.map((element) => element / size));
  }
  return { radius: exp(logarithm), power };
}

/** Numbers by stage one step later [animals]; `numbers` in the order of the matrix. @source caswell-2001 ch. 2 */
export function stepOf(matrix: Matrix, numbers: readonly number[]): number[] {
  return matrix.map((row) => row.reduce((sum, element, j) => sum + element * numbers[j]!, 0));
}

const transposed = (matrix: Matrix): Matrix => matrix.map((_, i) => matrix.map((row) => row[i]!));
const total = (numbers: readonly number[]): number => numbers.reduce((sum, each) => sum + each, 0);

/**
 * Direction in which a matrix carries all numbers, summing to 1. Staying is added to every stage, which changes no
 * direction and lets numbers settle also where all generations pass in step.
 */
function settled(matrix: Matrix, growth: number): number[] {
  const staying = matrix.map((row, i) => row.map((element, j) => (i === j ? element + growth : element)));
  let numbers = powerOf(staying).power.map((row) => total(row));
  for (let i = 0; i < 4; i += 1) {
    numbers = stepOf(staying, numbers);
    const sum = total(numbers);
    numbers = numbers.map((each) => each / sum);
  }
  return numbers;
}

/**
 * What a stage matrix says of growth, structure and worth of stages in the long run; undefined for one that empties.
 *   A w = lambda w,  v A = lambda v,  e(i,j) = a(i,j) v(i) w(j) / (lambda v.w),  damping lambda / |lambda 2|
 * @param matrix square, elements >= 0; the first stage leads to one that breeds
 * @throws RangeError when it is not square or holds a negative number
 * @source caswell-2001 ch. 4 and 9
 */
export function projectionOf(matrix: Matrix): Projection | undefined {
  checkSquare(matrix);
  const growth = powerOf(matrix).radius;
  if (growth === 0) return undefined;
  const stable = settled(matrix, growth);
  const values = settled(transposed(matrix), growth);
  const inner = values.reduce((sum, value, i) => sum + value * stable[i]!, 0);
  if (!(inner > 0 && values[0]! > 0)) return undefined;
  const rest = matrix.map((row, i) =>
    row.map((element, j) => element - (growth * stable[i]! * values[j]!) / inner),
  );
  const next = powerOf(rest).radius;
  return {
    growth,
    stable,
    worth: values.map((value) => value / values[0]!),
    elasticity: matrix.map((row, i) =>
      row.map((element, j) => (element * values[i]! * stable[j]!) / (growth * inner)),
    ),
    // What is left of the matrix when only rounding is left of it.
    damping: next > 1e-9 * growth ? growth / next : undefined,
  };
}

/** What a stage matrix says of one life: births in its first row, moves and survival in all others. */
export interface LifeOfMatrix {
  /** Young per newborn in a whole life, R0 [1]. */
  readonly netReproduction: number;
  /** Steps a newborn can expect to live, the one it is born in included. */
  readonly expectancy: number;
}

/**
 * Young and steps of one life by a stage matrix whose first row holds births alone.
 * N = sum of T^k: steps spent in each stage;  R0 = first row . N(., 1);  expectancy = sum N(., 1)
 * @throws RangeError when the matrix is not square, or somebody lives for ever
 * @source caswell-2001 ch. 5
 */
export function lifeOfMatrix(matrix: Matrix): LifeOfMatrix {
  checkSquare(matrix);
  const moves = matrix.map((row, i) => (i === 0 ? row.map(() => 0) : row));
  if (powerOf(moves).radius >= 1) throw new RangeError('somebody in this stage matrix lives for ever');
  let here = matrix.map((_, i): number => (i === 0 ? 1 : 0));
  let spent = here;
  while (total(here) > 1e-18 * total(spent)) {
    here = stepOf(moves, here);
    spent = spent.map((steps, i) => steps + here[i]!);
  }
  return {
    netReproduction: matrix[0]!.reduce((sum, births, j) => sum + births * spent[j]!, 0),
    expectancy: total(spent),
  };
}
