import { log, log1p } from './elementary.ts';

const HALF_LN_2PI = 0.9189385332046728;

/** ln n! - Stirling's (n + 1/2) ln n - n + ln sqrt(2 pi), for n = 1 to 15, from exact factorials. */
const STIRLING_ERRORS = exactStirlingErrors();

function exactStirlingErrors(): Float64Array {
  const errors = new Float64Array(16);
  let factorial = 1;
  for (let n = 1; n <= 15; n += 1) {
    factorial *= n;
    errors[n] = log(factorial) - ((n + 0.5) * log(n) - n + HALF_LN_2PI);
  }
  return errors;
}

/** What Stirling's formula for ln n! leaves out, n >= 1. */
function stirlingError(n: number): number {
  if (n <= 15) return STIRLING_ERRORS[n]!;
  const square = n * n;
  return (1 / 12 - (1 / 360 - (1 / 1260 - (1 / 1680 - 1 / 1188 / square) / square) / square) / square) / n;
}

/** k ln(k/mean) + mean - k, >= 0, without cancellation where k is close to the mean. */
function deviance(k: number, mean: number): number {
  if (Math.abs(k - mean) >= 0.1 * (k + mean)) return k * log(k / mean) + mean - k;
  const v = (k - mean) / (k + mean);
  const square = v * v;
  let sum = (k - mean) * v;
  let term = 2 * k * v;
  for (let j = 1; j < 100; j += 1) {
    term *= square;
    const next = sum + term / (2 * j + 1);
    if (next === sum) break;
    sum = next;
  }
  return sum;
}

/**
 * Logarithm of the probability of k events where `mean` are expected [1], <= 0; -Infinity where impossible.
 * @param k whole number >= 0 [1]
 * @param mean >= 0 [1]
 * @source loader-2000, saddle-point form
 */
export function poissonLogProbability(k: number, mean: number): number {
  if (k < 0) return Number.NEGATIVE_INFINITY;
  if (mean === 0) return k === 0 ? 0 : Number.NEGATIVE_INFINITY;
  if (k === 0) return -mean;
  return -stirlingError(k) - deviance(k, mean) - HALF_LN_2PI - 0.5 * log(k);
}

/**
 * Logarithm of the probability of k successes in n trials [1], <= 0; -Infinity where impossible.
 * @param k whole number [1]
 * @param n whole number >= 0 [1]
 * @param p chance of each [1], 0 to 1
 * @source loader-2000, saddle-point form
 */
export function binomialLogProbability(k: number, n: number, p: number): number {
  if (k < 0 || k > n) return Number.NEGATIVE_INFINITY;
  if (p === 0 || p === 1) return k === n * p ? 0 : Number.NEGATIVE_INFINITY;
  if (k === 0) return n * log1p(-p);
  if (k === n) return n * log(p);
  const rest = n - k;
  const spread = stirlingError(n) - stirlingError(k) - stirlingError(rest);
  return spread - deviance(k, n * p) - deviance(rest, n * (1 - p)) + 0.5 * log(n / (k * rest)) - HALF_LN_2PI;
}
