import { exp, log } from '../numerics/elementary.ts';

/** Length of the standard test [d]. */
const TEST_DAYS = 4;

/** What tells how a poison acts on a species, all concentrations in one unit. */
export interface PoisonResponse {
  /** Concentration that kills nobody however long it lasts, z. */
  readonly noEffect: number;
  /** Concentration at which half die in four days, C. */
  readonly medianLethal: number;
  /** Rate at which the body follows the water around it, k [1/d], > 0. */
  readonly recovery: number;
}

/**
 * Deaths per day and concentration of body burden above the threshold, b [1/d per unit], > 0, from a 96-hour median
 * lethal concentration C: burden D = C (1 - exp(-k t)), hazard b (D - z) once D > z, and half dead after t = 4 d:
 *   b = ln 2 / (C ((4 - t0) - (exp(-k t0) - exp(-4 k))/k) - z (4 - t0)),  t0 = -ln(1 - z/C)/k.
 * The threshold z must lie below C (1 - exp(-4 k)), else nobody would have died in the test.
 * @throws RangeError when the threshold is not reached within four days at C
 * @source jager-2011 (reduced model, stochastic death); the inversion is derived
 */
export function killingRate({ noEffect, medianLethal, recovery }: PoisonResponse): number {
  const onset = -log(1 - noEffect / medianLethal) / recovery;
  const left = TEST_DAYS - onset;
  if (!(left > 0))
    throw new RangeError(
      `no effect at ${noEffect} contradicts half dead in four days at ${medianLethal} of the same poison`,
    );
  const burden = left - (exp(-recovery * onset) - exp(-recovery * TEST_DAYS)) / recovery;
  return Math.LN2 / (medianLethal * burden - noEffect * left);
}

/** A poison in the bodies of a population. */
export interface Burden {
  /** In the body, as the concentration in the water it is in balance with. */
  level: number;
  /** The same, on average over the last day. */
  mean: number;
  readonly noEffect: number;
  /** Deaths per day and concentration above that. */
  readonly killing: number;
  /** Part of the distance from balance that is left after a day, and on average over it [0..1]. */
  readonly kept: number;
  readonly keptOnAverage: number;
}

/** Bodies free of a poison. @throws RangeError as `killingRate`. @source jager-2011 */
export function createBurden(response: PoisonResponse): Burden {
  const { noEffect, recovery } = response;
  const kept = exp(-recovery);
  return {
    level: 0,
    mean: 0,
    noEffect,
    killing: killingRate(response),
    kept,
    keptOnAverage: (1 - kept) / recovery,
  };
}

/**
 * Hazard of death by a poison over a day in water of constant concentration C [1/d], >= 0; moves the burden on by the day.
 *   D' = C + (D - C) exp(-k);  mean over the day  M = C + (D - C) (1 - exp(-k))/k;  hazard b max(0, M - z)
 * @param concentration C, in the unit of the response
 * @source jager-2011 (scaled one-compartment uptake, stochastic death); the mean is derived. The hazard of the mean burden
 * is a little less than the mean hazard on the one day on which the threshold is crossed.
 */
export function passBurden(burden: Burden, concentration: number): number {
  if (burden.level === 0 && concentration <= 0) {
    burden.mean = 0;
    return 0;
  }
  const distance = burden.level - concentration;
  burden.mean = concentration + distance * burden.keptOnAverage;
  burden.level = concentration + distance * burden.kept;
  return hazardOf(burden, 1);
}

/**
 * Hazard over the day last passed of animals that bear a part of the poison only [1/d], >= 0: b max(0, s M - z) for those
 * that die, and are harmed at all, at 1/s of the concentrations.
 * @param times s [1], > 0
 * @source derived: b goes with 1/C, so that b(C/s) (M - z/s) = b(C) (s M - z)
 */
export function hazardOf({ mean, noEffect, killing }: Burden, times: number): number {
  const above = times * mean - noEffect;
  return above > 0 ? killing * above : 0;
}
