import { expm1, log1p } from '../numerics/elementary.ts';
import { airHazard } from './air-stress.ts';
import { hazardOf, passBurden } from './burden.ts';
import { bodyCarbonOf, dropEmpty, GROWN } from './cohort-train.ts';
import type { Demography } from './demography.ts';
import { drowningHazard, GENTLE_SHORE } from './drowning.ts';
import { DEATH_CAUSES, type DeathCause, type LivingPopulation, WATER_CAUSES } from './living-population.ts';
import { deathPerMoult, moultsPerDay } from './moulting.ts';
import { cohortInWater } from './place.ts';
import { POISONS } from './poisons.ts';
import { dryGroundHazard, pupates } from './pupation.ts';
import { conditionOf } from './store.ts';
import { MILD_AIR, type Surroundings } from './surroundings.ts';
import { groundTimes } from './territory.ts';
import { TOLERANCES, toleranceHazards, type WaterConditions } from './water-stress.ts';

const cause = (name: DeathCause): number => DEATH_CAUSES.indexOf(name);
const STARVATION = cause('starvation');
const AGE = cause('age');
const NITRITE = cause('nitrite');
const AIR = cause('air');
const DROWNED = cause('drowned');
const LEFT_DRY = cause('left dry');
const MOULTING = cause('moulting');
const CROWDING = cause('crowding');
const EATEN = cause('eaten');
const EATEN_BY_OWN = cause('eaten by own kind');
const LEFT = cause('left');
const BACKGROUND = cause('background');

/** Places of the water's causes, in the order of `DayOutside.waterParts`. */
const WATER_PLACES: readonly number[] = WATER_CAUSES.map(cause);
const AMMONIA_PART = TOLERANCES.length;
const COPPER_PART = AMMONIA_PART + 1;
export const WATER_PARTS = WATER_CAUSES.length;
/** The sum of these is one hazard while cohorts are gone through, at the place of the first of them. */
const WATER = WATER_PLACES[0]!;

const LITRES_PER_CUBIC_METRE = 1000;
const hazard = new Float64Array(DEATH_CAUSES.length);
/** Deaths to be put down to each cause by the mean, before whole deaths are shared among causes. */
const blame = new Float64Array(DEATH_CAUSES.length);

/**
 * Hazard of starving [1/d], >= 0: b (limit / condition - 1) below the limit, endless as the body is used up.
 * @param condition body over the best and well-fed one [0..1]
 * @param limit below which starvation may kill [0..1]
 * @param b at half the limit [1/d]
 * @source assumed: form chosen to meet the survival of starved Hyalella azteca (soucek-2013)
 */
export function starvationHazard(condition: number, limit: number, b: number): number {
  return condition < limit ? b * (limit / condition - 1) : 0;
}

/**
 * Mean hazard of old age over a day [1/d], >= 0: Weibull of shape 3, S(age) = exp(-(age/lifespan)^3).
 * @param age at the start of the day, in days at the reference temperature [d]
 * @param step by which age rises today [d]
 * @source derived: shape 3 meets the survival of Hyalella azteca to 119 d (borgmann-1989)
 */
export function agingHazard(age: number, step: number, lifespan: number): number {
  const before = age / lifespan;
  const after = (age + step) / lifespan;
  return after * after * after - before * before * before;
}

/** Full-grown equivalents in the water [1]: sum of count (length / full-grown)^2. @source derived from shares of food. */
export function fullGrownEquivalents({ train, energetics }: LivingPopulation): number {
  let sum = 0;
  for (let i = 0; i < train.size; i += 1) {
    const size = train.peak[i]! / energetics.fullGrown;
    sum += train.count[i]! * size * size;
  }
  return sum;
}

/**
 * Full-grown equivalents over those at which crowding begins to kill [1], >= 0: by animals per litre for their time in
 * water, and by the ground each claims.
 * @source derived
 */
export function crowdingTimes(population: LivingPopulation, around: Surroundings): number {
  const { crowdingDensity, shareInWater } = population.traits;
  const animals = fullGrownEquivalents(population);
  const litres = around.volume * LITRES_PER_CUBIC_METRE;
  const inWater = litres > 0 ? (shareInWater * animals) / (litres * crowdingDensity) : 0;
  return Math.max(inWater, groundTimes(population.traits, animals, around));
}

/** Open part of the cover at which animals that can leave do so at their full rate. @source assumed */
const WIDE_OPEN = 0.02;

/** Hazard of leaving through the cover for a cohort that spends a part of its life in the water [1/d]. */
function leavingHazard(leaving: number, openCover: number, inWater: number): number {
  if (leaving === 0 || openCover <= 0) return 0;
  return leaving * (1 - inWater) * Math.min(1, openCover / WIDE_OPEN);
}

/** Hazards of today that are the same for all cohorts of a stage, how fast the clock ran [1], and what surrounds them. */
export interface DayOutside {
  readonly around: Surroundings;
  readonly rate: number;
  /** Hazards of the water's quality for the grown and for the young. */
  readonly grown: WaterHazard;
  readonly young: WaterHazard;
  /** Hazard of lying where the water is gone, for those of the water [1/d]. */
  readonly dry: number;
  /** Hazard of the air's quality [1/d]. */
  readonly air: number;
}

/** Hazards of the water for animals of a stage [1/d]. */
export interface WaterHazard {
  /** Of all but nitrite, and of nitrite for those with gills. */
  water: number;
  nitrite: number;
  /** Parts of `water`: tolerances, ammonia, copper; WATER_PARTS long. */
  readonly parts: Float64Array;
}

/** Water that harms nobody. `derived`. */
export function harmlessWater(): WaterHazard {
  return { water: 0, nitrite: 0, parts: new Float64Array(WATER_PARTS) };
}

/**
 * Sets the hazard of death by the water's quality today for the grown and the young [1/d], >= 0; moves the burdens of
 * poisons on by a day.
 * @source derived: sum of `toleranceHazards` and of the poisons by `passBurden` and `hazardOf`
 */
export function setWaterHazards(
  { traits, burdens, poisonByStage }: LivingPopulation,
  water: WaterConditions,
  grown: WaterHazard,
  young: WaterHazard,
): void {
  const tolerance = toleranceHazards(traits, water, grown.parts);
  const [ammonia, nitrite, copper] = POISONS;
  const byAmmonia = passBurden(burdens[0]!, ammonia.acting(water));
  const byNitrite = passBurden(burdens[1]!, nitrite.acting(water, traits));
  const byCopper = passBurden(burdens[2]!, copper.acting(water));
  grown.parts[AMMONIA_PART] = byAmmonia;
  grown.parts[COPPER_PART] = byCopper;
  grown.water = tolerance + byAmmonia + byCopper;
  grown.nitrite = byNitrite;
  young.parts.set(grown.parts);
  young.water = grown.water;
  young.nitrite = byNitrite;
  if (poisonByStage.isAlike) return;
  poisonStage(burdens, poisonByStage.grown, { tolerance, into: grown });
  poisonStage(burdens, poisonByStage.young, { tolerance, into: young });
}

/** Sets what poisons do to a stage for which they count so many times over. */
function poisonStage(
  burdens: LivingPopulation['burdens'],
  times: readonly number[],
  { tolerance, into }: { readonly tolerance: number; readonly into: WaterHazard },
): void {
  const ammonia = hazardOf(burdens[0]!, times[0]!);
  const copper = hazardOf(burdens[2]!, times[2]!);
  into.parts[AMMONIA_PART] = ammonia;
  into.parts[COPPER_PART] = copper;
  into.water = tolerance + ammonia + copper;
  into.nitrite = hazardOf(burdens[1]!, times[1]!);
}

/**
 * Part of its time that cohort i breathes water by gills [0..1]: larvae that change do so until then, all others as long as
 * they are in the water.
 * @source assumed: nitrite enters by the gills that take chloride up; frogs and newts past their change breathe air
 */
function breathingWater({ traits, train }: LivingPopulation, i: number): number {
  if (traits.lengthAtChange > 0) return train.peak[i]! < traits.lengthAtChange ? 1 : 0;
  return traits.shareInWater;
}

/** Hazard of lying where the water is gone [1/d]: half die in `timeDry`; 0 while water stands. @source derived */
export function hazardOfDrying({ traits }: LivingPopulation, { isGone = false }: WaterConditions): number {
  return isGone ? Math.LN2 / traits.timeDry : 0;
}

/** Hazard of the air today [1/d]; 0 for those that never leave the water. `derived` from `airHazard`. */
export function hazardOfAir(population: LivingPopulation, { air = MILD_AIR }: Surroundings): number {
  return population.traits.shareInWater < 1 ? airHazard(population.traits, air) : 0;
}

/** Deaths of cohort i from causes not modelled, at the reference temperature [1/d]: larvae have some of their own. `derived`. */
function backgroundLoss({ traits, train }: LivingPopulation, i: number): number {
  if (train.adult[i] === GROWN) return traits.adultLoss;
  return train.peak[i]! < traits.lengthAtChange
    ? traits.juvenileLoss + traits.larvalLoss
    : traits.juvenileLoss;
}

/**
 * Lets animals die today and grow a day older; returns the share of adults that died [0..1], 1 when none are left.
 * Deaths of a cohort: count (1 - exp(-sum of hazards)), shared among causes by their hazards.
 * @source derived: competing hazards constant over a day
 */
export function ageAndDie(
  population: LivingPopulation,
  { around, rate, grown, young, dry, air }: DayOutside,
  demography: Demography,
): number {
  const { train, traits, energetics } = population;
  hazard.fill(0);
  hazard[CROWDING] = population.crowded > 1 ? traits.crowdingHazard * (population.crowded - 1) : 0;
  const perMoult =
    traits.moultInterval > 0 ? deathPerMoult(traits, traits.shareInWater > 0 ? around.water : undefined) : 0;
  const { openCover = 0, shore = GENTLE_SHORE, landArea = 0 } = around;
  const drowning = traits.shareInWater < 1 ? drowningHazard(traits, shore, landArea) : 0;
  const doesPupate = pupates(population);
  const dryGround = traits.wetGround > 0 ? dryGroundHazard(population, around.air ?? MILD_AIR) : 0;
  blame.fill(0);
  let dead = 0;
  let adults = 0;
  let adultsLeft = 0;
  let youngByWater = 0;
  for (let i = 0; i < train.size; i += 1) {
    const isAdult = train.adult[i] === GROWN;
    hazard[STARVATION] = starvationHazard(
      conditionOf(population, i),
      traits.starvationCondition,
      traits.starvationHazard,
    );
    hazard[AGE] = isAdult || !doesPupate ? agingHazard(train.age[i]!, rate, traits.lifespan) : 0;
    hazard[BACKGROUND] = rate * backgroundLoss(population, i);
    const inWater = cohortInWater(population, i);
    const { water, nitrite } = isAdult ? grown : young;
    hazard[WATER] = inWater * water;
    hazard[NITRITE] = nitrite > 0 ? nitrite * breathingWater(population, i) : 0;
    hazard[LEFT_DRY] = inWater * dry;
    hazard[AIR] = (1 - inWater) * (isAdult ? air : air + dryGround);
    hazard[DROWNED] = (1 - inWater) * drowning;
    if (perMoult > 0)
      hazard[MOULTING] =
        train.peak[i]! < energetics.stops
          ? -log1p(-perMoult) * moultsPerDay(traits, train.peak[i]! / energetics.fullGrown, rate)
          : 0;
    hazard[LEFT] = isAdult ? leavingHazard(traits.leaving, openCover, inWater) : 0;
    if (isAdult) adults += train.count[i]!;
    train.age[i] = train.age[i]! + rate;
    const before = blame[WATER]!;
    dead += takeDeaths(population, i, demography);
    if (!isAdult) youngByWater += blame[WATER]! - before;
    if (isAdult) adultsLeft += train.count[i]!;
  }
  shareWater(grown, young, youngByWater);
  bookCauses(population.day.deaths, dead, demography);
  dropEmpty(train, demography.least);
  const kept = adultsLeft > 0 ? adultsLeft / adults : 0;
  return 1 - kept * (1 - population.adultsHunted);
}

/** Splits what was put down to the water among its parts, of the grown and of the young. */
function shareWater(grown: WaterHazard, young: WaterHazard, youngByWater: number): void {
  const ofGrown = grown.water > 0 ? (blame[WATER]! - youngByWater) / grown.water : 0;
  const ofYoung = young.water > 0 ? youngByWater / young.water : 0;
  if (ofGrown === 0 && ofYoung === 0) return;
  for (let part = 0; part < WATER_PARTS; part += 1)
    blame[WATER_PLACES[part]!] = ofGrown * grown.parts[part]! + ofYoung * young.parts[part]!;
}

/** Takes the day's deaths out of cohort i; returns how many. */
function takeDeaths(population: LivingPopulation, i: number, demography: Demography): number {
  const { train, energetics, day } = population;
  let total = 0;
  for (let cause = 0; cause < hazard.length; cause += 1) total += hazard[cause]!;
  const count = train.count[i]!;
  let dead = demography.among(count, -expm1(-total));
  if (count - dead < demography.least) dead = count;
  if (dead <= 0) return 0;
  train.count[i] = count - dead;
  const carbon = dead * bodyCarbonOf(train, energetics, i);
  const left = total > 0 ? hazard[LEFT]! / total : 0;
  day.leftCarbon += carbon * left;
  day.deadCarbon += carbon * (1 - left);
  if (total > 0) {
    const deadPerHazard = dead / total;
    for (let cause = 0; cause < hazard.length; cause += 1) {
      blame[cause] = blame[cause]! + deadPerHazard * hazard[cause]!;
    }
  }
  return dead;
}

/** Shares the day's deaths among causes, whole deaths in a member; what is left is put down to the background. */
function bookCauses(deaths: Float64Array, dead: number, demography: Demography): void {
  let left = dead;
  let meanLeft = dead;
  for (let cause = 0; cause < BACKGROUND && left > 0; cause += 1) {
    if (cause === EATEN || cause === EATEN_BY_OWN) continue;
    const mean = blame[cause]!;
    if (mean <= 0) continue;
    const taken = demography.among(left, Math.min(1, mean / meanLeft));
    deaths[cause] = taken;
    left -= taken;
    meanLeft -= mean;
  }
  deaths[BACKGROUND] = left;
}
