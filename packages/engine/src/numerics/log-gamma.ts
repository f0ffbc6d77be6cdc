import { log } from './elementary.ts';

const HALF_LN_2PI = 0.9189385332046728;
/** From here on Stirling's series with five terms holds to rounding. */
const LARGE = 15;

/**
 * Natural logarithm of the gamma function [1]: Stirling's series, after the recurrence has brought x to 15 or more.
 * @param x > 0 [1]
 * @throws RangeError when x is not above 0
 * @source abramowitz-stegun 6.1.15 and 6.1.41
 */
export function logGamma(x: number): number {
  if (!(x > 0 && x < Number.POSITIVE_INFINITY)) throw new RangeError(`log gamma of ${x}`);
  let z = x;
  let product = 1;
  for (; z < LARGE; z += 1) product *= z;
  const square = z * z;
  const series =
    (1 / 12 - (1 / 360 - (1 / 1260 - (1 / 1680 - 1 / 1188 / square) / square) / square) / square) / z;
  return (z - 0.5) * log(z) - z + HALF_LN_2PI + series - log(product);
}
