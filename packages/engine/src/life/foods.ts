import { VARIABLE_INDEX, type VariableId } from '../variables/variables.ts';
import type { TraitId } from './traits.ts';

/** What animals eat, in the order of every array over foods. */
export const FOODS = ['algae', 'detritus', 'litter', 'feed', 'plants', 'biofilm'] as const;
export type Food = (typeof FOODS)[number];
export const FOOD_COUNT = FOODS.length;

/** Where each food lies, which driver clears it, and which traits speak of it. */
export interface FoodSpec {
  readonly food: Food;
  /** State that holds its carbon [mol C]. */
  readonly pool: VariableId;
  /** Driver that sets how fast animals clear it [1/s]. */
  readonly grazing: VariableId;
  readonly preference: TraitId;
  readonly efficiency: TraitId;
}

export const FOOD_SPECS: readonly FoodSpec[] = [
  {
    food: 'algae',
    pool: 'attachedAlgae',
    grazing: 'grazingOnAlgae',
    preference: 'preferenceForAlgae',
    efficiency: 'efficiencyOnAlgae',
  },
  {
    food: 'detritus',
    pool: 'detritusCarbon',
    grazing: 'grazingOnDetritus',
    preference: 'preferenceForDetritus',
    efficiency: 'efficiencyOnDetritus',
  },
  {
    food: 'litter',
    pool: 'litterCarbon',
    grazing: 'grazingOnLitter',
    preference: 'preferenceForLitter',
    efficiency: 'efficiencyOnLitter',
  },
  {
    food: 'feed',
    pool: 'feedCarbon',
    grazing: 'grazingOnFeed',
    preference: 'preferenceForFeed',
    efficiency: 'efficiencyOnFeed',
  },
  {
    food: 'plants',
    pool: 'submergedPlants',
    grazing: 'grazingOnPlants',
    preference: 'preferenceForPlants',
    efficiency: 'efficiencyOnPlants',
  },
  // Scraped off the surfaces together with the algae, by those that eat algae and as digestible.
  {
    food: 'biofilm',
    pool: 'biofilm',
    grazing: 'grazingOnBiofilm',
    preference: 'preferenceForAlgae',
    efficiency: 'efficiencyOnAlgae',
  },
];

export const POOL_INDEX: readonly number[] = FOOD_SPECS.map(({ pool }) => VARIABLE_INDEX[pool]);
export const GRAZING_INDEX: readonly number[] = FOOD_SPECS.map(({ grazing }) => VARIABLE_INDEX[grazing]);
export const ALGAE = FOODS.indexOf('algae');

/** Amounts eaten by all animals in one day, by food [mol], in the order of FOODS. */
export interface EatenByFood {
  readonly carbon: Float64Array;
  readonly nitrogen: Float64Array;
  readonly phosphorus: Float64Array;
}

/** Nothing eaten yet; the run fills it day by day. `derived`. */
export function nothingEaten(): EatenByFood {
  return {
    carbon: new Float64Array(FOOD_COUNT),
    nitrogen: new Float64Array(FOOD_COUNT),
    phosphorus: new Float64Array(FOOD_COUNT),
  };
}
