import { exp, log } from '../numerics/elementary.ts';
import type { TraitValues } from './traits.ts';

const LN2 = Math.LN2;
const TEST_DAYS = 4;

/** The water of one day as animals meet it. */
export interface WaterConditions {
  /** Mean of the day [degC]. */
  readonly temperature: number;
  /** Lowest of the day [mg/L]. */
  readonly oxygen: number;
  /** Mean un-ionised ammonia of the day [mg N/L]. */
  readonly unionisedAmmonia: number;
  readonly pH: number;
  /** General hardness [degrees dGH]. */
  readonly hardness: number;
}

/**
 * Hazard of death by a distance beyond a limit [1/d], >= 0: ln 2 / 4 d (x / margin)^2, so that half die in four
 * days one margin beyond and small transgressions count little.
 * @param beyond distance x beyond the limit, in the margin's unit; within the limit it is <= 0
 * @param margin > 0
 * @source assumed: published limits are thresholds without a time course; the square is judgement
 */
export function hazardBeyond(beyond: number, margin: number): number {
  if (!(beyond > 0)) return 0;
  const distance = beyond / margin;
  return (LN2 / TEST_DAYS) * distance * distance;
}

function outside(value: number, low: number, high: number): number {
  return Math.max(low - value, value - high);
}

/**
 * Hazard of death by temperature, pH, hardness and lack of oxygen together [1/d], >= 0.
 * @source derived: sum of `hazardBeyond` over the four
 */
export function toleranceHazard(traits: TraitValues, water: WaterConditions): number {
  const warmth = outside(water.temperature, traits.temperatureLow, traits.temperatureHigh);
  const acidity = outside(water.pH, traits.pHLow, traits.pHHigh);
  const hardness = outside(water.hardness, traits.hardnessLow, traits.hardnessHigh);
  return (
    hazardBeyond(warmth, traits.temperatureMargin) +
    hazardBeyond(acidity, traits.pHMargin) +
    hazardBeyond(hardness, traits.hardnessMargin) +
    hazardBeyond(traits.oxygenNeeded - water.oxygen, traits.oxygenMargin)
  );
}

/**
 * Deaths per day and concentration of body burden above the threshold, b [L/mg/d], > 0, from a 96-hour median
 * lethal concentration C: burden D = C (1 - exp(-k t)), hazard b (D - z) once D > z, and half dead after t = 4 d:
 *   b = ln 2 / (C ((4 - t0) - (exp(-k t0) - exp(-4 k))/k) - z (4 - t0)),  t0 = -ln(1 - z/C)/k.
 * @param medianLethal C [mg N/L]
 * @param noEffect z [mg N/L], below C (1 - exp(-4 k)), else nobody would have died in the test
 * @param recovery k [1/d], > 0
 * @throws RangeError when the threshold is not reached within four days at C
 * @source jager-2011 (reduced model, stochastic death); the inversion is derived
 */
export function killingRate(medianLethal: number, noEffect: number, recovery: number): number {
  const onset = -log(1 - noEffect / medianLethal) / recovery;
  const left = TEST_DAYS - onset;
  if (!(left > 0)) {
    throw new RangeError(
      `no effect at ${noEffect} mg N/L contradicts a 96-hour lethal ${medianLethal} mg N/L`,
    );
  }
  const burden = left - (exp(-recovery * onset) - exp(-recovery * TEST_DAYS)) / recovery;
  return LN2 / (medianLethal * burden - noEffect * left);
}

/**
 * Body burden after a day in water of constant ammonia [mg N/L], as the concentration it is in balance with.
 * D' = C + (D - C) exp(-k).
 * @param burden before, D [mg N/L]
 * @param concentration C [mg N/L]
 * @param recovery k [1/d]
 * @source jager-2011
 */
export function nextBurden(burden: number, concentration: number, recovery: number): number {
  return concentration + (burden - concentration) * exp(-recovery);
}

/**
 * Mean body burden over that day [mg N/L].
 * C + (D - C) (1 - exp(-k))/k.
 * @param burden at the start of the day, D [mg N/L]
 * @param concentration C [mg N/L]
 * @param recovery k [1/d], > 0
 * @source derived: mean of `nextBurden` over the day
 */
export function meanBurden(burden: number, concentration: number, recovery: number): number {
  return concentration + ((burden - concentration) * (1 - exp(-recovery))) / recovery;
}
