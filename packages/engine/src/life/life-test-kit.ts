import { exp } from '../numerics/elementary.ts';
import type { Random } from '../numerics/random.ts';
import type { Founders, Population } from '../plan/plan.ts';
import { COMPOSITIONS } from '../variables/compositions.ts';
import {
  STATE_IDS,
  VARIABLE_IDS,
  VARIABLE_INDEX,
  type VariableId,
  variableSpec,
} from '../variables/variables.ts';
import type { DayConditions } from './day-conditions.ts';
import { type EatenByFood, FIRST_LAND_FOOD, FOOD_SPECS, nothingEaten } from './foods.ts';
import { createLife, type Life } from './life.ts';
import { type AnimalTraits, TRAIT_DEFAULTS, TRAIT_IDS, type TraitId, type TraitValues } from './traits.ts';
import type { WaterConditions } from './water-stress.ts';

/** An invented small grazer of round numbers, a little like a small amphipod. */
export const GRAZER: TraitValues = {
  ...TRAIT_DEFAULTS,
  referenceTemperature: 20,
  dryMassPerCube: 0.005,
  lengthAtBirth: 1,
  lengthAtPuberty: 3,
  lengthAtEnd: 7,
  growthRate: 0.02,
  shareToSoma: 0.9,
  eggPerNewborn: 1.4,
  femaleShare: 0.5,
  broodTime: 12,
  broodInterval: 14,
  breedingCoolest: 8,
  breedingWarmest: 30,
  activationEnergy: 0.65,
  broodActivationEnergy: 0.65,
  heatLimit: 35,
  carbonContent: 0.4,
  nitrogenContent: 0.085,
  phosphorusContent: 0.012,
  maxIngestion: 0.8,
  halfSaturation: 0.05,
  algaeRefuge: 0.02,
  preferenceForAlgae: 1,
  preferenceForDetritus: 0.5,
  preferenceForLitter: 0.1,
  preferenceForFeed: 10,
  preferenceForPlants: 0.01,
  efficiencyOnAlgae: 0.6,
  efficiencyOnDetritus: 0.3,
  efficiencyOnLitter: 0.1,
  efficiencyOnFeed: 0.7,
  efficiencyOnPlants: 0.3,
  nutrientEfficiency: 0.7,
  lifespan: 150,
  adultLoss: 0.003,
  juvenileLoss: 0.005,
  broodLoss: 0.005,
  starvedUpkeep: 0.6,
  starvationCondition: 0.6,
  starvationHazard: 0.5,
  temperatureLow: 2,
  temperatureHigh: 32,
  temperatureMargin: 3,
  pHLow: 6,
  pHHigh: 9,
  pHMargin: 1,
  hardnessLow: 3,
  hardnessHigh: 25,
  hardnessMargin: 3,
  oxygenNeeded: 2,
  oxygenMargin: 1,
  ammoniaNoEffect: 0.1,
  ammoniaMedianLethal: 1,
  ammoniaRecovery: 0.7,
  crowdingDensity: 30,
  crowdingHazard: 0.02,
};

/** Traits under which nobody dies of anything but age and hunger, and age does not come. */
export const DEATHLESS: Partial<Record<TraitId, number>> = {
  lifespan: 20000,
  adultLoss: 0,
  juvenileLoss: 0,
  broodLoss: 0,
  crowdingHazard: 0,
};

export const GOOD_WATER: WaterConditions = {
  temperature: 20,
  oxygen: 8,
  unionisedAmmonia: 0,
  pH: 7.5,
  hardness: 10,
};

/** A population of one species, its priors fixed at the values. */
export function populationOf(
  id: string,
  founders: readonly Founders[],
  values: TraitValues,
  kind: Omit<AnimalTraits, 'priors'>,
): Population {
  const fixed = (value: number) => ({
    kind: 'fixed' as const,
    median: value,
    spread: 0,
    min: value,
    max: value,
  });
  const priors = Object.fromEntries(TRAIT_IDS.map((trait) => [trait, fixed(values[trait])]));
  return {
    id,
    species: id,
    name: id,
    zone: 'pool',
    founders,
    traits: { ...kind, priors: priors as Population['traits']['priors'] },
  };
}

/** Water, ground and animals without any chemistry: whatever is eaten is taken from the pools at once. */
export interface Tank {
  readonly life: Life;
  readonly values: Float64Array;
  readonly eaten: EatenByFood;
  /** Sets the pools to hold this much of a food [mol C]. */
  serve(pool: VariableId, carbon: number): void;
  /** Sets the drivers, eats and lives a day; the excreted amounts stay in their pools. */
  pass(conditions: DayConditions): void;
  /** Of an element in all states [mol]. */
  total(element: 'carbon' | 'nitrogen' | 'phosphorus'): number;
}

export interface TankSetup {
  readonly populations: readonly Population[];
  readonly demography: 'expected' | Random;
  /** Submerged surface [m2] and water [m3]. */
  readonly area: number;
  readonly volume: number;
  /** Land [m2]; none when left out. */
  readonly land?: number;
  /** Surface of the pool [m2]; of no account when left out. */
  readonly waterArea?: number;
}

const NUTRIENT_OF_FEED = { Nitrogen: 0.12, Phosphorus: 0.01 } as const;
const DEAD = new Set<VariableId>([
  'detritusCarbon',
  'litterCarbon',
  'feedCarbon',
  'carcassCarbon',
  'landLitterCarbon',
  'remainsCarbon',
  'soilCarbon',
]);
const LIVING = {
  attachedAlgae: COMPOSITIONS.algae,
  submergedPlants: COMPOSITIONS.submergedPlants,
  biofilm: COMPOSITIONS.bacteria,
  suspendedAlgae: COMPOSITIONS.algae,
  floatingPlants: COMPOSITIONS.floatingPlants,
  plantRemains: COMPOSITIONS.submergedPlants,
} as const;
const SECONDS_PER_DAY = 86400;

function livingContent(pool: VariableId): { Nitrogen: number; Phosphorus: number } | undefined {
  const composition = LIVING[pool as keyof typeof LIVING];
  if (!composition) return undefined;
  return { Nitrogen: composition.nitrogenPerCarbon, Phosphorus: composition.phosphorusPerCarbon };
}

/** A tank with its founders in. */
export function createTank({
  populations,
  demography,
  area,
  volume,
  land = 0,
  waterArea = 0,
}: TankSetup): Tank {
  const values = new Float64Array(VARIABLE_IDS.length);
  values[VARIABLE_INDEX.submergedArea] = area;
  values[VARIABLE_INDEX.landArea] = land;
  values[VARIABLE_INDEX.waterArea] = waterArea;
  values[VARIABLE_INDEX.waterVolume] = volume;
  values[VARIABLE_INDEX.waterTemperature] = GOOD_WATER.temperature;
  const parameters = Object.fromEntries(
    populations.map(({ id, traits }) => [
      id,
      Object.fromEntries(TRAIT_IDS.map((trait) => [trait, traits.priors[trait].median])),
    ]),
  );
  const life = createLife(populations, parameters, demography);
  life.found(values);
  const eaten = nothingEaten();
  const at = (id: string): number => VARIABLE_INDEX[id as VariableId];

  const eat = (order: number): void => {
    const { pool, grazing } = FOOD_SPECS[order]!;
    if (!pool || !grazing) return;
    const share = 1 - exp(-values[at(grazing)]! * SECONDS_PER_DAY);
    const carbon = values[at(pool)]! * share;
    values[at(pool)] = values[at(pool)]! - carbon;
    eaten.carbon[order] = carbon;
    for (const nutrient of ['Nitrogen', 'Phosphorus'] as const) {
      const content = livingContent(pool);
      const id = content ? undefined : pool.replace('Carbon', nutrient);
      const amount = id ? values[at(id)]! * share : carbon * content![nutrient];
      if (id) values[at(id)] = values[at(id)]! - amount;
      (nutrient === 'Nitrogen' ? eaten.nitrogen : eaten.phosphorus)[order] = amount;
    }
  };
  const sum = (amounts: Float64Array): number => amounts.reduce((total, amount) => total + amount, 0);

  return {
    life,
    values,
    eaten,
    serve(pool, carbon) {
      values[at(pool)] = carbon;
      if (!DEAD.has(pool)) return;
      values[at(pool.replace('Carbon', 'Nitrogen'))] = carbon * NUTRIENT_OF_FEED.Nitrogen;
      values[at(pool.replace('Carbon', 'Phosphorus'))] = carbon * NUTRIENT_OF_FEED.Phosphorus;
    },
    pass(conditions) {
      life.demand(values);
      for (let order = 0; order < FIRST_LAND_FOOD; order += 1) eat(order);
      values[at('eatenCarbon')] = values[at('eatenCarbon')]! + sum(eaten.carbon);
      values[at('eatenNitrogen')] = values[at('eatenNitrogen')]! + sum(eaten.nitrogen);
      values[at('eatenPhosphorus')] = values[at('eatenPhosphorus')]! + sum(eaten.phosphorus);
      life.step(values, eaten, conditions);
    },
    total(element) {
      return STATE_IDS.reduce(
        (sum, id) => sum + values[at(id)]! * (variableSpec(id).content?.[element] ?? 0),
        0,
      );
    },
  };
}
