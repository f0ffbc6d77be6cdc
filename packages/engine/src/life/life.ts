import type { Random } from '../numerics/random.ts';
import type { Population } from '../plan/plan.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { VARIABLE_INDEX } from '../variables/variables.ts';
import { eggCount } from './brood-train.ts';
import { drawn, EXPECTED } from './demography.ts';
import { bodyRate } from './energetics.ts';
import { type Meal, type Pasture, setWanted } from './feeding.ts';
import { type EatenByFood, FOOD_COUNT, GRAZING_INDEX, nothingEaten, POOL_INDEX } from './foods.ts';
import { addAnimals } from './founders.ts';
import { liveDay } from './live-day.ts';
import {
  createLivingPopulation,
  type LivingPopulation,
  type PopulationDay,
  populationCarbon,
} from './living-population.ts';
import { removeAnimals } from './removal.ts';
import { STAGES, type Stage } from './traits.ts';
import type { WaterConditions } from './water-stress.ts';

/** One value of every trait, by population id and trait id, in the units of TRAIT_SPECS. */
export type LifeParameters = Readonly<Record<string, Readonly<Record<string, number>>>>;

/** All animal populations of an enclosure through time. Moves carbon, nitrogen and phosphorus in `values` only. */
export interface Life {
  readonly populations: readonly { readonly id: string; readonly stages: readonly Stage[] }[];
  /** Puts the founders in and sets the animal pools; the caller books their change as input. */
  found(values: Float64Array): void;
  /** Puts animals in; the caller books the change of the animal pools as input. @throws Error for an unknown population. */
  add(population: string, stage: 'juvenile' | 'adult', count: number, values: Float64Array): void;
  /** Takes animals out, at most those there are, and returns how many; the caller books the change as output. */
  remove(population: string, stage: 'juvenile' | 'adult', count: number, values: Float64Array): number;
  /** Sets the grazing drivers [1/s] for the coming day from what lies on the ground. */
  demand(values: Float64Array): void;
  /**
   * Lets a day pass: shares what was eaten, grows, ages, kills, hatches and lays. Empties the eaten pools into
   * animals, excretion and detritus; the sum of each element over them stays the same.
   * @throws Error when `eaten` and the eaten pools disagree
   */
  step(values: Float64Array, eaten: EatenByFood, water: WaterConditions): void;
  /** Animals (or eggs) of a population and stage, by their positions in `populations` [1]. */
  count(population: number, stage: number): number;
  /** What a population did on the last day. */
  day(population: number): Readonly<PopulationDay>;
}

/** Disagreement between the eaten pools and the amounts by food that rounding explains [1]. */
const ROUNDING = 1e-9;
/** The same in amount, since amounts by food are differences of sums over the whole run [mol]. */
const ABSOLUTE_ROUNDING = 1e-12;

const {
  animalCarbon,
  animalNitrogen,
  animalPhosphorus,
  eatenCarbon,
  eatenNitrogen,
  eatenPhosphorus,
  excretedCarbon,
  excretedNitrogen,
  excretedPhosphorus,
  detritusCarbon,
  detritusNitrogen,
  detritusPhosphorus,
  submergedArea,
  waterTemperature,
  waterVolume,
} = VARIABLE_INDEX;

/** Sums the bodies of all populations into `into` as carbon, nitrogen and phosphorus [mol]. */
function sumBodies(living: readonly LivingPopulation[], into: Float64Array): void {
  into.fill(0);
  for (const population of living) {
    const carbon = populationCarbon(population);
    into[0] = into[0]! + carbon;
    into[1] = into[1]! + carbon * population.energetics.nitrogenPerCarbon;
    into[2] = into[2]! + carbon * population.energetics.phosphorusPerCarbon;
  }
}

function checkMeal(pool: number, byFood: Float64Array): void {
  let sum = 0;
  for (let k = 0; k < FOOD_COUNT; k += 1) sum += byFood[k]!;
  if (Math.abs(pool - sum) > ROUNDING * (Math.abs(pool) + Math.abs(sum)) + ABSOLUTE_ROUNDING) {
    throw new Error(`eaten pool holds ${pool} mol, but ${sum} mol were eaten by food`);
  }
}

/** A pool that only rounding of the bodies' sum took below nothing is empty. @throws Error when it was more than that */
function withoutRounding(pool: number, body: number): number {
  if (pool >= 0) return pool;
  if (pool < -ROUNDING * (body + 1e-9)) throw new Error(`animals drew ${-pool} mol more than they had`);
  return 0;
}

/** Cuts the population's part of each food out of what all ate, by what each wanted. */
function shareMeal(
  population: LivingPopulation,
  eaten: EatenByFood,
  wantedByAll: Float64Array,
  meal: Meal,
): void {
  for (let k = 0; k < FOOD_COUNT; k += 1) {
    const all = wantedByAll[k]!;
    const part = all > 0 ? population.wanted[k]! / all : 0;
    meal.carbon[k] = eaten.carbon[k]! * part;
    meal.nitrogen[k] = eaten.nitrogen[k]! * part;
    meal.phosphorus[k] = eaten.phosphorus[k]! * part;
  }
}

function stageCount({ train, broods }: LivingPopulation, stage: number): number {
  if (STAGES[stage] === 'brooded') return eggCount(broods);
  const flag = STAGES[stage] === 'adult' ? 1 : 0;
  let count = 0;
  for (let i = 0; i < train.size; i += 1) if (train.adult[i] === flag) count += train.count[i]!;
  return count;
}

/**
 * The animals of an enclosure, none of them in yet.
 * @param parameters one value of every trait of every population
 * @param demography 'expected' for means, or a stream of random numbers for whole animals
 * @throws RangeError when a trait is missing, outside its range or contradicts another
 * @validity animals that live in the water; land animals are not modelled
 * @source jager-2013 (individual), de-roos-1988 (cohorts); see docs/science/life.md
 */
export function createLife(
  populations: readonly Population[],
  parameters: LifeParameters,
  demography: 'expected' | Random,
): Life {
  const strategy = demography === 'expected' ? EXPECTED : drawn(demography);
  const living = populations.map((each) => createLivingPopulation(each, parameters[each.id] ?? {}));
  const byId = new Map(living.map((population) => [population.id, population]));
  const pasture: Pasture = { amounts: new Float64Array(FOOD_COUNT), area: 0 };
  const wantedByAll = new Float64Array(FOOD_COUNT);
  const meal = nothingEaten();
  const bodies = new Float64Array(3);
  let lastTemperature = Number.NaN;

  const named = (id: string): LivingPopulation => {
    const population = byId.get(id);
    if (!population) throw new Error(`there is no population '${id}'`);
    return population;
  };
  const setBodies = (values: Float64Array): void => {
    sumBodies(living, bodies);
    values[animalCarbon] = bodies[0]!;
    values[animalNitrogen] = bodies[1]!;
    values[animalPhosphorus] = bodies[2]!;
  };
  /** Empties an eaten pool: bodies grew, part is excreted, the rest is detritus. */
  const settle = (values: Float64Array, pools: Pools, body: number, excreted: number): void => {
    const rest = values[pools.eaten]! + values[pools.animal]! - body - excreted;
    values[pools.eaten] = 0;
    values[pools.animal] = body;
    values[pools.excreted] = withoutRounding(values[pools.excreted]! + excreted + Math.min(0, rest), body);
    values[pools.detritus] = values[pools.detritus]! + Math.max(0, rest);
  };

  return {
    populations: living.map(({ id }) => ({ id, stages: STAGES })),
    found(values) {
      for (const [index, { founders }] of populations.entries()) {
        for (const { stage, count } of founders) addAnimals(living[index]!, stage, count);
      }
      setBodies(values);
    },
    add(population, stage, count, values) {
      addAnimals(named(population), stage, count);
      setBodies(values);
    },
    remove(population, stage, count, values) {
      const removed = removeAnimals(named(population), stage, count, strategy);
      setBodies(values);
      return removed;
    },
    demand(values) {
      for (let k = 0; k < FOOD_COUNT; k += 1) pasture.amounts[k] = Math.max(0, values[POOL_INDEX[k]!]!);
      pasture.area = values[submergedArea]!;
      wantedByAll.fill(0);
      const temperature = Number.isNaN(lastTemperature) ? values[waterTemperature]! : lastTemperature;
      for (const population of living) {
        setWanted(population, pasture, bodyRate(population.traits, temperature));
        for (let k = 0; k < FOOD_COUNT; k += 1) wantedByAll[k] = wantedByAll[k]! + population.wanted[k]!;
      }
      for (let k = 0; k < FOOD_COUNT; k += 1) {
        const amount = pasture.amounts[k]!;
        values[GRAZING_INDEX[k]!] = amount > 0 ? wantedByAll[k]! / amount / SECONDS_PER_DAY : 0;
      }
    },
    step(values, eaten, water) {
      checkMeal(values[eatenCarbon]!, eaten.carbon);
      checkMeal(values[eatenNitrogen]!, eaten.nitrogen);
      checkMeal(values[eatenPhosphorus]!, eaten.phosphorus);
      lastTemperature = water.temperature;
      const surroundings = { water, volume: values[waterVolume]! };
      let respired = 0;
      let nitrogen = 0;
      let phosphorus = 0;
      for (const population of living) {
        shareMeal(population, eaten, wantedByAll, meal);
        liveDay(population, meal, surroundings, strategy);
        respired += population.day.respiredCarbon;
        nitrogen += population.day.excretedNitrogen;
        phosphorus += population.day.excretedPhosphorus;
      }
      sumBodies(living, bodies);
      settle(values, CARBON, bodies[0]!, respired);
      settle(values, NITROGEN, bodies[1]!, nitrogen);
      settle(values, PHOSPHORUS, bodies[2]!, phosphorus);
    },
    count: (population, stage) => stageCount(living[population]!, stage),
    day: (population) => living[population]!.day,
  };
}

/** Positions of the pools of one element between which a day is settled. */
interface Pools {
  readonly eaten: number;
  readonly animal: number;
  readonly excreted: number;
  readonly detritus: number;
}

const CARBON: Pools = {
  eaten: eatenCarbon,
  animal: animalCarbon,
  excreted: excretedCarbon,
  detritus: detritusCarbon,
};
const NITROGEN: Pools = {
  eaten: eatenNitrogen,
  animal: animalNitrogen,
  excreted: excretedNitrogen,
  detritus: detritusNitrogen,
};
const PHOSPHORUS: Pools = {
  eaten: eatenPhosphorus,
  animal: animalPhosphorus,
  excreted: excretedPhosphorus,
  detritus: detritusPhosphorus,
};
