import type { ShareOfRuns } from './buffer-question.ts';

/** Standard normal quantile at 95 %: ends of a two-sided 90 % interval. */
const Z = 1.6448536269514722;

/**
 * A share of runs [0..1] with its 90 % interval after Wilson:
 * (k + z^2/2 +- z sqrt(k (n - k)/n + z^2/4)) / (n + z^2).
 * @param count k, runs in which it is so, 0 to n
 * @param runs n, > 0
 * @throws RangeError when there are no runs or more counted than run.
 * @source wilson-1927
 */
export function shareOfRuns(count: number, runs: number): ShareOfRuns {
  if (!(runs > 0 && count >= 0 && count <= runs))
    throw new RangeError(`${count} of ${runs} runs is no share`);
  const middle = count + (Z * Z) / 2;
  const reach = Z * Math.sqrt((count * (runs - count)) / runs + (Z * Z) / 4);
  const all = runs + Z * Z;
  return {
    share: count / runs,
    low: Math.max(0, middle - reach) / all,
    high: Math.min(all, middle + reach) / all,
    runs,
  };
}
