// The split of the argument: x = 2^k m with m in [sqrt 1/2, sqrt 2), f = m - 1, s = f / (2 + f), so
// ln x = k ln 2 + 2 atanh(s). Constants were computed to 60 digits and rounded; HIGH parts carry 36 bits, so
// that k HIGH is exact.
const LN2_HIGH = 0.6931471805582987;
const LN2_LOW = 1.6465949582897082e-12;
const LOG10_2_HIGH = 0.30102999565860955;
const LOG10_2_LOW = 5.371644767466998e-12;
const PER_LN10 = 0.4342944819032518;

const number = new Float64Array(1);
const words = new Int32Array(number.buffer);
const HIGH_WORD = new Uint8Array(Int32Array.of(1).buffer)[0] === 1 ? 1 : 0;
/** High word of sqrt 1/2, just below it. */
const ROOT_HALF_WORD = 0x3fe6a09e;

// Parts of the last argument split; read at once by the functions below.
let exponent = 0;
let mantissaLessOne = 0;

function split(x: number): void {
  number[0] = x;
  let word = words[HIGH_WORD]!;
  let k = 0;
  if (word < 0x00100000) {
    number[0] = x * 18014398509481984; // 2^54: subnormal argument
    word = words[HIGH_WORD]!;
    k = -54;
  }
  const shift = (word - ROOT_HALF_WORD) >> 20;
  words[HIGH_WORD] = word - (shift << 20);
  exponent = k + shift;
  mantissaLessOne = number[0] - 1;
}

/** (atanh(s)/s - 1)/z for z = s^2 in [0, 0.0295], economised by Chebyshev polynomials, within 1.1e-18. */
function tail(z: number): number {
  const z2 = z * z;
  const low =
    0.3333333333333333 + z * 0.2000000000000044 + z2 * (0.1428571428540056 + z * 0.1111111119611108);
  const high =
    0.09090897795380953 + z * 0.07693121082174183 + z2 * (0.06634356144666631 + z * 0.06543608515789494);
  return low + z2 * z2 * high;
}

/** ln(1 + f) = 2 s + 2 s^3 tail(s^2) = f - s (f - 2 s^2 tail(s^2)), since f - 2 s = s f. */
function smallLog(f: number): number {
  const s = f / (2 + f);
  const z = s * s;
  return f - s * (f - 2 * z * tail(z));
}

/** The logarithm where there is nothing to compute: zero, negative, infinite or not a number. */
function limit(x: number): number {
  return x === 0 ? Number.NEGATIVE_INFINITY : x > 0 ? x : Number.NaN;
}

/**
 * Natural logarithm [1].
 * @param x >= 0 [1]; -Infinity at 0, NaN below
 * @source derived: atanh series on the mantissa
 */
export function log(x: number): number {
  if (!(x > 0 && x < Number.POSITIVE_INFINITY)) return limit(x);
  split(x);
  const k = exponent;
  return k * LN2_HIGH + (smallLog(mantissaLessOne) + k * LN2_LOW);
}

/**
 * Decimal logarithm [1].
 * @param x >= 0 [1]; -Infinity at 0, NaN below
 * @source derived: atanh series on the mantissa
 */
export function log10(x: number): number {
  if (!(x > 0 && x < Number.POSITIVE_INFINITY)) return limit(x);
  split(x);
  const k = exponent;
  return k * LOG10_2_HIGH + (smallLog(mantissaLessOne) * PER_LN10 + k * LOG10_2_LOW);
}

/**
 * ln(1 + x) [1], without cancellation near zero.
 * @param x >= -1 [1]; -Infinity at -1, NaN below
 * @source derived: ln u + (x - (u - 1))/u with u = 1 + x rounded
 */
export function log1p(x: number): number {
  const u = 1 + x;
  if (!(u > 0 && u < Number.POSITIVE_INFINITY)) return limit(u);
  if (u === 1) return x;
  const left = u > 2 ? 1 - (u - x) : x - (u - 1);
  return log(u) + left / u;
}

/** What the rounding of the product a b left out, exactly (Dekker 1971), for factors below 1e290. */
export function productError(a: number, b: number, product: number): number {
  const wideA = a * 134217729;
  const highA = wideA - (wideA - a);
  const lowA = a - highA;
  const wideB = b * 134217729;
  const highB = wideB - (wideB - b);
  const lowB = b - highB;
  return lowA * lowB - (product - highA * highB - lowA * highB - highA * lowB);
}

/**
 * Natural logarithm [1] in two parts whose sum holds about 66 bits; returns the leading part and leaves the
 * rest in `into[0]`.
 * @param x > 0 and finite [1]
 * @source derived: as log, with the division and the sum carried in two parts
 */
export function logInTwoParts(x: number, into: Float64Array): number {
  split(x);
  const k = exponent;
  const f = mantissaLessOne;
  const divisor = 2 + f;
  const s = f / divisor;
  const product = s * divisor;
  const rest = f - product - productError(s, divisor, product) - s * (f - (divisor - 2));
  const z = s * s;
  const whole = k * LN2_HIGH;
  const sum = whole + 2 * s;
  const low = whole - sum + 2 * s + (k * LN2_LOW + (2 * rest) / divisor + 2 * s * z * tail(z));
  const leading = sum + low;
  into[0] = low - (leading - sum);
  return leading;
}
