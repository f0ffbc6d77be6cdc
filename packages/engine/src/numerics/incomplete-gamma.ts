import { continuedFraction } from './continued-fraction.ts';
import { exp, log, log1p } from './elementary.ts';
import { logGamma } from './log-gamma.ts';

function check(shape: number, x: number): void {
  if (!(shape > 0 && x >= 0 && shape + x < Number.POSITIVE_INFINITY))
    throw new RangeError(`incomplete gamma of shape ${shape} at ${x}`);
}

/** ln of x^a e^-x / Gamma(a). */
const logFront = (shape: number, x: number): number => shape * log(x) - x - logGamma(shape);

/** P(a, x) by its power series, good for x < a + 1. */
function lowerBySeries(shape: number, x: number): number {
  let term = 1 / shape;
  let sum = term;
  for (let n = 1; term > sum * 1e-17; n += 1) {
    term *= x / (shape + n);
    sum += term;
  }
  return exp(logFront(shape, x)) * sum;
}

/** ln Q(a, x) by its continued fraction, good for x >= a + 1. */
function logUpperByFraction(shape: number, x: number): number {
  const fraction = continuedFraction(x + 1 - shape, (n) => ({
    a: -n * (n - shape),
    b: x + 2 * n + 1 - shape,
  }));
  return logFront(shape, x) - log(fraction);
}

/**
 * Part of a gamma distribution of that shape and scale 1 that lies below x, P(a, x) [1], 0 to 1.
 * @param shape > 0 [1]
 * @param x >= 0 [1]
 * @throws RangeError outside those ranges
 * @source abramowitz-stegun 6.5.29 and 6.5.31
 */
export function lowerIncompleteGamma(shape: number, x: number): number {
  check(shape, x);
  if (x === 0) return 0;
  return x < shape + 1 ? lowerBySeries(shape, x) : 1 - exp(logUpperByFraction(shape, x));
}

/**
 * Natural logarithm of the part of a gamma distribution above x, ln Q(a, x) [1], <= 0; without loss far out in the tail.
 * @param shape > 0 [1]
 * @param x >= 0 [1]
 * @throws RangeError outside those ranges
 * @source abramowitz-stegun 6.5.29 and 6.5.31
 */
export function logUpperIncompleteGamma(shape: number, x: number): number {
  check(shape, x);
  if (x === 0) return 0;
  return x < shape + 1 ? log1p(-lowerBySeries(shape, x)) : logUpperByFraction(shape, x);
}
