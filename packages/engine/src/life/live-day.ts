import { type BroodDay, developBroods, layEggs } from './breeding.ts';
import type { Demography } from './demography.ts';
import { ageAndDie, type DayInWater, waterHazard } from './dying.ts';
import { bodyRate, broodRate } from './energetics.ts';
import { feedAndGrow, type Meal } from './feeding.ts';
import { clearDay, type LivingPopulation } from './living-population.ts';
import type { WaterConditions } from './water-stress.ts';

/** What surrounds a population today: the water's quality and its volume [m3]. */
export interface Surroundings {
  readonly water: WaterConditions;
  readonly volume: number;
}

/**
 * Lets one population live a day on its meal: it grows, ages and dies, releases young and lays, in this order.
 * What came of it stands in `population.day`.
 */
export function liveDay(
  population: LivingPopulation,
  meal: Meal,
  { water, volume }: Surroundings,
  demography: Demography,
): void {
  clearDay(population.day);
  const { traits } = population;
  const inWater: DayInWater = { water, volume, rate: bodyRate(traits, water.temperature) };
  feedAndGrow(population, meal, inWater.rate);
  const hazard = waterHazard(population, water);
  const broodDay: BroodDay = {
    temperature: water.temperature,
    rate: broodRate(traits, water.temperature),
    water: hazard,
    adultsLost: ageAndDie(population, inWater, hazard, demography),
  };
  developBroods(population, broodDay, demography);
  layEggs(population, broodDay, demography);
}
