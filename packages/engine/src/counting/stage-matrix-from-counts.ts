import type { Matrix } from '../community/projection-matrix.ts';
import { nonNegativeLeastSquares } from '../numerics/non-negative-least-squares.ts';

/** An element of a stage matrix: what one of stage `from` adds to stage `to` in a step; stages from 0. */
export interface Element {
  readonly to: number;
  readonly from: number;
}

/** Counts by stage at even steps, and which elements of the matrix may be above 0. */
export interface StageCounts {
  /** One list for each stage, from the youngest on; all as long, one number for each step [animals]. */
  readonly counts: readonly (readonly number[])[];
  readonly free: readonly Element[];
  /** Groups of elements that are parts of the same animals, so that their sum is 1 at most. */
  readonly parts: readonly (readonly Element[])[];
}

/** A stage matrix and how far it is from the counts. */
export interface FittedMatrix {
  readonly matrix: Matrix;
  /** Squares left over between each count and what the one before makes of it [animals squared]. */
  readonly sumOfSquares: number;
}

/** How much more a limit weighs than all counts together: then it is kept to about a part in 10^8. */
const WEIGHT = 1e4;

function checkCounts({ counts, free, parts }: StageCounts): number {
  const steps = (counts[0]?.length ?? 0) - 1;
  if (steps < 1 || counts.some((list) => list.length !== steps + 1))
    throw new RangeError('counts by stage need two steps or more, as many of each stage');
  if (!counts.flat().every((number) => number >= 0 && number < Number.POSITIVE_INFINITY))
    throw new RangeError('a count by stage is no number of 0 or more');
  const outside = [...free, ...parts.flat()].find(({ to, from }) => !counts[to] || !counts[from]);
  if (outside) throw new RangeError(`element ${outside.to}, ${outside.from} of no stage that was counted`);
  return steps;
}

/**
 * The stage matrix that comes nearest to carrying each count over into the next, by least squares with elements of 0 or
 * more and parts of the same animals that sum to 1 at most (a quadratic programme; the limits as heavy rows with a
 * remainder, by non-negative least squares).
 * @param stages counts at even steps, which elements are sought, and limits
 * @throws RangeError when lists differ in length, a count is no number of 0 or more, or an element names no stage
 * @source wood-1994; caswell-2001 sec. 6.2.2; haskell-hanson-1981 for the heavy rows
 */
export function stageMatrixFromCounts(stages: StageCounts): FittedMatrix {
  const { counts, parts } = stages;
  const steps = checkCounts(stages);
  let kept: (typeof parts)[number][] = [];
  for (;;) {
    const matrix = nearestMatrix(stages, kept, steps);
    const broken = parts.filter((part) => !kept.includes(part) && sumOf(matrix, part) > 1);
    if (broken.length === 0) return { matrix, sumOfSquares: squaresLeft(matrix, counts, steps) };
    kept = [...kept, ...broken];
  }
}

const isSame = (a: Element, b: Element): boolean => a.to === b.to && a.from === b.from;
const sumOf = (matrix: Matrix, part: readonly Element[]): number =>
  part.reduce((sum, { to, from }) => sum + matrix[to]![from]!, 0);

/** The nearest matrix that keeps to some of the limits. */
function nearestMatrix({ counts, free }: StageCounts, parts: StageCounts['parts'], steps: number): Matrix {
  const n = counts.length;
  const columns = free.length + parts.length;
  const heavy = WEIGHT * Math.max(1, Math.sqrt(counts.flat().reduce((sum, each) => sum + each * each, 0)));
  const rows = parts.length + n * steps;
  const matrix = new Float64Array(rows * columns);
  const right = new Float64Array(rows);
  parts.forEach((part, row) => {
    free.forEach((element, j) => {
      if (part.some((each) => isSame(each, element))) matrix[row * columns + j] = heavy;
    });
    matrix[row * columns + free.length + row] = heavy;
    right[row] = heavy;
  });
  for (let step = 0; step < steps; step += 1)
    for (let to = 0; to < n; to += 1) {
      const row = parts.length + step * n + to;
      right[row] = counts[to]![step + 1]!;
      free.forEach((element, j) => {
        if (element.to === to) matrix[row * columns + j] = counts[element.from]![step]!;
      });
    }
  const { x } = nonNegativeLeastSquares({ matrix, right, columns });
  return counts.map((_, to) =>
    counts.map((__, from) => x[free.findIndex((element) => isSame(element, { to, from }))] ?? 0),
  );
}

function squaresLeft(matrix: Matrix, counts: StageCounts['counts'], steps: number): number {
  let sum = 0;
  for (let step = 0; step < steps; step += 1)
    matrix.forEach((row, to) => {
      const made = row.reduce((total, element, from) => total + element * counts[from]![step]!, 0);
      const off = counts[to]![step + 1]! - made;
      sum += off * off;
    });
  return sum;
}

/**
 * The elements of an animal whose youngest stage grows through the others and whose oldest breeds: each stage may stay
 * or grow into the next, the last one has young.
 * @param stages number of stages, >= 2
 * @source definition
 */
export function growingStages(stages: number): Pick<StageCounts, 'free' | 'parts'> {
  const last = stages - 1;
  const of = (from: number): Element[] => [
    { to: from, from },
    ...(from < last ? [{ to: from + 1, from }] : []),
  ];
  const parts = Array.from({ length: stages }, (_, from) => of(from));
  return { free: [...parts.flat(), { to: 0, from: last }], parts };
}
