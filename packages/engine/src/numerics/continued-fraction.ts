/** Parts of a continued fraction b0 + a1/(b1 + a2/(b2 + …)): those of its n-th step, n >= 1. */
export type FractionStep = (n: number) => { readonly a: number; readonly b: number };

const TINY = 1e-300;
const PRECISION = 1e-16;
const MOST_STEPS = 10_000;

/**
 * Value of a continued fraction [1] by the modified method of Lentz.
 * @param first b0 [1]
 * @param step a and b of each further step
 * @throws RangeError when it does not settle
 * @source thompson-barnett-1986
 */
export function continuedFraction(first: number, step: FractionStep): number {
  let value = first === 0 ? TINY : first;
  let above = value;
  let below = 0;
  for (let n = 1; n <= MOST_STEPS; n += 1) {
    const { a, b } = step(n);
    below = b + a * below;
    if (below === 0) below = TINY;
    above = b + a / above;
    if (above === 0) above = TINY;
    below = 1 / below;
    const change = above * below;
    value *= change;
    if (Math.abs(change - 1) <= 2 * PRECISION) return value;
  }
  throw new RangeError('a continued fraction does not settle');
}
