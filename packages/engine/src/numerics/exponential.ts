import { LEAST_EXPONENT, POWERS_OF_TWO, scaled } from './powers-of-two.ts';

// The split of the exponent: x = (k/32) ln 2 + r with |r| <= ln 2 / 64, so e^x = 2^(k >> 5) 2^((k & 31)/32) e^r.
// Constants were computed to 60 digits and rounded; HIGH parts carry 36 bits, so that k HIGH is exact.
const STEPS_PER_UNIT = 46.16624130844683; // 32 / ln 2
const STEP_HIGH = 0.021660849392446835; // ln 2 / 32
const STEP_LOW = 5.145609244655338e-14;
const STEPS_PER_DECADE = 106.30169903639559; // 32 log2(10)
const DECADE_STEP_HIGH = 0.009407187364331548; // log10(2) / 32
const DECADE_STEP_LOW = 1.678638989833437e-13;
const LN10 = Math.LN10;

/** Adding and taking away 1.5 * 2^52 rounds to the nearest whole number, ties to even, for |x| < 2^51. */
const ROUNDER = 6755399441055744;

/** 2^(j/32) rounded to double, and what the rounding left out. */
const FRACTION_HIGH = Float64Array.of(
  ...[1.0, 1.0218971486541166, 1.0442737824274138, 1.0671404006768237, 1.0905077326652577],
  ...[1.1143867425958924, 1.1387886347566916, 1.1637248587775775, 1.189207115002721, 1.215247359980469],
  ...[1.241857812073484, 1.2690509571917332, 1.2968395546510096, 1.3252366431597413, 1.3542555469368927],
  ...[1.383909881963832, Math.SQRT2, 1.4451808069770467, 1.4768261459394993, 1.5091644275934228],
  ...[1.5422108254079407, 1.5759808451078865, 1.6104903319492543, 1.645755478153965, 1.681792830507429],
  ...[1.718619298122478, 1.7562521603732995, 1.7947090750031072, 1.8340080864093424, 1.8741676341103],
  ...[1.9152065613971474, 1.9571441241754002],
);
const FRACTION_LOW = Float64Array.of(
  ...[0, 5.109225028973444e-17, 8.551889705537965e-17, -7.899853966841582e-17, -3.046782079812471e-17],
  ...[1.0410278456845571e-16, 8.912812676025408e-17, 3.8292048369240935e-17, 3.982015231465646e-17],
  ...[-7.712630692681488e-17, 4.658027591836937e-17, 2.667932131342186e-18, 2.5382502794888315e-17],
  ...[-2.8587312100388614e-17, 7.70094837980299e-17, -6.770511658794786e-17, -9.667293313452913e-17],
  ...[-3.0237581349939873e-17, -3.483994556892796e-17, -1.016455327754295e-16, 7.949834809697621e-17],
  ...[-1.0136916471278304e-17, 2.4707192569797888e-17, -1.0125679913674773e-16, 8.199010020581497e-17],
  ...[-1.851380418263111e-17, 2.960140695448873e-17, 1.8227458427912087e-17, 3.283107224245627e-17],
  ...[-6.122763413004143e-17, -1.0619946056195963e-16, 8.960767791036668e-17],
);

/** e^r - 1 for |r| <= 0.011, by its power series to r^6. */
function smallGrowth(r: number): number {
  const square = r * r;
  return r + square * (0.5 + r * (1 / 6) + square * (1 / 24 + r * (1 / 120) + square * (1 / 720)));
}

function composed(k: number, r: number): number {
  const j = k & 31;
  const fraction = FRACTION_HIGH[j]!;
  return scaled(fraction + (FRACTION_LOW[j]! + fraction * smallGrowth(r)), k >> 5);
}

/**
 * e^(x + tail) [1], >= 0, for a sum given in two parts.
 * @param x any [1]; beyond 709.79 Infinity, below -745.14 zero, NaN for NaN
 * @param tail |tail| < 1e-3, what the rounding of x left out
 * @source derived: table of 2^(j/32) and power series on the remainder
 */
export function expOfSum(x: number, tail: number): number {
  if (!(x < 709.79)) return x >= 709.79 ? Number.POSITIVE_INFINITY : x;
  if (x < -745.14) return 0;
  const k = x * STEPS_PER_UNIT + ROUNDER - ROUNDER;
  return composed(k, x - k * STEP_HIGH - k * STEP_LOW + tail);
}

/**
 * e^x [1], >= 0.
 * @param x any [1]; beyond 709.79 Infinity, below -745.14 zero, NaN for NaN
 * @source derived: table of 2^(j/32) and power series on the remainder
 */
export function exp(x: number): number {
  if (!(x < 709.79)) return x >= 709.79 ? Number.POSITIVE_INFINITY : x;
  if (x < -745.14) return 0;
  const k = x * STEPS_PER_UNIT + ROUNDER - ROUNDER;
  return composed(k, x - k * STEP_HIGH - k * STEP_LOW);
}

/**
 * Replaces each of several x by e^x [1], as `exp` does; spares a hot loop the calls.
 * @param values any [1]
 * @source derived: as exp
 */
export function expEach(values: Float64Array): void {
  for (let i = 0; i < values.length; i += 1) values[i] = exp(values[i]!);
}

/**
 * 10^x [1], >= 0.
 * @param x any [1]; beyond 308.26 Infinity, below -323.7 zero, NaN for NaN
 * @source derived: as exp, the remainder taken in decades and multiplied by ln 10
 */
export function exp10(x: number): number {
  if (!(x < 308.26)) return x >= 308.26 ? Number.POSITIVE_INFINITY : x;
  if (x < -323.7) return 0;
  const k = x * STEPS_PER_DECADE + ROUNDER - ROUNDER;
  return composed(k, (x - k * DECADE_STEP_HIGH - k * DECADE_STEP_LOW) * LN10);
}

/**
 * e^x - 1 [1], >= -1, without cancellation near zero.
 * @param x any [1]; beyond 709.79 Infinity, NaN for NaN
 * @source derived: as exp, the 1 taken away from the exact part first
 */
export function expm1(x: number): number {
  if (!(x < 40)) return exp(x);
  if (x < -40) return -1;
  const k = x * STEPS_PER_UNIT + ROUNDER - ROUNDER;
  const growth = smallGrowth(x - k * STEP_HIGH - k * STEP_LOW);
  if (k === 0) return x === 0 ? x : growth;
  const scale = POWERS_OF_TWO[(k >> 5) - LEAST_EXPONENT]!;
  const fraction = FRACTION_HIGH[k & 31]!;
  return scale * fraction - 1 + scale * (FRACTION_LOW[k & 31]! + fraction * growth);
}
