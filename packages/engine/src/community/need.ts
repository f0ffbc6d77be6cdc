import { type Energetics, energeticsOf } from '../life/energetics.ts';
import { FOOD_SPECS, FOODS, type Food } from '../life/foods.ts';
import { checkTraits, type TraitValues } from '../life/traits.ts';
import type { Population } from '../plan/plan.ts';

/** Full-grown size by which adults are counted, over end length. @source assumed: as founders and keepers' counts */
const FULL_GROWN = 0.9;

/** Median traits of a population. @throws RangeError when they contradict each other. `derived`. */
export function medianTraits({ id, traits: { priors } }: Population): TraitValues {
  return checkTraits(
    id,
    Object.fromEntries(Object.entries(priors).map(([key, { median }]) => [key, median])),
  );
}

/**
 * Carbon an adult must assimilate a day to keep its body and its ripeness, without growing or breeding [mol/d], > 0.
 * rate (m L^3 + J min(L, Lpuberty)^3), L = 0.9 of the full-grown length.
 * @param rate temperature factor [1]
 * @source derived from `animalDay`
 */
export function upkeepOfAdult(energetics: Energetics, rate: number): number {
  const length = FULL_GROWN * energetics.fullGrown;
  const ripe = Math.min(length, energetics.puberty);
  return (
    rate * (energetics.upkeep * length * length * length + energetics.maturityUpkeep * ripe * ripe * ripe)
  );
}

/** What an adult of a population must eat of one food a day if it had nothing else [mol C/d]; undefined for none it eats. */
export function needOfFood(traits: TraitValues, food: Food, rate: number): number | undefined {
  const { preference, efficiency } = FOOD_SPECS[FOODS.indexOf(food)]!;
  if (!(traits[preference] > 0)) return undefined;
  return upkeepOfAdult(energeticsOf(traits), rate) / traits[efficiency];
}
