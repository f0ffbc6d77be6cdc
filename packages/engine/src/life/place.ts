import { feedingSquare } from './growth-curve.ts';
import type { LivingPopulation } from './living-population.ts';
import { eats } from './pupation.ts';

/**
 * Part of its life that cohort i spends in the water [1]: all of it as a larva, then as its kind does.
 * @source derived: larvae change at a length
 */
export function cohortInWater({ traits, train }: LivingPopulation, i: number): number {
  return train.peak[i]! < traits.lengthAtChange ? 1 : traits.shareInWater;
}

/**
 * How much faster cohort i feeds, burns and grows than its grown kind [1], > 0: larvae at a pace of their own.
 * @source derived: a trait that lets larvae reach their length at the change in the time published
 */
export function paceOf({ traits, train }: LivingPopulation, i: number): number {
  return train.peak[i]! < traits.lengthAtChange ? traits.larvalPace : 1;
}

/**
 * Part of the population's feeding that happens in the water [1], weighted by feeding surface.
 * @source derived
 */
export function populationInWater(population: LivingPopulation): number {
  const { traits, train } = population;
  if (traits.lengthAtChange === 0 || train.size === 0) return traits.shareInWater;
  let all = 0;
  let wet = 0;
  for (let i = 0; i < train.size; i += 1) {
    const surface = train.count[i]! * surfaceOf(population, i);
    all += surface;
    wet += surface * cohortInWater(population, i);
  }
  return all > 0 ? wet / all : traits.shareInWater;
}

/**
 * Part of the food that falls to an animal of cohort i, as mm2 of feeding surface: the square of its length in the
 * middle of the day (less for young that start slowly), times its pace and its share.
 * @source jager-2013 eq. 1: assimilation in proportion to surface
 */
export function surfaceOf(population: LivingPopulation, i: number): number {
  if (!eats(population, i)) return 0;
  const { energetics, train } = population;
  return feedingSquare(energetics, train.middle[i]!) * paceOf(population, i) * train.share[i]!;
}
