import { studentQuantile } from '../numerics/distributions.ts';
import { exp, log } from '../numerics/elementary.ts';
import {
  type CurveAt,
  covarianceOf,
  type FittedCurve,
  fitCurve,
} from '../numerics/nonlinear-least-squares.ts';
import { type Count, countsAboveNone, type Estimate, UPPER } from './count.ts';

/** Numbers that grow towards a limit. */
export interface LogisticGrowth {
  /** The limit, K [animals]. */
  readonly limit: Estimate;
  /** Growth rate of few animals, r [1/d]. */
  readonly rate: Estimate;
  /** Numbers on the day of the first count, N0 [animals]. */
  readonly start: Estimate;
  /** Sum of squares left over [animals squared]. */
  readonly sumOfSquares: number;
  /** Gain in the corrected criterion of Akaike over growth without limit; above 0 the limit helps [1]. */
  readonly gain: number;
  /** The curve on a day, with the 95 % interval of the curve (not of a count) [animals]. */
  at(day: number): Estimate;
}

/** Limits to begin from, as multiples of the most counted. */
const LIMITS = [1.02, 1.3, 3, 20] as const;

/** N(t) = K/(1 + (K/N0 - 1) exp(-r t)) and its slopes by ln K, ln r and ln N0. */
function logisticCurve(days: readonly number[], parameters: readonly number[]): CurveAt {
  const [K, r, N0] = parameters.map(exp) as [number, number, number];
  const parts = days.map((t) => {
    const fall = exp(-r * t);
    const under = 1 + (K / N0 - 1) * fall;
    return { t, fall, value: K / under, push: K / under / under };
  });
  return {
    values: parts.map(({ value }) => value),
    slopes: [
      parts.map(({ value, push, fall }) => value - (push * fall * K) / N0),
      parts.map(({ push, fall, t }) => push * (K / N0 - 1) * fall * r * t),
      parts.map(({ push, fall }) => (push * fall * K) / N0),
    ],
  };
}

/** N(t) = N0 exp(r t) and its slopes by ln N0 and r. */
function exponentialCurve(days: readonly number[], [logStart = 0, r = 0]: readonly number[]): CurveAt {
  const values = days.map((t) => exp(logStart + r * t));
  return { values, slopes: [values, values.map((value, i) => value * days[i]!)] };
}

/** Slope and value at 0 of the straight line through points. */
function lineThrough(x: readonly number[], y: readonly number[]): readonly [slope: number, start: number] {
  const mean = (list: readonly number[]): number => list.reduce((sum, each) => sum + each, 0) / list.length;
  const [mx, my] = [mean(x), mean(y)];
  const spread = x.reduce((sum, each) => sum + (each - mx) * (each - mx), 0);
  const slope = x.reduce((sum, each, i) => sum + (each - mx) * (y[i]! - my), 0) / spread;
  return [slope, my - slope * mx];
}

/** Starts of the search: for a few limits, rate and first number by the logit of the counts. */
function startsOf(days: readonly number[], numbers: readonly number[]): number[][] {
  const most = Math.max(...numbers);
  const span = days.at(-1)!;
  return LIMITS.flatMap((times) => {
    const limit = times * most;
    const part = (number: number): number => Math.min(Math.max(number, most * 1e-3), limit * 0.999) / limit;
    const [slope, start] = lineThrough(
      days,
      numbers.map((number) => log(part(number) / (1 - part(number)))),
    );
    const rate = log(Math.max(slope, 0.1 / span));
    const first = log(Math.max(numbers[0]!, most * 1e-3));
    return [
      [log(limit), rate, log(limit) - log(1 + exp(-start))],
      [log(limit), rate, first],
    ];
  });
}

/** Akaike's criterion corrected for few points, of a curve with `parameters` and an error to be found beside them. */
function criterion(sumOfSquares: number, points: number, parameters: number): number {
  const k = parameters + 1;
  const least = Number.MIN_VALUE * points;
  return points * log(Math.max(sumOfSquares, least) / points) + 2 * k + (2 * k * (k + 1)) / (points - k - 1);
}

function best(fits: readonly (FittedCurve | undefined)[]): FittedCurve | undefined {
  return fits.reduce(
    (least, fit) => (fit && (!least || fit.sumOfSquares < least.sumOfSquares) ? fit : least),
    undefined,
  );
}

/** Fewest counts from which a limit is sought: three figures, the scatter, and one that the criterion divides by. */
export const FEWEST_FOR_LIMIT = 6;

/**
 * Logistic growth through counts by least squares of the counts themselves (so the great ones weigh most), or undefined
 * with fewer than six counts or none above 0, or where no such curve can be told. 95 % intervals by the curve's slopes,
 * of each figure's logarithm; that of the curve likewise.
 *   N(t) = K/(1 + (K/N0 - 1) exp(-r t))
 * @param counts days rising, zeros welcome
 * @throws RangeError when days do not rise or a count is no number of 0 or more
 * @source pearl-1927 for the curve; burnham-anderson-2002 ch. 2 for the comparison with growth without limit
 */
export function logisticGrowth(counts: readonly Count[]): LogisticGrowth | undefined {
  const n = counts.length;
  if (countsAboveNone(counts).length < 2 || n < FEWEST_FOR_LIMIT) return undefined;
  const first = counts[0]!.day;
  const days = counts.map(({ day }) => day - first);
  const wanted = counts.map(({ number }) => number);
  const fit = best(
    startsOf(days, wanted).map((start) =>
      fitCurve({ wanted, start, curve: (parameters) => logisticCurve(days, parameters) }),
    ),
  );
  const covariance = fit && covarianceOf(fit, n);
  if (!fit || !covariance) return undefined;
  const t = studentQuantile(UPPER, n - 3);
  const around = (middle: number, variance: number): Estimate => {
    const reach = t * Math.sqrt(variance);
    return { value: exp(middle), low: exp(middle - reach), high: exp(middle + reach) };
  };
  const [limit, rate, start] = fit.parameters.map((each, i) => around(each, covariance[4 * i]!)) as [
    Estimate,
    Estimate,
    Estimate,
  ];
  return {
    limit,
    rate,
    start,
    sumOfSquares: fit.sumOfSquares,
    gain: criterionWithoutLimit(days, wanted) - criterion(fit.sumOfSquares, n, 3),
    at(day) {
      const { values, slopes } = logisticCurve([day - first], fit.parameters);
      const value = values[0]!;
      const each = slopes.map(([slope = 0]) => slope / value);
      const variance = each.reduce(
        (sum, a, i) => sum + each.reduce((part, b, j) => part + a * b * covariance[3 * i + j]!, 0),
        0,
      );
      return around(log(value), Math.max(0, variance));
    },
  };
}

function criterionWithoutLimit(days: readonly number[], wanted: readonly number[]): number {
  const most = Math.max(...wanted);
  const [slope, start] = lineThrough(
    days,
    wanted.map((number) => log(Math.max(number, most * 1e-3))),
  );
  const fit = best(
    [
      [start, slope],
      [log(most), 0],
    ].map((from) =>
      fitCurve({ wanted, start: from, curve: (parameters) => exponentialCurve(days, parameters) }),
    ),
  );
  return criterion(fit?.sumOfSquares ?? Number.MAX_VALUE, wanted.length, 2);
}
