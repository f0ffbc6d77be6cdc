import { chiSquaredQuantile, studentQuantile } from '../numerics/distributions.ts';
import { log } from '../numerics/elementary.ts';
import { type Count, countsAboveNone, type Estimate, UPPER } from './count.ts';

/** Growth without limit on which good and bad days fall by chance. */
export interface DiffusionGrowth {
  /** Stretches between counts above 0. */
  readonly stretches: number;
  /** From the first such count to the last [d]. */
  readonly span: number;
  /** Growth rate of the logarithm of numbers, mu; the interval is left out of a single stretch [1/d]. */
  readonly rate: number;
  readonly rateRange?: readonly [low: number, high: number];
  /** How much numbers scatter about that growth, sigma squared; left out of a single stretch [1/d]. */
  readonly variance?: Estimate;
}

/**
 * Growth rate and scatter of a population from counts that need not be evenly spaced, or undefined with fewer than two
 * counts above 0. ln N walks: with a rate mu and a variance sigma2 per day,
 *   mu = ln(Nq/N0)/(tq - t0),  sigma2 = sum (ln(Ni/Ni-1) - mu ti)^2/ti / (q - 1)
 * and 95 % intervals mu +- t(q-1) sqrt(sigma2/(tq - t0)) and (q-1) sigma2/chi2(q-1). All scatter counts as good and bad
 * days; errors of counting make it look wider and the risk greater.
 * @param counts days rising; zeros are left out
 * @throws RangeError when days do not rise or a count is no number of 0 or more
 * @source dennis-1991
 */
export function diffusionGrowth(counts: readonly Count[]): DiffusionGrowth | undefined {
  const used = countsAboveNone(counts);
  const first = used[0];
  const last = used.at(-1);
  if (!first || !last || used.length < 2) return undefined;
  const stretches = used.length - 1;
  const span = last.day - first.day;
  const rate = log(last.number / first.number) / span;
  if (stretches < 2) return { stretches, span, rate };
  const squares = used.slice(1).reduce((sum, { day, number }, i) => {
    const days = day - used[i]!.day;
    const off = log(number / used[i]!.number) - rate * days;
    return sum + (off * off) / days;
  }, 0);
  const freedom = stretches - 1;
  const half = studentQuantile(UPPER, freedom) * Math.sqrt(squares / freedom / span);
  return {
    stretches,
    span,
    rate,
    rateRange: [rate - half, rate + half],
    variance: {
      value: squares / freedom,
      low: squares / chiSquaredQuantile(UPPER, freedom),
      high: squares / chiSquaredQuantile(1 - UPPER, freedom),
    },
  };
}
