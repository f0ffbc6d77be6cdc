import { exp, log } from '../numerics/elementary.ts';

/** What the lengths of an always fed animal follow, but for the pace. Lengths [mm]. */
export interface GrowthCurve {
  readonly end: number;
  /** Length up to which feeding per surface rises with length; 0 for those that start at full pace. */
  readonly accelerated: number;
}

/**
 * Feeding surface of an animal [mm2]: the square of its length, times L / Lj as long as it is shorter than Lj.
 * Young whose mouth and gut are still small for their size eat in proportion to their volume and so start slowly.
 * @param length L [mm], > 0
 * @source kooijman-2014: type M acceleration, specific assimilation in proportion to length from birth to Lj; here over that
 * of the adult, so that figures of adults stay as published (derived)
 */
export function feedingSquare(curve: Pick<GrowthCurve, 'accelerated'>, length: number): number {
  const { accelerated } = curve;
  return length < accelerated ? (length * length * length) / accelerated : length * length;
}

/**
 * Time in which an always fed animal grows from one length to another, times its von Bertalanffy rate r [1], >= 0.
 * Below Lj dL/dt = r L (Lend/Lj - 1), beyond it r (Lend - L); the two meet.
 * @param from, to lengths below the end length [mm]
 * @source derived: `energeticsOf` with `feedingSquare`, solved for time
 */
export function scaledTime({ end, accelerated }: GrowthCurve, from: number, to: number): number {
  if (from >= accelerated) return log((end - from) / (end - to));
  const early = log(Math.min(to, accelerated) / from) / (end / accelerated - 1);
  return to > accelerated ? early + log((end - accelerated) / (end - to)) : early;
}

/**
 * Length a scaled time before another one [mm], > 0 or below where the curve has no such beginning.
 * @param scaled time times r [1], >= 0
 * @source derived: the inverse of `scaledTime`
 */
export function lengthBefore({ end, accelerated }: GrowthCurve, length: number, scaled: number): number {
  if (length > accelerated) {
    const before = end - (end - length) * exp(scaled);
    if (accelerated === 0 || before >= accelerated) return before;
  }
  const from = Math.min(length, accelerated);
  const left = length > accelerated ? scaled + log((end - length) / (end - accelerated)) : scaled;
  return from * exp(-left * (end / accelerated - 1));
}
