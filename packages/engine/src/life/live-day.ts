import { type BroodDay, developBroods, layEggs } from './breeding.ts';
import type { Demography } from './demography.ts';
import {
  ageAndDie,
  crowdingTimes,
  type DayOutside,
  harmlessWater,
  hazardOfAir,
  hazardOfDrying,
  setWaterHazards,
} from './dying.ts';
import { bodyRate, broodRate } from './energetics.ts';
import { feedAndGrow, type Meal } from './feeding.ts';
import type { LivingPopulation } from './living-population.ts';
import { dryGroundHazard } from './pupation.ts';
import { followSexes } from './sexes.ts';
import { setSlowing } from './sublethal.ts';
import { MILD_AIR, type Surroundings } from './surroundings.ts';
import { placedPart } from './territory.ts';

/**
 * Temperature of the bodies of a population [degC]: of the water for the part of its life spent there, else of the air.
 * @source derived
 */
export function bodyTemperature({ inWater }: LivingPopulation, around: Surroundings): number {
  return inWater * around.water.temperature + (1 - inWater) * (around.air ?? MILD_AIR).temperature;
}

/** Hazard of eggs in ground that dries [1/d]; 0 for those that do not lay in it. */
function dryGroundOf(population: LivingPopulation, { air = MILD_AIR }: Surroundings): number {
  return population.traits.wetGround > 0 ? dryGroundHazard(population, air) : 0;
}

const grown = harmlessWater();
const young = harmlessWater();
const ON_LAND = harmlessWater();

/**
 * Lets one population live a day on its meal: it grows, ages and dies, releases young and lays, in this order.
 * What came of it is added to `population.day`, which must be cleared before. Laid eggs take no harm of nitrite: they have
 * no gills yet.
 */
export function liveDay(
  population: LivingPopulation,
  meal: Meal,
  around: Surroundings,
  demography: Demography,
): void {
  const { traits } = population;
  const temperature = bodyTemperature(population, around);
  const meetsWater = traits.shareInWater > 0 || traits.lengthAtChange > 0;
  // Nobody is harmed by water that is gone: who lies dry dies of that.
  const isInReach = meetsWater && !around.water.isGone;
  if (isInReach) setWaterHazards(population, around.water, grown, young);
  const outside: DayOutside = {
    around,
    rate: bodyRate(traits, temperature),
    grown: isInReach ? grown : ON_LAND,
    young: isInReach ? young : ON_LAND,
    dry: meetsWater ? hazardOfDrying(population, around.water) : 0,
    air: hazardOfAir(population, around),
  };
  population.crowded = crowdingTimes(population, around);
  population.placed = placedPart(population, around);
  followSexes(population, demography);
  feedAndGrow(population, meal, outside.rate);
  if (meetsWater) setSlowing(population, around.water);
  const eggsInWater = traits.lengthAtChange > 0 ? 1 : traits.shareInWater;
  const broodDay: BroodDay = {
    temperature,
    rate: broodRate(traits, temperature),
    outside:
      eggsInWater * (outside.grown.water + outside.dry) +
      (1 - eggsInWater) * (outside.air + dryGroundOf(population, around)),
    adultsLost: ageAndDie(population, outside, demography),
  };
  developBroods(population, broodDay, demography);
  layEggs(population, broodDay, demography);
}
