/**
 * Heights at which something about the section changes, ascending [m]. Segment k runs from `at[k]` (exclusive) to
 * `at[k + 1]` (inclusive); the last segment is open upwards.
 */
export interface Knots {
  readonly at: Float64Array;
  /** Segment a height lies in; heights at or below the first knot belong to segment 0. */
  segmentOf(height: number): number;
}

/** Heights closer together than this count as one [m]. */
const SAME_HEIGHT = 1e-9;

/**
 * Returns the knots for the given heights [m], from 0 to `top`; heights outside are left out.
 * @source derived
 */
export function knotsAt(heights: readonly number[], top: number): Knots {
  const inside = heights.filter((height) => height > SAME_HEIGHT && height < top - SAME_HEIGHT);
  const distinct: number[] = [0];
  for (const height of [...inside, top].sort((a, b) => a - b)) {
    if (height - (distinct.at(-1) as number) > SAME_HEIGHT) distinct.push(height);
  }
  const at = Float64Array.from(distinct);
  let last = 0;
  return {
    at,
    segmentOf(height) {
      // The level moves little from call to call: start where the last one ended.
      let segment = last;
      while (segment + 1 < at.length && height > at[segment + 1]!) segment++;
      while (segment > 0 && height <= at[segment]!) segment--;
      last = segment;
      return segment;
    },
  };
}
