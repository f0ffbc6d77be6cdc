/** Where and how closely to look for a root. */
export interface Bracket {
  readonly low: number;
  readonly high: number;
  /** The root is found to within this [unit of x], > 0. */
  readonly tolerance: number;
}

/** Halvings that exhaust any pair of doubles, and room beside them for steps that do not halve. */
const MOST_STEPS = 2200;

function checked(f: (x: number) => number, x: number): number {
  const value = f(x);
  if (Number.isNaN(value)) throw new RangeError(`the function is not a number at ${x}`);
  return value;
}

/**
 * A root of f between `low` and `high` [unit of x]: the interval around it is narrower than twice the tolerance.
 * Interpolation is truncated towards the middle and projected into the range that keeps the worst case near
 * bisection (ITP: kappa1 = 0.2/(high - low), kappa2 = 2, slack of one step).
 * @param f continuous, of different sign at both ends, or zero at one
 * @param bracket ends and tolerance; low < high
 * @throws RangeError when the root is not bracketed, the bracket is empty or f is not a number
 * @source oliveira-takahashi-2021
 */
export function findRoot(f: (x: number) => number, bracket: Bracket): number {
  const { tolerance } = bracket;
  let a = bracket.low;
  let b = bracket.high;
  if (!(a < b && tolerance > 0)) throw new RangeError(`no bracket from ${a} to ${b} within ${tolerance}`);
  let ya = checked(f, a);
  let yb = checked(f, b);
  if (ya === 0) return a;
  if (yb === 0) return b;
  if (ya > 0 === yb > 0) throw new RangeError(`no change of sign from ${a} (${ya}) to ${b} (${yb})`);
  const firstWidth = b - a;
  let allowance = 2 * tolerance;
  while (allowance < firstWidth) allowance *= 2;
  for (let step = 0; step < MOST_STEPS && b - a > 2 * tolerance; step += 1) {
    const middle = a + (b - a) / 2;
    if (middle <= a || middle >= b) return middle;
    const x = projected({ a, b, ya, yb, middle, firstWidth, allowance });
    const y = checked(f, x);
    if (y === 0) return x;
    if (y > 0 === yb > 0) {
      b = x;
      yb = y;
    } else {
      a = x;
      ya = y;
    }
    allowance = Math.max(allowance / 2, 2 * tolerance);
  }
  return a + (b - a) / 2;
}

interface Interval {
  readonly a: number;
  readonly b: number;
  readonly ya: number;
  readonly yb: number;
  readonly middle: number;
  readonly firstWidth: number;
  readonly allowance: number;
}

/** The next point: false position, moved towards the middle, kept within reach of bisection's schedule. */
function projected({ a, b, ya, yb, middle, firstWidth, allowance }: Interval): number {
  const width = b - a;
  const falsePosition = a + (width * ya) / (ya - yb);
  if (!(falsePosition > a && falsePosition < b)) return middle;
  const side = middle > falsePosition ? 1 : -1;
  const truncation = (0.2 / firstWidth) * width * width;
  const truncated =
    truncation <= Math.abs(middle - falsePosition) ? falsePosition + side * truncation : middle;
  const reach = Math.max(allowance - width / 2, 0);
  const x = Math.abs(truncated - middle) <= reach ? truncated : middle - side * reach;
  return x > a && x < b ? x : middle;
}
