/** One count of a population. */
export interface Count {
  /** Day on which it was taken; only differences between days matter [d]. */
  readonly day: number;
  /** Animals counted, or animals in a unit of effort, >= 0. */
  readonly number: number;
  /** What the counting itself may be off by, as a standard deviation, > 0 [as `number`]. */
  readonly error?: number;
}

/** A figure and its 95 % interval. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

/** Share of cases in which the true value should lie in an interval [1]. */
export const CONFIDENCE = 0.95;
/** Part below the upper end of such an interval [1]. */
export const UPPER = (1 + CONFIDENCE) / 2;

/**
 * The counts above 0, in their order. Animals that none was seen of have no logarithm.
 * @throws RangeError when days do not rise or a count is no number of 0 or more
 * @source definition
 */
export function countsAboveNone(counts: readonly Count[]): readonly Count[] {
  for (const [i, { day, number, error }] of counts.entries()) {
    if (!(Number.isFinite(day) && (i === 0 || day > counts[i - 1]!.day)))
      throw new RangeError(`day ${day} of a count does not follow the one before; days must rise`);
    if (!(number >= 0 && number < Number.POSITIVE_INFINITY))
      throw new RangeError(`the count of day ${day} is ${number}, not 0 or more`);
    if (error !== undefined && !(error > 0 && error < Number.POSITIVE_INFINITY))
      throw new RangeError(`the error of the count of day ${day} is ${error}, not above 0`);
  }
  return counts.filter(({ number }) => number > 0);
}
