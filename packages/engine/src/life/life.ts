import type { Random } from '../numerics/random.ts';
import type { Population } from '../plan/plan.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { VARIABLE_INDEX } from '../variables/variables.ts';
import { eggCount } from './brood-train.ts';
import type { DayConditions } from './day-conditions.ts';
import { drawn, EXPECTED } from './demography.ts';
import { bodyRate } from './energetics.ts';
import { type Pasture, setFeedingLengths, setWanted } from './feeding.ts';
import {
  type EatenByFood,
  FIRST_LAND_FOOD,
  FOOD_COUNT,
  GRAZING_INDEX,
  nothingEaten,
  POOL_INDEX,
  PREY,
} from './foods.ts';
import { addAnimals } from './founders.ts';
import { type HuntingGround, hunt, setPreyDensity } from './hunting.ts';
import { eatOnLand } from './land-meal.ts';
import { bodyTemperature, liveDay } from './live-day.ts';
import {
  clearDay,
  createLivingPopulation,
  type LivingPopulation,
  type PopulationDay,
  populationCarbon,
} from './living-population.ts';
import { removeAnimals } from './removal.ts';
import { createSettlement } from './settlement.ts';
import { setCover } from './shelter.ts';
import { MILD_AIR, type Surroundings } from './surroundings.ts';
import { STAGES, type Stage } from './traits.ts';

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
   * Lets a day pass: shares what was eaten, hunts, grows, ages, kills, hatches and lays. Empties the eaten pools into
   * animals, excretion, detritus and their like on land; the sum of each element over them stays the same.
   * @throws Error when `eaten` and the eaten pools disagree
   */
  step(values: Float64Array, eaten: EatenByFood, conditions: DayConditions): void;
  /** Animals (or eggs) of a population and stage, by their positions in `populations` [1]. */
  count(population: number, stage: number): number;
  /** Carbon of a population's bodies and eggs, for the part of its life spent in the water [mol]. */
  carbon(population: number): number;
  /** What a population did on the last day. */
  day(population: number): Readonly<PopulationDay>;
  /** What a population caught of another on the last day [mol C]. */
  caught(hunter: number, prey: number): number;
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
  landArea,
  submergedArea,
  waterTemperature,
  waterVolume,
} = VARIABLE_INDEX;

function checkMeal(pool: number, byFood: Float64Array): void {
  let sum = 0;
  for (let k = 0; k < FIRST_LAND_FOOD; k += 1) sum += byFood[k]!;
  if (Math.abs(pool - sum) > ROUNDING * (Math.abs(pool) + Math.abs(sum)) + ABSOLUTE_ROUNDING) {
    throw new Error(`eaten pool holds ${pool} mol, but ${sum} mol were eaten by food`);
  }
}

/** Cuts the population's part of each food but prey out of what all ate, by what each wanted. */
function shareMeal(
  population: LivingPopulation,
  eaten: EatenByFood,
  wantedByAll: Float64Array,
  meal: EatenByFood,
): void {
  for (let k = 0; k < PREY; k += 1) {
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
  const pasture: Pasture = { amounts: new Float64Array(FOOD_COUNT), area: 0, landArea: 0, volume: 0 };
  const ground: HuntingGround = { area: 0, landArea: 0, cover: { inWater: 0, onLand: 0 } };
  const wantedByAll = new Float64Array(FOOD_COUNT);
  const eatenByAll = nothingEaten();
  const meals = living.map(nothingEaten);
  const caught = living.map(() => new Float64Array(living.length));
  const settlement = createSettlement();
  let last: Surroundings | undefined;

  const named = (id: string): LivingPopulation => {
    const population = byId.get(id);
    if (!population) throw new Error(`there is no population '${id}'`);
    return population;
  };
  const setBodies = (values: Float64Array): void => {
    values[animalCarbon] = 0;
    values[animalNitrogen] = 0;
    values[animalPhosphorus] = 0;
    for (const population of living) {
      const { body, energetics } = population;
      values[animalCarbon] = values[animalCarbon]! + body;
      values[animalNitrogen] = values[animalNitrogen]! + body * energetics.nitrogenPerCarbon;
      values[animalPhosphorus] = values[animalPhosphorus]! + body * energetics.phosphorusPerCarbon;
    }
  };
  const changed = (population: LivingPopulation, values: Float64Array): void => {
    population.body = populationCarbon(population);
    setBodies(values);
  };

  return {
    populations: living.map(({ id }) => ({ id, stages: STAGES })),
    found(values) {
      for (const [index, { founders }] of populations.entries()) {
        for (const { stage, count } of founders) addAnimals(living[index]!, stage, count);
        living[index]!.body = populationCarbon(living[index]!);
      }
      setBodies(values);
    },
    add(population, stage, count, values) {
      addAnimals(named(population), stage, count);
      changed(named(population), values);
    },
    remove(population, stage, count, values) {
      const removed = removeAnimals(named(population), stage, count, strategy);
      changed(named(population), values);
      return removed;
    },
    demand(values) {
      for (let k = 0; k < PREY; k += 1) pasture.amounts[k] = Math.max(0, values[POOL_INDEX[k]!]!);
      pasture.area = values[submergedArea]!;
      pasture.landArea = values[landArea]!;
      pasture.volume = values[waterVolume]!;
      ground.area = pasture.area;
      ground.landArea = pasture.landArea;
      ground.cover = setCover(values);
      wantedByAll.fill(0);
      const around = last ?? firstDay(values[waterTemperature]!);
      for (const population of living) {
        setFeedingLengths(population, bodyRate(population.traits, bodyTemperature(population, around)));
      }
      setPreyDensity(living, ground);
      for (const population of living) {
        setWanted(population, pasture, bodyRate(population.traits, bodyTemperature(population, around)));
        for (let k = 0; k < FOOD_COUNT; k += 1) wantedByAll[k] = wantedByAll[k]! + population.wanted[k]!;
      }
      for (let k = 0; k < FIRST_LAND_FOOD; k += 1) {
        const amount = pasture.amounts[k]!;
        values[GRAZING_INDEX[k]!] = amount > 0 ? wantedByAll[k]! / amount / SECONDS_PER_DAY : 0;
      }
    },
    step(values, eaten, conditions) {
      checkMeal(values[eatenCarbon]!, eaten.carbon);
      checkMeal(values[eatenNitrogen]!, eaten.nitrogen);
      checkMeal(values[eatenPhosphorus]!, eaten.phosphorus);
      const { air, openCover, ...water } = conditions;
      const around: Surroundings = {
        water,
        volume: values[waterVolume]!,
        landArea: values[landArea]!,
        ...(air ? { air } : {}),
        ...(openCover === undefined ? {} : { openCover }),
      };
      last = around;
      eatenByAll.carbon.set(eaten.carbon);
      eatenByAll.nitrogen.set(eaten.nitrogen);
      eatenByAll.phosphorus.set(eaten.phosphorus);
      eatOnLand(values, wantedByAll, eatenByAll);
      for (const population of living) clearDay(population.day);
      hunt(living, ground, meals, { caught, demography: strategy });
      settlement.begin();
      for (const [p, population] of living.entries()) {
        const meal = meals[p]!;
        shareMeal(population, eatenByAll, wantedByAll, meal);
        liveDay(population, meal, around, strategy);
        settlement.add(population, meal);
      }
      settlement.settle(values);
      setBodies(values);
    },
    count: (population, stage) => stageCount(living[population]!, stage),
    carbon: (population) => living[population]!.body * living[population]!.inWater,
    day: (population) => living[population]!.day,
    caught: (hunter, prey) => caught[hunter]![prey]!,
  };
}

/** What the first day's appetite is reckoned with, before any day has passed. */
function firstDay(temperature: number): Surroundings {
  return {
    water: { temperature, oxygen: 8, unionisedAmmonia: 0, pH: 7.5, hardness: 8 },
    air: { ...MILD_AIR, temperature },
    volume: 0,
  };
}
