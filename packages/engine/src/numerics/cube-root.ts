const number = new Float64Array(1);
const words = new Int32Array(number.buffer);
const HIGH_WORD = new Uint8Array(Int32Array.of(1).buffer)[0] === 1 ? 1 : 0;

/**
 * A third of a double's high word, read as an integer, and this make the high word of its cube root to within 3.2 %:
 * sign and exponent bits grow like log2, and two thirds of the exponent's offset were taken away.
 */
const GUESS = 715093332;
const LEAST_DIRECT = 2.2250738585072014e-308; // 2^-1022
const TWO_TO_54 = 2 ** 54;
const TWO_TO_18 = 2 ** 18;

/** Cube root of x > 0, finite and not subnormal. */
function positiveRoot(x: number): number {
  number[0] = x;
  words[HIGH_WORD] = ((words[HIGH_WORD]! / 3) | 0) + GUESS;
  words[1 - HIGH_WORD] = 0;
  const guess = number[0]!;
  // (1 + d)^(-1/3) in powers of d, |d| < 0.1
  const d = (guess * guess * guess) / x - 1;
  const near = guess * (1 - d * (1 / 3 - d * (2 / 9 - d * (14 / 81 - d * (35 / 243 - d * (91 / 729))))));
  const cube = near * near * near;
  return near - near * ((cube - x) / (cube + cube + x));
}

/**
 * Cube root [1], with the sign of x.
 * @param x any [1]
 * @source derived: guess from the bits, five powers of its error, one step of Halley's method
 */
export function cbrt(x: number): number {
  const size = Math.abs(x);
  if (!(size > 0 && size < Number.POSITIVE_INFINITY)) return x;
  const root = size < LEAST_DIRECT ? positiveRoot(size * TWO_TO_54) / TWO_TO_18 : positiveRoot(size);
  return x < 0 ? -root : root;
}
