import { continuedFraction } from './continued-fraction.ts';
import { exp, log, log1p } from './elementary.ts';
import { incompleteBeta } from './incomplete-beta.ts';
import { logUpperIncompleteGamma, lowerIncompleteGamma } from './incomplete-gamma.ts';
import { findRoot } from './roots.ts';

const ROOT_TWO_PI = 2.5066282746310002;
/** From here on the continued fraction of the tail is the quicker. */
const FAR = 2;

/** Mills' ratio by its continued fraction. */
const ratioByFraction = (z: number): number =>
  z > 1e150 ? 1 / z : 1 / continuedFraction(z, (n) => ({ a: n, b: z }));

/**
 * Mills' ratio [1]: the part of a standard normal distribution above z over its density at z; does not vanish far out.
 * @param z >= 0 [1]
 * @throws RangeError when z is not 0 or more
 * @source abramowitz-stegun 26.2.14
 */
export function millsRatio(z: number): number {
  if (!(z >= 0)) throw new RangeError(`Mills' ratio at ${z}`);
  if (z >= FAR) return ratioByFraction(z);
  return exp(logUpperIncompleteGamma(0.5, (z * z) / 2) + (z * z) / 2) * (ROOT_TWO_PI / 2);
}

/**
 * Natural logarithm of the part of a standard normal distribution below x [1], <= 0, without loss in the lower tail;
 * -Infinity where that part is smaller than any number.
 * @param x [1]
 * @throws RangeError when x is not a number
 * @source abramowitz-stegun 26.2.30 with 6.5.16, and 26.2.14 far out
 */
export function logNormalCumulative(x: number): number {
  if (Number.isNaN(x)) throw new RangeError(`normal distribution at ${x}`);
  const z = Math.abs(x);
  const tail =
    z < FAR
      ? logUpperIncompleteGamma(0.5, (z * z) / 2) - Math.LN2
      : log(ratioByFraction(z) / ROOT_TWO_PI) - (z * z) / 2;
  return x <= 0 ? tail : log1p(-exp(tail));
}

function checkQuantile(probability: number, freedom: number): void {
  if (!(probability > 0 && probability < 1)) throw new RangeError(`quantile at probability ${probability}`);
  if (!(freedom > 0 && freedom < Number.POSITIVE_INFINITY))
    throw new RangeError(`quantile with ${freedom} degrees of freedom`);
}

/**
 * Quantile of the chi-squared distribution [1], > 0.
 * @param probability above 0 and below 1 [1]
 * @param freedom degrees of freedom, > 0 [1]
 * @throws RangeError outside those ranges
 * @source abramowitz-stegun 26.4.19
 */
export function chiSquaredQuantile(probability: number, freedom: number): number {
  checkQuantile(probability, freedom);
  const excess = (x: number): number => lowerIncompleteGamma(freedom / 2, x / 2) - probability;
  let high = freedom;
  while (excess(high) < 0) high *= 2;
  return findRoot(excess, { low: 0, high, tolerance: 1e-12 * high });
}

/**
 * Quantile of Student's distribution [1], odd in 1/2 - probability.
 * @param probability above 0 and below 1 [1]
 * @param freedom degrees of freedom, > 0 [1]
 * @throws RangeError outside those ranges
 * @source abramowitz-stegun 26.7.1
 */
export function studentQuantile(probability: number, freedom: number): number {
  checkQuantile(probability, freedom);
  if (probability === 0.5) return 0;
  const tail = Math.min(probability, 1 - probability);
  const excess = (t: number): number =>
    incompleteBeta(freedom / (freedom + t * t), freedom / 2, 0.5) / 2 - tail;
  let high = 1;
  while (excess(high) > 0) high *= 2;
  const t = findRoot(excess, { low: 0, high, tolerance: 1e-12 * high });
  return probability < 0.5 ? -t : t;
}
