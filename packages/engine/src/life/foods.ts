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
  'dead plants',
  'land litter',
  'land fungi',
  'soil',
  'remains',
  'moss',
  'land plants',
  'marsh plants',
  'prey',
] as const;
export type Food = (typeof FOODS)[number];
export const FOOD_COUNT = FOODS.length;

/** Foods that stand or lie on land, eaten once a day by the life module. */
export type LandFood =
  | 'land litter'
  | 'land fungi'
  | 'soil'
  | 'remains'
  | 'moss'
  | 'land plants'
  | 'marsh plants';

/** Foods that the cycle clears through the day. */
export type WaterFood = Exclude<Food, LandFood | 'prey'>;

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
  /** Driver that holds the part of the pool nobody takes, too tough, bitter or hidden [0..1]; none where all of it is food. */
  readonly tough?: VariableId;
  readonly preference: TraitId;
  readonly efficiency: TraitId;
}

/** What tells a food's traits and drivers by name. */
interface FoodWord {
  readonly word: string;
  readonly tough?: VariableId;
}

function lying(food: WaterFood | LandFood, name: string, pool: VariableId, { word, tough }: FoodWord) {
  return {
    food,
    name,
    pool,
    ...(tough ? { tough } : {}),
    preference: `preferenceFor${word}` as TraitId,
    efficiency: `efficiencyOn${word}` as TraitId,
  };
}

function inWater(food: WaterFood, name: string, pool: VariableId, word: FoodWord): FoodSpec {
  const grazing = `grazingOn${word.word}` as VariableId;
  return { ...lying(food, name, pool, word), place: 'water', grazing };
}

function onLand(food: LandFood, name: string, pool: VariableId, word: FoodWord): FoodSpec {
  return { ...lying(food, name, pool, word), place: 'land' };
}

export const FOOD_SPECS: readonly FoodSpec[] = [
  inWater('algae', 'attached algae', 'attachedAlgae', { word: 'Algae' }),
  inWater('detritus', 'detritus', 'detritusCarbon', { word: 'Detritus' }),
  inWater('litter', 'leaf litter in the water', 'litterCarbon', { word: 'Litter' }),
  inWater('feed', 'feed', 'feedCarbon', { word: 'Feed' }),
  inWater('plants', 'submerged plants', 'submergedPlants', { word: 'Plants', tough: 'toughSubmerged' }),
  inWater('biofilm', 'bacterial film', 'biofilm', { word: 'Biofilm' }),
  inWater('suspended algae', 'suspended algae', 'suspendedAlgae', { word: 'Suspended' }),
  inWater('floating plants', 'floating plants', 'floatingPlants', {
    word: 'Floating',
    tough: 'toughFloating',
  }),
  inWater('carrion', 'dead animals in the water', 'carcassCarbon', { word: 'Carrion' }),
  inWater('dead plants', 'dead water plants', 'plantRemains', { word: 'DeadPlants' }),
  onLand('land litter', 'leaf litter on land', 'landLitterCarbon', { word: 'LandLitter' }),
  onLand('land fungi', 'fungi and mould on land', 'landFungi', { word: 'Fungi', tough: 'fungiInLeaves' }),
  onLand('soil', 'soil organic matter', 'soilCarbon', { word: 'Soil' }),
  onLand('remains', 'leftovers and carcasses on land', 'remainsCarbon', { word: 'Remains' }),
  onLand('moss', 'living moss', 'moss', { word: 'Moss', tough: 'toughMoss' }),
  onLand('land plants', 'living plants on land', 'landPlants', {
    word: 'LandPlants',
    tough: 'toughLandPlants',
  }),
  onLand('marsh plants', 'living plants of wet ground', 'emersedPlants', {
    word: 'LandPlants',
    tough: 'toughEmersed',
  }),
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
/** Position of the driver that holds the part of a food's pool nobody takes; -1 for none. */
export const TOUGH_INDEX: readonly number[] = FOOD_SPECS.map(({ tough }) =>
  tough ? VARIABLE_INDEX[tough] : NONE,
);

/** Carbon of a food that animals take [mol], >= 0: its pool without what is too tough or bitter. `derived`. */
export function edibleCarbon(values: Float64Array, food: number): number {
  const tough = TOUGH_INDEX[food]!;
  const pool = Math.max(0, values[POOL_INDEX[food]!]!);
  return tough === NONE ? pool : pool * (1 - values[tough]!);
}

export const ALGAE = FOODS.indexOf('algae');
export const FEED = FOODS.indexOf('feed');
export const SUSPENDED = FOODS.indexOf('suspended algae');
export const FUNGI = FOODS.indexOf('land fungi');
export const PREY = FOODS.indexOf('prey');
/** Foods on land lie at these positions. */
export const FIRST_LAND_FOOD = FOODS.indexOf('land litter');
export const WATER_FOODS = FOODS.slice(0, FIRST_LAND_FOOD) as readonly WaterFood[];

/** Pools of a food on land; what lives has a fixed composition and only one. */
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

const oneOf = (id: VariableId, composition: Composition): LandPools => ({
  carbon: VARIABLE_INDEX[id],
  nitrogen: NONE,
  phosphorus: NONE,
  composition,
});

/** In the order of FOODS from FIRST_LAND_FOOD on. */
export const LAND_POOLS: readonly LandPools[] = [
  threeOf('landLitter'),
  oneOf('landFungi', COMPOSITIONS.fungi),
  threeOf('soil'),
  threeOf('remains'),
  oneOf('moss', COMPOSITIONS.moss),
  oneOf('landPlants', COMPOSITIONS.landPlants),
  oneOf('emersedPlants', COMPOSITIONS.emersedPlants),
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
