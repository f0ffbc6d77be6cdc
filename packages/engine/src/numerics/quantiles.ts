/**
 * Quantile of sorted values [their unit], by linear interpolation between order statistics (type 7).
 * @param sorted ascending, at least one value
 * @param probability 0 to 1 [1]
 * @throws RangeError when there is no value or the probability lies outside 0 to 1
 * @source hyndman-fan-1996, definition 7
 */
export function quantileOfSorted(sorted: Float64Array, probability: number): number {
  if (sorted.length === 0) throw new RangeError('quantile of no values');
  if (!(probability >= 0 && probability <= 1)) throw new RangeError(`quantile at probability ${probability}`);
  const position = probability * (sorted.length - 1);
  const below = Math.floor(position);
  const low = sorted[below]!;
  if (position === below) return low;
  return low + (position - below) * (sorted[below + 1]! - low);
}

/**
 * Quantiles of values [their unit] at several probabilities (type 7), in their order. Sorts `values` in place.
 * @param values at least one, finite
 * @param probabilities 0 to 1 each [1]
 * @throws RangeError when there is no value or a probability lies outside 0 to 1
 * @source hyndman-fan-1996, definition 7
 */
export function quantiles(values: Float64Array, probabilities: readonly number[]): number[] {
  values.sort();
  return probabilities.map((probability) => quantileOfSorted(values, probability));
}

/** The median of some values, and what a tenth and nine tenths of them do not exceed [their unit]. */
export interface Spread {
  readonly q10: number;
  readonly q50: number;
  readonly q90: number;
}

/**
 * Median, tenth and nine tenths of values [their unit] (type 7).
 * @param values at least one, finite
 * @throws RangeError when there is no value
 * @source hyndman-fan-1996, definition 7
 */
export function spreadOf(values: ArrayLike<number>): Spread {
  const [q10 = 0, q50 = 0, q90 = 0] = quantiles(Float64Array.from(values), [0.1, 0.5, 0.9]);
  return { q10, q50, q90 };
}
