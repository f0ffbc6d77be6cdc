import { logNormalCumulative, millsRatio } from '../numerics/distributions.ts';
import { exp, log } from '../numerics/elementary.ts';
import { quantiles } from '../numerics/quantiles.ts';
import { createRandom } from '../numerics/random.ts';
import { CONFIDENCE, type Estimate } from './count.ts';
import type { DiffusionGrowth } from './diffusion-growth.ts';

/** Numbers that grow by a rate and walk by chance. */
export interface Walk {
  /** mu [1/d]. */
  readonly rate: number;
  /** sigma squared, >= 0 [1/d]. */
  readonly variance: number;
}

const ROOT_TWO_PI = 2.5066282746310002;

/** From how many to how many numbers fall; both > 0 [animals]. */
export interface Fall {
  readonly from: number;
  readonly below: number;
}

function distanceOf({ from, below }: Fall): number {
  if (!(from > 0 && below > 0)) throw new RangeError(`a fall from ${from} to below ${below}`);
  return log(from / below);
}

/**
 * Chance that numbers fall to `below` within `days` [1], 0 to 1, by the first passage of a walk with drift:
 *   G(t) = Phi((-d - mu t)/sqrt(s2 t)) + exp(-2 mu d/s2) Phi((-d + mu t)/sqrt(s2 t)),  d = ln(from/below)
 * @param walk rate and variance
 * @param fall from how many to how many; 1 when already there
 * @param days >= 0 [d]
 * @throws RangeError when numbers are not above 0
 * @source dennis-1991
 */
export function chanceOfFalling({ rate, variance }: Walk, fall: Fall, days: number): number {
  const d = distanceOf(fall);
  if (d <= 0) return 1;
  if (!(days > 0)) return 0;
  const width = Math.sqrt(variance * days);
  if (!(width > 0)) return rate < 0 && d + rate * days <= 0 ? 1 : 0;
  const straight = exp(logNormalCumulative((-d - rate * days) / width));
  return Math.min(1, straight + returning({ rate, variance }, d, days));
}

/** The second term; where numbers shrink its factors are great and small, and are taken together. */
function returning({ rate, variance }: Walk, d: number, days: number): number {
  const width = Math.sqrt(variance * days);
  if (rate >= 0) return exp((-2 * rate * d) / variance + logNormalCumulative((-d + rate * days) / width));
  const off = (d + rate * days) / width;
  return (exp((-off * off) / 2) * millsRatio((d - rate * days) / width)) / ROOT_TWO_PI;
}

/**
 * Chance that numbers ever fall to `below` [1], 0 to 1: 1 when they do not grow, else exp(-2 mu d/s2).
 * @param walk rate and variance
 * @param fall from how many to how many
 * @throws RangeError when numbers are not above 0
 * @source dennis-1991
 */
export function chanceOfEverFalling({ rate, variance }: Walk, fall: Fall): number {
  const d = distanceOf(fall);
  if (d <= 0) return 1;
  if (rate <= 0) return rate < 0 || variance > 0 ? 1 : 0;
  return variance > 0 ? exp((-2 * rate * d) / variance) : 0;
}

/** What counts say of a fall within some days. */
export interface FallingRisk extends Fall {
  readonly days: number;
  /** Chance within those days, with what rate and scatter leave open [1]. */
  readonly chance: Estimate;
  /** Chance without limit of time [1]. */
  readonly ever: number;
  /** Mean time until then of numbers that shrink [d]. */
  readonly meanDays?: number;
}

const DRAWS = 2000;

/**
 * Risk of falling below a number, its interval from 2000 draws of what the counts leave open: mu about its estimate
 * with sigma2/span, sigma2 as sigma2 chi2(q-1)/(q-1). Undefined where there is a single stretch.
 * @param growth as the counts gave it
 * @param fall from how many to how many
 * @param days within which [d]
 * @param seed of the draws
 * @throws RangeError when numbers are not above 0
 * @source dennis-1991 for the chance; morris-doak-2002 ch. 3 for the draws
 */
export function fallingRisk(
  { rate, variance, span, stretches }: DiffusionGrowth,
  fall: Fall,
  days: number,
  seed = 1,
): FallingRisk | undefined {
  if (!variance) return undefined;
  const walk = { rate, variance: variance.value };
  const random = createRandom(seed, 'falling-risk');
  const freedom = stretches - 1;
  const draws = Float64Array.from({ length: DRAWS }, () => {
    const drawn = (variance.value * 2 * random.gamma(freedom / 2)) / freedom;
    const off = random.normal() * Math.sqrt(drawn / span);
    return chanceOfFalling({ rate: rate + off, variance: drawn }, fall, days);
  });
  const [low = 0, high = 1] = quantiles(draws, [(1 - CONFIDENCE) / 2, (1 + CONFIDENCE) / 2]);
  const value = chanceOfFalling(walk, fall, days);
  const distance = distanceOf(fall);
  return {
    ...fall,
    days,
    chance: { value, low: Math.min(low, value), high: Math.max(high, value) },
    ever: chanceOfEverFalling(walk, fall),
    ...(rate < 0 && distance > 0 ? { meanDays: distance / -rate } : {}),
  };
}
