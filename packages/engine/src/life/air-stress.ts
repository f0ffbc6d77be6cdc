import type { AirConditions } from './surroundings.ts';
import type { TraitValues } from './traits.ts';
import { hazardBeyond } from './water-stress.ts';

/**
 * Relative humidity where an animal stays [%]: that of the air, raised by the moist ground and litter it creeps into.
 * h + (100 - h) shelter wetness.
 * @param shelter part of the dryness that moist ground spares it [0..1]
 * @source assumed: pore air of wet soil is saturated; how much of its time an animal spends in it is judgement
 */
export function humidityAround({ humidity, groundWetness }: AirConditions, shelter: number): number {
  return humidity + (100 - humidity) * shelter * groundWetness;
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
