import type { AirConditions } from './surroundings.ts';
import type { TraitValues } from './traits.ts';
import { hazardBeyond } from './water-stress.ts';

/**
 * Moisture of the ground over what it can hold [1] at which plants wilt for good: down to there the air in its pores is
 * nearly saturated, 98.9 % at the wilting point. @source assumed for ordinary soils; bayley-holmstrup-1999 for the humidity
 */
const WILTING = 0.2;

/**
 * Relative humidity where an animal stays [%]: that of the air, raised by the moist ground and litter it creeps into.
 *   h + (100 - h) shelter min(1, wetness/0.2)
 * @param shelter part of the dryness that moist ground spares it [0..1]
 * @source assumed: how much of its time an animal spends in pores and litter is judgement
 */
export function humidityAround({ humidity, groundWetness }: AirConditions, shelter: number): number {
  return humidity + (100 - humidity) * shelter * Math.min(1, groundWetness / WILTING);
}

/**
 * Hazard of death by dry or too cold or warm air [1/d], >= 0: sum of `hazardBeyond`.
 * @source derived; the square beyond the limit is judgement, as for water
 */
export function airHazard(traits: TraitValues, air: AirConditions): number {
  const cold = traits.airTemperatureLow - air.temperature;
  const hot = air.temperature - traits.airTemperatureHigh;
  const dry = traits.humidityLow - humidityAround(air, traits.moistShelter);
  return (
    hazardBeyond(Math.max(cold, hot), traits.airTemperatureMargin) + hazardBeyond(dry, traits.humidityMargin)
  );
}
