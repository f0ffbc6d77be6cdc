import { bodyRate, energeticsOf } from '../life/energetics.ts';
import { FIRST_LAND_FOOD, FOOD_SPECS, FOODS, type Food } from '../life/foods.ts';
import { dietOf, intakeShare } from '../life/foraging.ts';
import type { TraitValues } from '../life/traits.ts';
import type { Plan, Population } from '../plan/plan.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { medianTraits, needOfFood } from './need.ts';
import { type FoodProduction, type Larder, larderOf, larderTemperature } from './production.ts';
import { type SteadyPopulation, steadyPopulation } from './steady-population.ts';

/** How many animals of one population a food could feed alone. */
export interface FedAdults {
  readonly population: string;
  readonly name: string;
  /** Full-grown adults kept alive, neither growing nor breeding [1], >= 0. */
  readonly adults: number;
  /**
   * Adults and young of a population that holds its number on as much food [1]; 0 for a species that does not replace
   * itself. Where food is short most adults are small, so there are more of them than of full-grown ones.
   */
  readonly withYoung: number;
  readonly young: number;
  /** Whether the food by itself lies dense and rich enough that they breed on it. */
  readonly breeds: boolean;
}

/** One food of a plan and whom it carries. */
export interface FoodCapacity {
  readonly food: Food;
  readonly foodName: string;
  /** Made or given a day when nobody eats it [mg C/d]. */
  readonly production: number;
  readonly eaters: readonly FedAdults[];
}

/** Part of what arises that animals can get before it falls apart or out of reach [1], and of what is given or lies there whole. @source assumed */
const WITHIN_REACH = 0.7;
const OF_WHOLE = 0.9;
const WHOLE: ReadonlySet<Food> = new Set(['feed', 'litter', 'land litter', 'remains']);
const USUAL_DAYS = 120;

/**
 * How many animals each food of a plan carries, one species at a time and with nothing else to eat.
 * full-grown adults = reach production / (upkeep of an adult / efficiency); a steady population by `steadyPopulation`;
 * detritus is eaten again as faeces: 1 / (1 - reach (1 - efficiency)) times as much.
 * @param days over which production is averaged, 120 when left out
 * @throws RangeError as `run`
 * @validity a long-run mean: numbers swing about it; several foods together carry more, but not their sum, since what is
 * not eaten of feed and leaves is counted again as detritus; hunters, crowding, water and air are left out
 * @source derived from `larderOf`, `upkeepOfAdult` and `steadyPopulation`
 */
export function carryingCapacity(plan: Plan, days: number = USUAL_DAYS): FoodCapacity[] {
  const larder = larderOf(plan, days);
  const eaters = plan.populations.map((population) => eaterOf(population, larder));
  return larder.productions
    .filter(({ perDay }) => perDay > 0)
    .map((production) => ({
      food: production.food,
      foodName: FOOD_SPECS[FOODS.indexOf(production.food)]!.name,
      production: production.perDay * MOLAR_MASS.carbon * 1000,
      eaters: eaters.flatMap((eater) => fedBy(eater, production, larder)),
    }))
    .filter((capacity) => capacity.eaters.length > 0);
}

interface Eater {
  readonly population: Population;
  readonly traits: TraitValues;
  readonly steady: SteadyPopulation | undefined;
  /** Temperature factor [1]. */
  readonly rate: number;
}

function eaterOf(population: Population, larder: Larder): Eater {
  const traits = medianTraits(population);
  const species = { id: population.id, traits: population.traits, values: traits };
  return {
    population,
    traits,
    steady: steadyPopulation(species, larderTemperature(larder, traits)),
    rate: rateIn(larder, traits),
  };
}

function fedBy(
  { population, traits, steady, rate }: Eater,
  production: FoodProduction,
  larder: Larder,
): FedAdults[] {
  const { food, perDay } = production;
  const need = needOfFood(traits, food, rate);
  if (need === undefined) return [];
  const efficiency = traits[FOOD_SPECS[FOODS.indexOf(food)]!.efficiency];
  const reach = WHOLE.has(food) ? OF_WHOLE : WITHIN_REACH;
  const again = food === 'detritus' ? 1 / (1 - reach * (1 - efficiency)) : 1;
  const eaten = reach * again * perDay;
  return [
    {
      population: population.id,
      name: population.name,
      adults: eaten / need,
      withYoung: steady ? eaten * efficiency * steady.adults : 0,
      young: steady ? eaten * efficiency * steady.young : 0,
      breeds: steady !== undefined && rationOn(traits, production, larder) >= steady.ration,
    },
  ];
}

/** Assimilation over that with ample food, for the first who come to a food that nobody else eats [0..1]. */
function rationOn(
  traits: TraitValues,
  { food, stock }: FoodProduction,
  { submergedArea, landArea }: Larder,
): number {
  const diet = dietOf(traits);
  const energetics = energeticsOf(traits);
  const k = FOODS.indexOf(food);
  const wet = traits.shareInWater;
  const per = k < FIRST_LAND_FOOD ? wet / submergedArea : landArea > 0 ? (1 - wet) / landArea : 0;
  const hidden = food === 'algae' ? diet.algaeRefuge * submergedArea : 0;
  const share = intakeShare(diet, diet.preference[k]! * Math.max(0, stock - hidden) * per);
  return share * Math.min(1, (energetics.ingestion * diet.efficiency[k]!) / energetics.assimilation);
}

/** Temperature factor of a species in the place of a larder [1]. @source derived */
export function rateIn(larder: Larder, traits: TraitValues): number {
  return bodyRate(traits, larderTemperature(larder, traits));
}
