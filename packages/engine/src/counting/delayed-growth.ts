import { delayedCourse } from '../numerics/delay-equation.ts';
import { exp, log } from '../numerics/elementary.ts';

/**
 * Grown animals whose young breed a fixed time after they were born, and of whom fewer come through the more grown
 * animals there are: N' = P N(t-tau) exp(-N(t-tau)/N0) - delta N.
 */
export interface DelayedGrowth {
  /** Young that grow up, of a grown animal without company, P [1/d], > 0. */
  readonly recruits: number;
  /** Grown animals at which a part of 1/e of the young comes through, N0 [animals], > 0. */
  readonly crowding: number;
  /** Loss of grown animals, delta [1/d], > 0. */
  readonly loss: number;
  /** From birth to breeding, tau [d], > 0. */
  readonly maturity: number;
}

/** What is known of a population that has a limit and a delay. */
export interface KnownGrowth {
  /** Growth rate of few animals, r [1/d], > 0. */
  readonly rate: number;
  /** Numbers at which it rests, K [animals], > 0. */
  readonly limit: number;
  /** Loss of grown animals [1/d], > 0. */
  readonly loss: number;
  /** From birth to breeding [d], > 0. */
  readonly maturity: number;
}

/**
 * The delayed growth that starts with a given rate and rests at a given limit:
 *   P = (r + delta) exp(r tau),  N0 = K/ln(P/delta)
 * @param known rate, limit, loss and maturity, all above 0
 * @throws RangeError when one is not above 0
 * @source derived: r + delta = P exp(-r tau) for few animals, delta = P exp(-K/N0) at rest
 */
export function delayedGrowthOf({ rate, limit, loss, maturity }: KnownGrowth): DelayedGrowth {
  if (!(rate > 0 && limit > 0 && loss > 0 && maturity > 0))
    throw new RangeError(
      `a rate of ${rate}, a limit of ${limit}, a loss of ${loss} and a maturity of ${maturity}`,
    );
  const recruits = (rate + loss) * exp(rate * maturity);
  return { recruits, loss, maturity, crowding: limit / log(recruits / loss) };
}

/**
 * Numbers at which a delayed growth rests, N0 ln(P/delta) [animals]; 0 or less where it dies out.
 * @param growth recruits, crowding and loss above 0
 * @source gurney-blythe-nisbet-1980
 */
export function restOf({ recruits, crowding, loss }: DelayedGrowth): number {
  return crowding * log(recruits / loss);
}

/** Steps in a delay: an error of about a part in 10^9. */
const STEPS = 1000;

/**
 * Numbers of grown animals at rising times [animals], from so many all the time before.
 * @param growth the equation's figures
 * @param before all the time until 0 [animals]
 * @param times >= 0, rising [d]
 * @throws RangeError when times do not rise
 * @source gurney-blythe-nisbet-1980
 */
export function delayedNumbers(growth: DelayedGrowth, before: number, times: readonly number[]): number[] {
  const { recruits, crowding, loss, maturity } = growth;
  const rate = (now: number, then: number): number => recruits * then * exp(-then / crowding) - loss * now;
  return delayedCourse({ rate, delay: maturity, history: before, steps: STEPS }, times);
}

/** How numbers with a delay come to their limit. */
export interface Overshoot {
  /** The most there are on the way [animals]. */
  readonly most: number;
  /** The fewest there are after that [animals]. */
  readonly fewest: number;
  /** Whether swings of more than a tenth of the limit go on after fifty delays. */
  readonly swings: boolean;
}

const DELAYS = 60;
const IN_A_DELAY = 40;

/**
 * What a delay makes of the way to the limit: how far numbers overshoot [animals], how far they fall back, and whether
 * they go on swinging. From a twentieth of the limit on.
 * @param known rate, limit, loss and maturity, all above 0
 * @throws RangeError when one is not above 0
 * @source gurney-blythe-nisbet-1980
 */
export function overshootOf(known: KnownGrowth): Overshoot {
  const growth = delayedGrowthOf(known);
  const times = Array.from(
    { length: DELAYS * IN_A_DELAY },
    (_, i) => ((i + 1) * known.maturity) / IN_A_DELAY,
  );
  const numbers = delayedNumbers(growth, known.limit / 20, times);
  const most = Math.max(...numbers);
  const late = numbers.slice(50 * IN_A_DELAY);
  return {
    most,
    fewest: Math.min(...numbers.slice(numbers.indexOf(most))),
    swings: Math.max(...late) - Math.min(...late) > known.limit / 10,
  };
}
