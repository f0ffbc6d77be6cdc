import { studentQuantile } from '../numerics/distributions.ts';
import { exp, log } from '../numerics/elementary.ts';
import { type Count, countsAboveNone, type Estimate, UPPER } from './count.ts';

/** A straight line through the logarithms of counts. */
export interface LogLinearTrend {
  /** Its slope, with a 95 % interval [1/d]. */
  readonly rate: Estimate;
  /** The line on a day, with the 95 % interval of the line (not of a count) [animals]. */
  at(day: number): Estimate;
}

/** Weight of a count: the inverse of its error's share squared; 1 each unless every count has an error. */
function weightsOf(counts: readonly Count[]): number[] {
  if (!counts.every(({ error }) => error !== undefined)) return counts.map(() => 1);
  return counts.map(({ number, error }) => (number / error!) * (number / error!));
}

/**
 * Growth rate by regression of ln N on time, counts weighted by their errors where each has one; undefined with fewer
 * than three counts above 0. All scatter counts as miscounting, independent from one count to the next.
 *   b = sum w (t - tm)(y - ym)/sum w (t - tm)^2,  s2 = sum w (y - a - b t)^2/(n - 2)
 * @param counts days rising; zeros are left out
 * @throws RangeError when days do not rise or a count is no number of 0 or more
 * @source draper-smith-1998 ch. 1
 */
export function logLinearTrend(counts: readonly Count[]): LogLinearTrend | undefined {
  const used = countsAboveNone(counts);
  const n = used.length;
  if (n < 3) return undefined;
  const w = weightsOf(used);
  const y = used.map(({ number }) => log(number));
  const total = (of: (i: number) => number): number => used.reduce((sum, _, i) => sum + w[i]! * of(i), 0);
  const weight = total(() => 1);
  const middle = total((i) => used[i]!.day) / weight;
  const level = total((i) => y[i]!) / weight;
  const spread = total((i) => (used[i]!.day - middle) * (used[i]!.day - middle));
  const slope = total((i) => (used[i]!.day - middle) * (y[i]! - level)) / spread;
  const off = (i: number): number => y[i]! - level - slope * (used[i]!.day - middle);
  const variance = total((i) => off(i) * off(i)) / (n - 2);
  const t = studentQuantile(UPPER, n - 2);
  const half = t * Math.sqrt(variance / spread);
  return {
    rate: { value: slope, low: slope - half, high: slope + half },
    at(day) {
      const away = day - middle;
      const line = level + slope * away;
      const reach = t * Math.sqrt(variance * (1 / weight + (away * away) / spread));
      return { value: exp(line), low: exp(line - reach), high: exp(line + reach) };
    },
  };
}
