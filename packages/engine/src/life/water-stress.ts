import type { TraitValues } from './traits.ts';

const LN2 = Math.LN2;
const TEST_DAYS = 4;

/** The water of one day as animals meet it. */
export interface WaterConditions {
  /** Mean of the day [degC]. */
  readonly temperature: number;
  /** Lowest of the day [mg/L], and its mean; as the lowest when left out. */
  readonly oxygen: number;
  readonly oxygenMean?: number;
  /** Mean un-ionised ammonia of the day [mg N/L]. */
  readonly unionisedAmmonia: number;
  /** Ammonia and ammonium of the evening, and nitrate [mg N/L]; none when left out. */
  readonly totalAmmonia?: number;
  readonly nitrate?: number;
  readonly pH: number;
  /** General hardness [degrees dGH]. */
  readonly hardness: number;
  /** Nitrite of the evening [mg N/L] and chloride, which keeps it out of gills [mg/L]; none when left out. */
  readonly nitrite?: number;
  readonly chloride?: number;
  /** Dissolved copper [µg/L]; none when left out. */
  readonly copper?: number;
  /** Whether no water stands in the open any more; left out: it does. */
  readonly isGone?: boolean;
  /** Conductivity at 25 degC [mS/cm]; salt harms nobody when left out. */
  readonly conductivity?: number;
}

/** What of the water but poisons can kill, in the order `toleranceHazards` writes. */
export const TOLERANCES = ['temperature', 'pH', 'hardness', 'oxygen', 'salt'] as const;

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
 * Hazard of too little and too much salt [1/d], >= 0: `hazardBeyond` with a margin of its own on either side, since
 * animals of brackish water fade in fresh water over weeks, while those of fresh water die of brine within days.
 * @source derived
 */
function saltHazard(traits: TraitValues, conductivity: number): number {
  return (
    hazardBeyond(traits.saltLow - conductivity, traits.saltLowMargin) +
    hazardBeyond(conductivity - traits.saltHigh, traits.saltHighMargin)
  );
}

/**
 * Hazard of death by temperature, pH, hardness, lack of oxygen and salt together [1/d], >= 0.
 * @param into takes the hazard of each, in the order of TOLERANCES [1/d]
 * @source derived: sum of `hazardBeyond` over the five
 */
export function toleranceHazards(traits: TraitValues, water: WaterConditions, into: Float64Array): number {
  const { temperature, pH, hardness, oxygen, conductivity } = water;
  into[0] = hazardBeyond(
    outside(temperature, traits.temperatureLow, traits.temperatureHigh),
    traits.temperatureMargin,
  );
  into[1] = hazardBeyond(outside(pH, traits.pHLow, traits.pHHigh), traits.pHMargin);
  into[2] = hazardBeyond(outside(hardness, traits.hardnessLow, traits.hardnessHigh), traits.hardnessMargin);
  into[3] = hazardBeyond(traits.oxygenNeeded - oxygen, traits.oxygenMargin);
  into[4] = conductivity === undefined ? 0 : saltHazard(traits, conductivity);
  return into[0] + into[1] + into[2] + into[3] + into[4];
}
