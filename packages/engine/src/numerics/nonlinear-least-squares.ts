import { factorise, solveFactorised } from './linear.ts';

/** A curve and how it moves with its parameters: values, and by parameter the slope of each value. */
export interface CurveAt {
  readonly values: readonly number[];
  /** One list for each parameter, as long as `values`. */
  readonly slopes: readonly (readonly number[])[];
}

/** A curve to be laid through points by least squares. */
export interface CurveFit {
  /** What the curve should give [unit of its values]. */
  readonly wanted: readonly number[];
  readonly curve: (parameters: readonly number[]) => CurveAt;
  readonly start: readonly number[];
}

/** The best parameters, what is left over, and the normal matrix at the end (slopes times slopes). */
export interface FittedCurve {
  readonly parameters: readonly number[];
  /** Sum of squares left over [unit of the values, squared]. */
  readonly sumOfSquares: number;
  /** Row by row. */
  readonly normal: Float64Array;
}

const MOST_STEPS = 400;
const MOST_DAMPING = 1e14;

interface Place {
  readonly parameters: readonly number[];
  readonly sum: number;
  readonly normal: Float64Array;
  readonly gradient: Float64Array;
}

function placeAt({ curve, wanted }: CurveFit, parameters: readonly number[]): Place {
  const { values, slopes } = curve(parameters);
  const n = parameters.length;
  const rest = values.map((value, i) => value - wanted[i]!);
  const times = (a: readonly number[], b: readonly number[]): number =>
    a.reduce((sum, value, i) => sum + value * b[i]!, 0);
  return {
    parameters,
    sum: times(rest, rest),
    normal: Float64Array.from({ length: n * n }, (_, k) => times(slopes[Math.floor(k / n)]!, slopes[k % n]!)),
    gradient: Float64Array.from(slopes, (slope) => times(slope, rest)),
  };
}

/** The step of a damping, or undefined where the curve does not feel a parameter. */
function stepFrom({ normal, gradient, parameters }: Place, damping: number): number[] | undefined {
  const n = parameters.length;
  const matrix = normal.slice();
  for (let i = 0; i < n; i += 1) {
    if (!(normal[i * n + i]! > 0)) return undefined;
    matrix[i * n + i] = normal[i * n + i]! * (1 + damping);
  }
  const pivots = new Int32Array(n);
  const right = gradient.map((value) => -value);
  try {
    factorise(matrix, pivots, n);
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
  solveFactorised(matrix, pivots, right, n);
  return [...right];
}

/**
 * Lays a curve through points by least squares (Levenberg-Marquardt, scaled by the slopes), down to rounding: a local
 * least, so it is worth several starts. Undefined where the curve does not depend on every parameter.
 * @param fit points, curve with its slopes, and a start at which the curve is finite
 * @source marquardt-1963
 */
export function fitCurve(fit: CurveFit): FittedCurve | undefined {
  let place = placeAt(fit, fit.start);
  let damping = 1e-3;
  for (let turn = 0; turn < MOST_STEPS; turn += 1) {
    const step = stepFrom(place, damping);
    if (!step) return undefined;
    const next = placeAt(
      fit,
      place.parameters.map((value, i) => value + step[i]!),
    );
    // Not a number where the step led beyond what can be computed: damp it.
    if (next.sum <= place.sum) {
      const still = step.every((each, i) => Math.abs(each) <= 1e-12 * (1 + Math.abs(place.parameters[i]!)));
      place = next;
      damping = Math.max(damping / 10, 1e-15);
      if (still) break;
    } else {
      damping *= 10;
      if (damping > MOST_DAMPING) break;
    }
  }
  if (!Number.isFinite(place.sum)) return undefined;
  return { parameters: place.parameters, sumOfSquares: place.sum, normal: place.normal };
}

/**
 * Covariance of fitted parameters [unit of one times that of the other], row by row: s2 times the inverse of the normal
 * matrix, s2 the sum of squares over the degrees of freedom left. Undefined where none are left or the points do not
 * tell the parameters apart.
 * @param fitted as `fitCurve` gave it
 * @param points number of points
 * @source seber-wild-1989 ch. 2
 */
export function covarianceOf(
  { parameters, sumOfSquares, normal }: FittedCurve,
  points: number,
): Float64Array | undefined {
  const n = parameters.length;
  if (points <= n) return undefined;
  const matrix = normal.slice();
  const pivots = new Int32Array(n);
  try {
    if (factorise(matrix, pivots, n) < 1e-14) return undefined;
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
  const variance = sumOfSquares / (points - n);
  const covariance = new Float64Array(n * n);
  for (let j = 0; j < n; j += 1) {
    const column = new Float64Array(n);
    column[j] = variance;
    solveFactorised(matrix, pivots, column, n);
    for (let i = 0; i < n; i += 1) covariance[i * n + j] = column[i]!;
  }
  return covariance;
}
