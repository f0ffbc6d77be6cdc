import { continuedFraction } from './continued-fraction.ts';
import { exp, log, log1p } from './elementary.ts';
import { logGamma } from './log-gamma.ts';

/** I_x(a, b) by its continued fraction, quick for x below (a + 1)/(a + b + 2). */
function byFraction(x: number, a: number, b: number): number {
  const fraction = continuedFraction(1, (n) => {
    const m = Math.floor(n / 2);
    const step = a + 2 * m;
    if (n % 2 === 1) return { a: (-(a + m) * (a + b + m) * x) / (step * (step + 1)), b: 1 };
    return { a: (m * (b - m) * x) / ((step - 1) * step), b: 1 };
  });
  const front = a * log(x) + b * log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b);
  return exp(front) / (a * fraction);
}

/**
 * Part of a beta distribution that lies below x, I_x(a, b) [1], 0 to 1.
 * @param x 0 to 1 [1]
 * @param a > 0 [1]
 * @param b > 0 [1]
 * @throws RangeError outside those ranges
 * @source abramowitz-stegun 26.5.8 and 26.5.2
 */
export function incompleteBeta(x: number, a: number, b: number): number {
  if (!(x >= 0 && x <= 1 && a > 0 && b > 0)) throw new RangeError(`incomplete beta of ${a}, ${b} at ${x}`);
  if (x === 0 || x === 1) return x;
  return x < (a + 1) / (a + b + 2) ? byFraction(x, a, b) : 1 - byFraction(1 - x, b, a);
}
