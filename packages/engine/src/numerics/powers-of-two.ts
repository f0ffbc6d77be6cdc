export const LEAST_EXPONENT = -1022;
export const POWERS_OF_TWO = powersOfTwo();

function powersOfTwo(): Float64Array {
  const powers = new Float64Array(1023 - LEAST_EXPONENT + 1);
  powers[-LEAST_EXPONENT] = 1;
  for (let e = 1; e <= 1023; e += 1) powers[e - LEAST_EXPONENT] = powers[e - 1 - LEAST_EXPONENT]! * 2;
  for (let e = -1; e >= LEAST_EXPONENT; e -= 1) {
    powers[e - LEAST_EXPONENT] = powers[e + 1 - LEAST_EXPONENT]! / 2;
  }
  return powers;
}

/** m 2^e [1] for m in [0.5, 2] and e in [-1080, 1025], rounded once more only where the result is subnormal. */
export function scaled(m: number, e: number): number {
  if (e >= LEAST_EXPONENT && e <= 1023) return m * POWERS_OF_TWO[e - LEAST_EXPONENT]!;
  if (e > 1023) return m * POWERS_OF_TWO[1023 - LEAST_EXPONENT]! * POWERS_OF_TWO[e - 1023 - LEAST_EXPONENT]!;
  return m * POWERS_OF_TWO[e + 128 - LEAST_EXPONENT]! * POWERS_OF_TWO[-128 - LEAST_EXPONENT]!;
}
