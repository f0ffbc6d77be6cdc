import { expOfSum } from './exponential.ts';
import { logInTwoParts, productError } from './logarithm.ts';

/** Beyond it every power of a base other than 1 is 0 or infinite. */
const MOST_EXPONENT = 1e290;
const rest = new Float64Array(1);

function positivePower(base: number, exponent: number): number {
  const logarithm = logInTwoParts(base, rest);
  const product = exponent * logarithm;
  if (product > 710) return Number.POSITIVE_INFINITY;
  if (product < -746) return 0;
  return expOfSum(product, productError(exponent, logarithm, product) + exponent * rest[0]!);
}

function isOdd(exponent: number): boolean {
  return Math.abs(exponent) < 9007199254740992 && Math.abs(exponent % 2) === 1;
}

function magnitude(base: number, exponent: number): number {
  if (Math.abs(exponent) >= MOST_EXPONENT) {
    if (base === 1) return Number.isFinite(exponent) ? 1 : Number.NaN;
    return base > 1 === exponent > 0 ? Number.POSITIVE_INFINITY : 0;
  }
  if (base === 0 || base === Number.POSITIVE_INFINITY) {
    return base > 0 === exponent > 0 ? Number.POSITIVE_INFINITY : 0;
  }
  return positivePower(base, exponent);
}

/**
 * base^exponent [1], with the limits of ECMAScript's power: x^0 = 1, NaN for a negative base with a broken exponent.
 * @param base any [1]
 * @param exponent any [1]
 * @source derived: e^(exponent ln base) with logarithm and product in two parts
 */
export function pow(base: number, exponent: number): number {
  if (exponent === 2) return base * base;
  if (exponent === 1) return base;
  if (exponent === 0) return 1;
  if (base > 0 && base < Number.POSITIVE_INFINITY && Math.abs(exponent) < MOST_EXPONENT) {
    return exponent === 0.5 ? Math.sqrt(base) : positivePower(base, exponent);
  }
  if (Number.isNaN(base) || Number.isNaN(exponent)) return Number.NaN;
  const isNegative = base < 0 || Object.is(base, -0);
  if (base < 0 && base > Number.NEGATIVE_INFINITY && exponent !== Math.floor(exponent)) return Number.NaN;
  const size = magnitude(Math.abs(base), exponent);
  return isNegative && isOdd(exponent) ? -size : size;
}
