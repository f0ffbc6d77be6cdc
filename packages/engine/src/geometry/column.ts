import type { Knots } from './knots.ts';

/**
 * A quantity per metre of height that is straight between knots and may jump at them, with its integral from 0.
 * Above the last knot it stays constant.
 */
export interface Column {
  /** Highest knot below which the density is 0 [m]. */
  readonly bottom: number;
  densityAt(height: number): number;
  /** Exact integral of the density from 0 to `height`; 0 below 0. */
  integralTo(height: number): number;
  /** Lowest height at which the integral reaches `amount` [>= 0]; `bottom` for 0. */
  heightOf(amount: number): number;
}

/**
 * Returns the column of `density`, which must be straight in height inside every segment of `knots`: the two
 * coefficients of each segment are fixed by two heights inside it, the integral is the sum of exact trapezia.
 * @source derived
 */
export function columnOf(knots: Knots, density: (height: number) => number): Column {
  const count = knots.at.length;
  const start = new Float64Array(count);
  const slope = new Float64Array(count);
  const below = new Float64Array(count);
  for (let k = 0; k < count; k++) {
    const from = knots.at[k]!;
    const bounded = k + 1 < count;
    const height = bounded ? knots.at[k + 1]! - from : 1;
    const low = density(from + 0.25 * height);
    const high = density(from + 0.75 * height);
    slope[k] = bounded ? (high - low) / (0.5 * height) : 0;
    start[k] = bounded ? low - 0.25 * height * slope[k]! : low;
    if (bounded) below[k + 1] = below[k]! + height * (start[k]! + 0.5 * height * slope[k]!);
  }
  let empty = 0;
  while (empty + 1 < count && below[empty + 1] === 0) empty++;
  return {
    bottom: knots.at[empty]!,
    densityAt(height) {
      const k = knots.segmentOf(height);
      return start[k]! + slope[k]! * (height - knots.at[k]!);
    },
    integralTo(height) {
      if (height <= 0) return 0;
      const k = knots.segmentOf(height);
      const h = height - knots.at[k]!;
      return below[k]! + h * (start[k]! + 0.5 * h * slope[k]!);
    },
    heightOf(amount) {
      let k = empty;
      while (k + 1 < count && amount > below[k + 1]!) k++;
      const rest = amount - below[k]!;
      // Root of (slope/2) h^2 + start h = rest, in the form that does not cancel.
      const root = Math.sqrt(Math.max(0, start[k]! * start[k]! + 2 * slope[k]! * rest));
      return knots.at[k]! + (rest > 0 ? (2 * rest) / (start[k]! + root) : 0);
    },
  };
}
