import {
  type AnimalDay,
  type AnimalState,
  animalDay,
  type DayRates,
  lengthOf,
  midDayLength,
  structureOf,
} from './energetics.ts';
import { appealOf, intakeShare, wantedFood } from './foraging.ts';
import { feedingSquare } from './growth-curve.ts';
import type { LivingPopulation } from './living-population.ts';
import { paceOf, populationInWater, surfaceOf } from './place.ts';
import { eats, liveOnBody, pupates, setStage } from './pupation.ts';
import { extraIntake, setAppetite, useStore } from './store.ts';

/** Sum over animals of their feeding surface [mm2], by which food is shared. `derived`. */
export function feedingSurface(population: LivingPopulation): number {
  const { train } = population;
  let surface = 0;
  for (let i = 0; i < train.size; i += 1) {
    surface += train.count[i]! * surfaceOf(population, i);
  }
  return surface;
}

/** The ground animals feed on: carbon of each food [mol], submerged surface and land [m2]. */
export interface Pasture {
  readonly amounts: Float64Array;
  area: number;
  landArea?: number;
  /** Of the water [m3]; when left out, what floats counts per surface like the rest. */
  volume?: number;
  /** Part of the feed in the water that is of animals [0..1]; a half when left out. */
  meaty?: number;
}

/** Sets the lengths of the middle of the coming day, by which an animal feeds, and where it feeds. `derived`. */
export function setFeedingLengths(population: LivingPopulation, rate: number): void {
  const { train, energetics } = population;
  for (let i = 0; i < train.size; i += 1) {
    const pace = rate * paceOf(population, i);
    const fullness = population.fullness * train.share[i]!;
    train.middle[i] = midDayLength(energetics, train.length[i]!, fullness, pace);
  }
  population.inWater = populationInWater(population);
  setAppetite(population);
}

/**
 * Writes what the population wants of each food on the coming day into `population.wanted` [mol C/d]. Prey density
 * must be set before where it matters.
 * @param rate temperature factor of the day [1]
 * @source derived: `wantedFood` per surface times the feeding surface of all cohorts
 */
export function setWanted(population: LivingPopulation, pasture: Pasture, rate: number): void {
  setFeedingLengths(population, rate);
  setWantedAtLengths(population, pasture, rate);
}

/** As `setWanted`, for a population whose feeding lengths are set already. `derived`. */
export function setWantedAtLengths(population: LivingPopulation, pasture: Pasture, rate: number): void {
  const { train, energetics, diet, wanted } = population;
  if (train.size === 0) {
    wanted.fill(0);
    return;
  }
  const { inWater, preyDensity } = population;
  const { amounts, area, landArea = 0, volume, meaty } = pasture;
  const food = wantedFood(
    diet,
    energetics,
    {
      amounts,
      area,
      landArea,
      inWater,
      prey: preyDensity,
      ...(volume === undefined ? {} : { volume }),
      appeal: appealOf(diet, meaty),
    },
    wanted,
  );
  const extra = extraIntake(population, intakeShare(diet, food));
  const surface = feedingSurface(population) * rate * (1 + extra) * population.slowing.kept;
  const { foods } = diet;
  for (let f = 0; f < foods.length; f += 1) wanted[foods[f]!] = wanted[foods[f]!]! * surface;
}

/** A population's part of the food eaten today, by food [mol]. */
export interface Meal {
  readonly carbon: Float64Array;
  readonly nitrogen: Float64Array;
  readonly phosphorus: Float64Array;
}

const state: AnimalState = { length: 0, buffer: 0, carbon: 0, nitrogen: 0, phosphorus: 0 };
const result: AnimalDay = { structure: 0, store: 0, buffer: 0 };
const rates: DayRates = { rate: 0, starvedUpkeep: 0, femaleShare: 0 };

/**
 * Digests a meal, shares it by feeding surface among the cohorts and lets them live a day of their energy budget.
 * What lies beyond the largest assimilation is passed undigested. Books food, respiration and excretion in
 * `population.day`.
 * @param rate temperature factor of the day [1]
 * @source derived: bookkeeping around `animalDay`
 */
export function feedAndGrow(population: LivingPopulation, meal: Meal, rate: number): void {
  const { diet, energetics, day } = population;
  let eaten = 0;
  let carbon = 0;
  let nitrogen = 0;
  let phosphorus = 0;
  const { foods } = diet;
  for (let f = 0; f < foods.length; f += 1) {
    const k = foods[f]!;
    eaten += meal.carbon[k]!;
    day.eatenByFood[k] = meal.carbon[k]!;
    carbon += meal.carbon[k]! * diet.efficiency[k]!;
    nitrogen += meal.nitrogen[k]! * diet.nutrientEfficiency;
    phosphorus += meal.phosphorus[k]! * diet.nutrientEfficiency;
  }
  const surface = feedingSurface(population);
  const ample = surface * rate * energetics.assimilation;
  bookSlowing(population, ample);
  const most = ample * population.slowing.kept * (1 + Math.max(population.appetite, population.greed));
  const digested = carbon > most ? most / carbon : 1;
  day.eatenCarbon = eaten;
  day.assimilatedCarbon = carbon * digested;
  day.assimilatedNitrogen = nitrogen * digested;
  day.assimilatedPhosphorus = phosphorus * digested;
  const retained = growCohorts(population, surface, rate);
  day.respiredCarbon = day.assimilatedCarbon - retained;
  day.excretedNitrogen = day.assimilatedNitrogen - retained * energetics.nitrogenPerCarbon;
  day.excretedPhosphorus = day.assimilatedPhosphorus - retained * energetics.phosphorusPerCarbon;
}

/** Books how much of today's ample food the water took the appetite for. */
function bookSlowing({ slowing, day }: LivingPopulation, ample: number): void {
  day.ampleCarbon = ample;
  if (slowing.kept === 1) return;
  for (let k = 0; k < slowing.lost.length; k += 1) day.slowed[k] = ample * slowing.lost[k]!;
}

/** Books eggs that the water left unmade, whose carbon is respired, under its causes [mol C]. */
function bookEggsCut({ slowing: { eggsKept, eggsLost }, day }: LivingPopulation, cut: number): void {
  for (let k = 0; k < eggsLost.length; k += 1)
    day.slowed[k] = day.slowed[k]! + (cut * eggsLost[k]!) / (1 - eggsKept);
}

/**
 * Part of the eggs that crowding leaves [1], 0 to 1: 1/(1 + s n), n the density over that at which crowding kills. What
 * is not made into eggs is respired.
 * @source mccreesh-2014: four times the density cut eggs per snail by 72 to 75 %; mangal-2010: eggs fall with density
 * however much food; the form is derived, densities are judgement
 */
function uncrowdedEggs({ crowded, traits }: LivingPopulation): number {
  return 1 / (1 + traits.crowdedEggs * crowded);
}

/** Lets every cohort live its day; returns the carbon the population gained in bodies [mol], negative when it starves. */
function growCohorts(population: LivingPopulation, surface: number, rate: number): number {
  const { train, energetics, traits, day } = population;
  rates.starvedUpkeep = traits.starvedUpkeep;
  rates.femaleShare = population.femalePart;
  // Larvae that pupate keep nothing for eggs: these are made of the pupa's body.
  const eggs = pupates(population) ? 0 : uncrowdedEggs(population);
  const { eggsKept } = population.slowing;
  let eggsCut = 0;
  let gained = 0;
  let used = 0;
  for (let i = 0; i < train.size; i += 1) {
    if (!eats(population, i)) {
      gained += train.count[i]! * liveOnBody(population, i, rate);
      continue;
    }
    const middle = train.middle[i]!;
    rates.rate = rate * paceOf(population, i);
    const part = surface > 0 ? surfaceOf(population, i) / surface : 0;
    state.length = middle;
    state.buffer = train.buffer[i]!;
    state.carbon = day.assimilatedCarbon * part;
    state.nitrogen = day.assimilatedNitrogen * part;
    state.phosphorus = day.assimilatedPhosphorus * part;
    if (state.carbon < rates.rate * energetics.upkeep * middle * middle * middle)
      state.length = train.length[i]!;
    const stored = useStore(population, i, rates.rate, state);
    const most = rates.rate * energetics.assimilation * feedingSquare(energetics, middle) * train.share[i]!;
    used += train.count[i]! * Math.min(state.carbon, most);
    animalDay(energetics, state, rates, result);
    if (result.buffer > 0) {
      const uncut = result.buffer * eggs;
      result.buffer = uncut * eggsKept;
      eggsCut += train.count[i]! * (uncut - result.buffer);
    }
    gained += train.count[i]! * (keepStructure(population, i) + result.store + result.buffer + stored);
    train.store[i] = train.store[i]! + result.store;
    train.buffer[i] = Math.max(0, train.buffer[i]! + result.buffer);
    setStage(population, i, result.structure);
  }
  if (eggsCut > 0) bookEggsCut(population, eggsCut);
  const ample = surface * rate * energetics.assimilation;
  population.fullness = ample > 0 ? Math.min(1, used / ample) : 0;
  return gained;
}

/** Applies the change of structure to cohort i; returns the change that was possible [mol C per animal]. */
function keepStructure({ train, energetics }: LivingPopulation, i: number): number {
  if (result.structure === 0) return 0;
  const before = structureOf(energetics, train.length[i]!);
  const after = Math.max(before * LEAST_STRUCTURE, before + result.structure);
  const length = lengthOf(energetics, after);
  train.length[i] = length;
  if (length > train.peak[i]!) train.peak[i] = length;
  return structureOf(energetics, length) - before;
}

/** A day's starvation takes at most nine tenths of what is left, so that a body never turns negative. */
const LEAST_STRUCTURE = 0.1;
