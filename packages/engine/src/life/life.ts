import type { Random } from '../numerics/random.ts';
import type { Removal } from '../plan/care.ts';
import type { Population } from '../plan/plan.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { VARIABLE_INDEX } from '../variables/variables.ts';
import type { Activity } from './awake.ts';
import { eggCount } from './brood-train.ts';
import { GROWN } from './cohort-train.ts';
import type { DayConditions } from './day-conditions.ts';
import { drawn, EXPECTED } from './demography.ts';
import { bodyRate } from './energetics.ts';
import { type Pasture, setFeedingLengths, setWantedAtLengths } from './feeding.ts';
import {
  type EatenByFood,
  edibleCarbon,
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
  DEATH_CAUSES,
  type LivingPopulation,
  type PopulationDay,
  populationCarbon,
} from './living-population.ts';
import { removeAnimals } from './removal.ts';
import { createSettlement } from './settlement.ts';
import { leafSurface, setCover } from './shelter.ts';
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
  remove(population: string, removal: Removal, values: Float64Array): number;
  /**
   * Sets the grazing drivers [1/s] from what lies on the ground, for the coming day, or for a stretch of it in which
   * animals eat at these paces over their mean of the day.
   */
  demand(values: Float64Array, activity?: Activity): void;
  /** Tells what part of the feed in the water is of animals [0..1]; a half until told. */
  taste(meaty: number): void;
  /**
   * Ends a stretch of the day but the last: shares what was eaten in it, and lets animals eat on the land.
   * @param part of the day it lasted [0..1]
   */
  eat(values: Float64Array, eaten: EatenByFood, part: number): void;
  /**
   * Lets a day pass: shares what was eaten, hunts, grows, ages, kills, hatches and lays. Empties the eaten pools into
   * animals, excretion, detritus and their like on land; the sum of each element over them stays the same.
   * @param eaten in the day, or in the stretch of it since the last `eat`
   * @throws Error when what was eaten and the eaten pools disagree
   */
  step(values: Float64Array, eaten: EatenByFood, conditions: DayConditions): void;
  /** Animals (or eggs) of a population and stage, by their positions in `populations` [1]. */
  count(population: number, stage: number): number;
  /** Carbon of a population's bodies and eggs, for the part of its life spent in the water [mol]. */
  carbon(population: number): number;
  /** Carbon of bodies and eggs that died on the last day and lie in the water [mol], and of a body among them [mol]. */
  deadInWater(population: number): number;
  deadBody(population: number): number;
  /** What a population did on the last day. */
  day(population: number): Readonly<PopulationDay>;
  /** What a population caught of another on the last day [mol C]. */
  caught(hunter: number, prey: number): number;
}

/** Causes of death that leave no body. */
const GONE = new Set(
  (['eaten', 'eaten by own kind', 'left'] as const).map((cause) => DEATH_CAUSES.indexOf(cause)),
);

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
  waterArea,
  waterTemperature,
  waterVolume,
} = VARIABLE_INDEX;

/** Eaten in the water in a stretch of the day [mol]. */
function sumOf(byFood: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < FIRST_LAND_FOOD; k += 1) sum += byFood[k]!;
  return sum;
}

/** Deaths that leave a body [1]: nobody ate it and it did not leave the glass. */
function lyingAbout(deaths: Float64Array): number {
  let sum = 0;
  for (let cause = 0; cause < deaths.length; cause += 1) if (!GONE.has(cause)) sum += deaths[cause]!;
  return sum;
}

function checkMeal(pool: number, sum: number): void {
  if (Math.abs(pool - sum) > ROUNDING * (Math.abs(pool) + Math.abs(sum)) + ABSOLUTE_ROUNDING) {
    throw new Error(`eaten pool holds ${pool} mol, but ${sum} mol were eaten by food`);
  }
}

/** Adds the population's part of each food but prey, of what all ate in a stretch, by what each wanted. */
function shareMeal(
  population: LivingPopulation,
  eaten: EatenByFood,
  wantedByAll: Float64Array,
  meal: EatenByFood,
): void {
  const { foods } = population.diet;
  for (let f = 0; f < foods.length; f += 1) {
    const k = foods[f]!;
    const all = wantedByAll[k]!;
    if (k === PREY || !(all > 0)) continue;
    const part = population.wanted[k]! / all;
    meal.carbon[k] = meal.carbon[k]! + eaten.carbon[k]! * part;
    meal.nitrogen[k] = meal.nitrogen[k]! + eaten.nitrogen[k]! * part;
    meal.phosphorus[k] = meal.phosphorus[k]! + eaten.phosphorus[k]! * part;
  }
}

function clearMeal({ carbon, nitrogen, phosphorus }: EatenByFood): void {
  carbon.fill(0);
  nitrogen.fill(0);
  phosphorus.fill(0);
}

/** What was eaten so far today, while the day is passed in stretches. */
interface DaySoFar {
  /** Part of the day that has passed [0..1]. */
  part: number;
  carbon: number;
  nitrogen: number;
  phosphorus: number;
  /** What each population wanted of prey, over the stretches so far [mol C]. */
  readonly prey: Float64Array;
}

function stageCount({ train, broods }: LivingPopulation, stage: number): number {
  if (STAGES[stage] === 'brooded') return eggCount(broods);
  const isAdult = STAGES[stage] === 'adult';
  let count = 0;
  for (let i = 0; i < train.size; i += 1)
    if ((train.adult[i] === GROWN) === isAdult) count += train.count[i]!;
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
  const ground: HuntingGround = { area: 0, landArea: 0, cover: { inWater: 0, onLand: 0, besideLeaves: 0 } };
  const wantedByAll = new Float64Array(FOOD_COUNT);
  const eatenByAll = nothingEaten();
  const meals = living.map(nothingEaten);
  const caught = living.map(() => new Float64Array(living.length));
  const settlement = createSettlement();
  const rates = new Float64Array(living.length);
  const soFar: DaySoFar = {
    part: 0,
    carbon: 0,
    nitrogen: 0,
    phosphorus: 0,
    prey: new Float64Array(living.length),
  };
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
  /** Lets animals eat on the land over a part of the day and shares out what they ate there and in the water. */
  const eatFor = (values: Float64Array, eaten: EatenByFood, part: number): void => {
    eatenByAll.carbon.set(eaten.carbon);
    eatenByAll.nitrogen.set(eaten.nitrogen);
    eatenByAll.phosphorus.set(eaten.phosphorus);
    eatOnLand(values, wantedByAll, eatenByAll, part);
    soFar.carbon += sumOf(eaten.carbon);
    soFar.nitrogen += sumOf(eaten.nitrogen);
    soFar.phosphorus += sumOf(eaten.phosphorus);
    for (let p = 0; p < living.length; p += 1) {
      shareMeal(living[p]!, eatenByAll, wantedByAll, meals[p]!);
      soFar.prey[p] = soFar.prey[p]! + part * living[p]!.wanted[PREY]!;
    }
    soFar.part += part;
  };
  const beginDay = (): void => {
    soFar.part = 0;
    soFar.carbon = 0;
    soFar.nitrogen = 0;
    soFar.phosphorus = 0;
    soFar.prey.fill(0);
    for (const meal of meals) clearMeal(meal);
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
    remove(population, removal, values) {
      const removed = removeAnimals(named(population), removal, strategy);
      changed(named(population), values);
      return removed;
    },
    demand(values, activity) {
      for (let k = 0; k < PREY; k += 1) pasture.amounts[k] = edibleCarbon(values, k);
      pasture.area = values[submergedArea]!;
      pasture.landArea = values[landArea]!;
      pasture.volume = values[waterVolume]!;
      ground.area = pasture.area;
      ground.landArea = pasture.landArea;
      ground.leafArea = leafSurface(values);
      ground.cover = setCover(values);
      wantedByAll.fill(0);
      const around = last ?? firstDay(values[waterTemperature]!);
      for (let p = 0; p < living.length; p += 1) {
        const population = living[p]!;
        rates[p] = bodyRate(population.traits, bodyTemperature(population, around));
        setFeedingLengths(population, rates[p]!);
      }
      setPreyDensity(living, ground);
      for (let p = 0; p < living.length; p += 1) {
        const { wanted, active, diet } = living[p]!;
        setWantedAtLengths(living[p]!, pasture, rates[p]!);
        const pace = activity ? activity[active] : 1;
        for (let f = 0; f < diet.foods.length; f += 1) {
          const k = diet.foods[f]!;
          wanted[k] = wanted[k]! * pace;
          wantedByAll[k] = wantedByAll[k]! + wanted[k]!;
        }
      }
      for (let k = 0; k < FIRST_LAND_FOOD; k += 1) {
        const amount = values[POOL_INDEX[k]!]!;
        values[GRAZING_INDEX[k]!] = amount > 0 ? wantedByAll[k]! / amount / SECONDS_PER_DAY : 0;
      }
    },
    taste(meaty) {
      pasture.meaty = meaty;
    },
    eat: eatFor,
    step(values, eaten, conditions) {
      eatFor(values, eaten, 1 - soFar.part);
      checkMeal(values[eatenCarbon]!, soFar.carbon);
      checkMeal(values[eatenNitrogen]!, soFar.nitrogen);
      checkMeal(values[eatenPhosphorus]!, soFar.phosphorus);
      const { air, openCover, shore, ...water } = conditions;
      const around: Surroundings = {
        water,
        volume: values[waterVolume]!,
        landArea: values[landArea]!,
        waterArea: values[waterArea]!,
        ...(air ? { air } : {}),
        ...(openCover === undefined ? {} : { openCover }),
        ...(shore ? { shore } : {}),
      };
      last = around;
      for (let p = 0; p < living.length; p += 1) {
        clearDay(living[p]!.day);
        living[p]!.wanted[PREY] = soFar.prey[p]!;
      }
      hunt(living, ground, meals, { caught, demography: strategy });
      settlement.begin();
      for (const [p, population] of living.entries()) {
        const meal = meals[p]!;
        liveDay(population, meal, around, strategy);
        settlement.add(population, meal);
      }
      settlement.settle(values);
      setBodies(values);
      beginDay();
    },
    count: (population, stage) => stageCount(living[population]!, stage),
    carbon: (population) => living[population]!.body * living[population]!.inWater,
    deadInWater: (population) => living[population]!.day.deadCarbon * living[population]!.inWater,
    deadBody: (population) => {
      const { deaths, deadCarbon } = living[population]!.day;
      const bodies = lyingAbout(deaths);
      return bodies > 0 ? deadCarbon / bodies : 0;
    },
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
