import { COMPOSITIONS, type Composition } from '../variables/compositions.ts';
import { VARIABLE_INDEX, type VariableId } from '../variables/variables.ts';
import type { TraitId } from './traits.ts';

/** What animals eat, in the order of every array over foods: in the water, on land, and each other. */
export const FOODS = [
  'algae',
  'detritus',
  'litter',
  'feed',
  'plants',
  'biofilm',
  'suspended algae',
  'floating plants',
  'carrion',
  'land litter',
  'land fungi',
  'soil',
  'remains',
  'prey',
] as const;
export type Food = (typeof FOODS)[number];
export const FOOD_COUNT = FOODS.length;

/** Foods that the cycle clears through the day; those on land are eaten once a day by the life module. */
export type WaterFood = Exclude<Food, 'land litter' | 'land fungi' | 'soil' | 'remains' | 'prey'>;

/** Where each food lies, which driver clears it, and which traits speak of it. */
export interface FoodSpec {
  readonly food: Food;
  /** As a keeper reads it: 'attached algae'. */
  readonly name: string;
  readonly place: 'water' | 'land' | 'both';
  /** State that holds its carbon [mol C]; none for prey. */
  readonly pool?: VariableId;
  /** Driver that sets how fast animals clear it [1/s]; foods in the water only. */
  readonly grazing?: VariableId;
  readonly preference: TraitId;
  readonly efficiency: TraitId;
}

function inWater(food: WaterFood, name: string, pool: VariableId, word: string): FoodSpec {
  return {
    food,
    name,
    place: 'water',
    pool,
    grazing: `grazingOn${word}` as VariableId,
    preference: `preferenceFor${word}` as TraitId,
    efficiency: `efficiencyOn${word}` as TraitId,
  };
}

function onLand(food: Food, name: string, pool: VariableId, word: string): FoodSpec {
  return {
    food,
    name,
    place: 'land',
    pool,
    preference: `preferenceFor${word}` as TraitId,
    efficiency: `efficiencyOn${word}` as TraitId,
  };
}

export const FOOD_SPECS: readonly FoodSpec[] = [
  inWater('algae', 'attached algae', 'attachedAlgae', 'Algae'),
  inWater('detritus', 'detritus', 'detritusCarbon', 'Detritus'),
  inWater('litter', 'leaf litter in the water', 'litterCarbon', 'Litter'),
  inWater('feed', 'feed', 'feedCarbon', 'Feed'),
  inWater('plants', 'submerged plants', 'submergedPlants', 'Plants'),
  inWater('biofilm', 'bacterial film', 'biofilm', 'Biofilm'),
  inWater('suspended algae', 'suspended algae', 'suspendedAlgae', 'Suspended'),
  inWater('floating plants', 'floating plants', 'floatingPlants', 'Floating'),
  inWater('carrion', 'dead animals in the water', 'carcassCarbon', 'Carrion'),
  onLand('land litter', 'leaf litter on land', 'landLitterCarbon', 'LandLitter'),
  onLand('land fungi', 'fungi and mould on land', 'landFungi', 'Fungi'),
  onLand('soil', 'soil organic matter', 'soilCarbon', 'Soil'),
  onLand('remains', 'leftovers and carcasses on land', 'remainsCarbon', 'Remains'),
  {
    food: 'prey',
    name: 'prey',
    place: 'both',
    preference: 'preferenceForPrey',
    efficiency: 'efficiencyOnPrey',
  },
];

const NONE = -1;
/** Position of each food's carbon pool and of its driver in the value array; -1 for none. */
export const POOL_INDEX: readonly number[] = FOOD_SPECS.map(({ pool }) =>
  pool ? VARIABLE_INDEX[pool] : NONE,
);
export const GRAZING_INDEX: readonly number[] = FOOD_SPECS.map(({ grazing }) =>
  grazing ? VARIABLE_INDEX[grazing] : NONE,
);
export const ALGAE = FOODS.indexOf('algae');
export const SUSPENDED = FOODS.indexOf('suspended algae');
export const PREY = FOODS.indexOf('prey');
/** Foods on land lie at these positions. */
export const FIRST_LAND_FOOD = FOODS.indexOf('land litter');
export const WATER_FOODS = FOODS.slice(0, FIRST_LAND_FOOD) as readonly WaterFood[];

/** Pools of a food on land; fungi have a fixed composition and only one. */
export interface LandPools {
  readonly carbon: number;
  readonly nitrogen: number;
  readonly phosphorus: number;
  readonly composition?: Composition;
}

const threeOf = (name: string): LandPools => ({
  carbon: VARIABLE_INDEX[`${name}Carbon` as VariableId],
  nitrogen: VARIABLE_INDEX[`${name}Nitrogen` as VariableId],
  phosphorus: VARIABLE_INDEX[`${name}Phosphorus` as VariableId],
});

/** In the order of FOODS from FIRST_LAND_FOOD on. */
export const LAND_POOLS: readonly LandPools[] = [
  threeOf('landLitter'),
  { carbon: VARIABLE_INDEX.landFungi, nitrogen: NONE, phosphorus: NONE, composition: COMPOSITIONS.fungi },
  threeOf('soil'),
  threeOf('remains'),
];

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
