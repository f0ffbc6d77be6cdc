import { expm1 } from '../numerics/elementary.ts';
import { addBrood, dropEmptyBroods, eggCarbonAt } from './brood-train.ts';
import { GROWN } from './cohort-train.ts';
import type { Demography } from './demography.ts';
import type { LivingPopulation } from './living-population.ts';
import { addNewborns } from './newborns.ts';

/** Loss of carried eggs in water too warm to breed [1/d]: nearly all within a week (assumed). */
const HEAT_LOSS = 0.5;
/** What matters to eggs today. */
export interface BroodDay {
  /** Temperature around the animals [degC] and factor on egg development [1]. */
  readonly temperature: number;
  readonly rate: number;
  /** Hazard of the water's and the air's quality where eggs lie [1/d]. */
  readonly outside: number;
  /** Share of adults that died today [0..1]. */
  readonly adultsLost: number;
}

/**
 * Moves eggs on by a day, takes the losses, releases the young (`addNewborns`). Carried eggs are lost with their
 * mothers; laid ones meet the hazards outside themselves. Larvae that need salt die. Books respiration, losses and births.
 * @source derived: progress rate / brood time; losses as competing hazards constant over a day
 */
export function developBroods(population: LivingPopulation, day: BroodDay, demography: Demography): void {
  const { broods, traits, carriesBrood } = population;
  const step = day.rate / traits.broodTime;
  const isHot = carriesBrood && day.temperature > traits.breedingWarmest;
  const hazard = traits.broodLoss * day.rate + (isHot ? HEAT_LOSS : 0) + (carriesBrood ? 0 : day.outside);
  const survival = (1 + expm1(-hazard)) * (carriesBrood ? 1 - day.adultsLost : 1);
  let released = 0;
  for (let i = 0; i < broods.size; i += 1) {
    respireEggs(population, i, Math.min(1, broods.progress[i]! + step));
    const lost = demography.among(broods.count[i]!, 1 - survival);
    loseEggs(population, i, lost);
    if (broods.progress[i]! + step / 2 < 1) continue;
    respireEggs(population, i, 1);
    if (population.hasBrackishLarvae) loseEggs(population, i, broods.count[i]!);
    released += broods.count[i]!;
    broods.count[i] = 0;
  }
  dropBroods(population, demography.least);
  if (released <= 0) return;
  population.day.born = released;
  addNewborns(population, released, demography);
}

function respireEggs(population: LivingPopulation, i: number, progress: number): void {
  const { broods, energetics } = population;
  const used = eggCarbonAt(energetics, broods.progress[i]!) - eggCarbonAt(energetics, progress);
  broods.progress[i] = progress;
  bookRespiration(population, broods.count[i]! * used);
}

function bookRespiration({ energetics, day }: LivingPopulation, carbon: number): void {
  day.respiredCarbon += carbon;
  day.excretedNitrogen += carbon * energetics.nitrogenPerCarbon;
  day.excretedPhosphorus += carbon * energetics.phosphorusPerCarbon;
}

function loseEggs({ broods, energetics, day }: LivingPopulation, i: number, lost: number): void {
  if (lost <= 0) return;
  broods.count[i] = broods.count[i]! - lost;
  day.eggsLost += lost;
  day.deadCarbon += lost * eggCarbonAt(energetics, broods.progress[i]!);
}

function dropBroods(population: LivingPopulation, least: number): void {
  const { broods } = population;
  for (let i = 0; i < broods.size; i += 1) {
    if (broods.count[i]! < least) loseEggs(population, i, broods.count[i]!);
  }
  dropEmptyBroods(broods, least);
}

/**
 * Lets adults lay. Females are spread evenly over their brood interval, so that each day a share rate / interval
 * of them lays twice the mean buffer; the mean buffer then settles where eggs match what food provides.
 * @source derived; broods smaller than one egg wait
 */
export function layEggs(population: LivingPopulation, day: BroodDay, demography: Demography): void {
  const { train, traits, energetics } = population;
  if (day.temperature < traits.breedingCoolest || day.temperature > traits.breedingWarmest) return;
  const { femalePart, mated, placed } = population;
  const chance = Math.min(0.5, day.rate / traits.broodInterval) * mated * placed;
  let eggs = 0;
  for (let i = 0; i < train.size; i += 1) {
    const brood = (2 * train.buffer[i]!) / (femalePart * energetics.eggCarbon);
    if (train.adult[i] !== GROWN || !(brood >= 1) || chance <= 0) continue;
    const females = demography.whole(train.count[i]! * femalePart);
    const layers = demography.among(Math.min(females, train.count[i]!), chance);
    const most = demography.wholeBelow((train.count[i]! * train.buffer[i]!) / energetics.eggCarbon);
    const laid = Math.min(most, demography.events(layers * brood));
    train.buffer[i] = Math.max(0, train.buffer[i]! - (laid * energetics.eggCarbon) / train.count[i]!);
    eggs += laid;
  }
  if (eggs <= 0) return;
  population.day.laid = eggs;
  const progress = Math.min(0.5, (0.5 * day.rate) / traits.broodTime);
  bookRespiration(population, eggs * (energetics.eggCarbon - eggCarbonAt(energetics, progress)));
  addBrood(population.broods, eggs, progress);
}
