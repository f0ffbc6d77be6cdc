import { expm1 } from '../numerics/elementary.ts';
import { bodyCarbonOf, dropEmpty, GROWN } from './cohort-train.ts';
import type { Demography } from './demography.ts';
import { type OpenLand, openOnLand, sparedHazard } from './exposure.ts';
import { type EatenByFood, PREY } from './foods.ts';
import { DEATH_CAUSES, type LivingPopulation } from './living-population.ts';
import { cohortInWater, surfaceOf } from './place.ts';
import { satiety } from './sublethal.ts';

const EATEN = DEATH_CAUSES.indexOf('eaten');
const EATEN_BY_OWN = DEATH_CAUSES.indexOf('eaten by own kind');

/** Where hunters and prey meet: submerged surface [m2], land, and what cover lies there. */
export interface HuntingGround extends OpenLand {
  area: number;
}

/** Days a moulting animal is soft, during which its own kind may eat it at any size. @source assumed */
const SOFT_DAYS = 1;

/** Choice of a kind of prey by a hunter [1]: its own kind by hunger, others by what they are and how readily they are found. */
function choice(hunter: LivingPopulation, prey: LivingPopulation): number {
  if (hunter === prey) return hunter.traits.cannibalism * (1 - satiety(hunter));
  return prey.preyKind === undefined ? 0 : hunter.finding * (hunter.hunts.get(prey.preyKind) ?? 0);
}

/**
 * Part of the hunters, by feeding surface, that see prey of a length and whose mouths fit it [1], 0 to 1.
 * @param length of the prey [mm]
 * @param mouthful length it counts as in a mouth [mm]
 * @source derived: a hunter of length L takes prey between two fixed parts of L
 */
function fittingPart(hunter: LivingPopulation, length: number, mouthful: number): number {
  const { preySmallest, preyLargest } = hunter.traits;
  const { train } = hunter;
  let all = 0;
  let fitting = 0;
  for (let i = 0; i < train.size; i += 1) {
    const surface = train.count[i]! * surfaceOf(hunter, i);
    all += surface;
    const own = train.length[i]!;
    if (mouthful <= preyLargest * own && length >= preySmallest * own) fitting += surface;
  }
  return all > 0 ? fitting / all : 0;
}

/** Access of a hunter to a cohort per carbon in it, by place [1/m2], and what lies open to it on land [1]; refilled by `access`. */
const reach = { inWater: 0, onLand: 0, open: 0 };

/**
 * Writes the access of a hunter to prey cohort j into `reach`; returns it over both places [1/m2]: choice, fitting mouths,
 * what lies open, and the parts of both lives spent in the same place over its surface.
 * @source derived; refuge in proportion to cover is assumed
 */
function access(hunter: LivingPopulation, prey: LivingPopulation, j: number, ground: HuntingGround): number {
  reach.inWater = 0;
  reach.onLand = 0;
  reach.open = 0;
  const chosen = choice(hunter, prey);
  if (chosen <= 0) return 0;
  const { train, traits } = prey;
  const length = train.peak[j]!;
  let fits = fittingPart(hunter, length, hunter === prey ? length : prey.mouthful * length);
  if (hunter === prey && traits.moultInterval > 0)
    fits += (1 - fits) * Math.min(1, SOFT_DAYS / traits.moultInterval);
  if (fits <= 0) return 0;
  const wet = cohortInWater(prey, j);
  if (ground.area > 0)
    reach.inWater =
      (chosen * fits * hunter.inWater * wet * (1 - traits.hiding * ground.cover.inWater)) / ground.area;
  if (ground.landArea > 0 && wet < 1 && hunter.inWater < 1) {
    reach.open = openOnLand(hunter, prey, j, ground);
    reach.onLand = (chosen * fits * (1 - hunter.inWater) * (1 - wet) * reach.open) / ground.landArea;
  }
  return reach.inWater + reach.onLand;
}

/** True when a population can hunt at all. */
function hunts({ traits, hunts: kinds, train }: LivingPopulation): boolean {
  return traits.preferenceForPrey > 0 && train.size > 0 && (kinds.size > 0 || traits.cannibalism > 0);
}

function bodyCarbon({ train, energetics }: LivingPopulation, j: number): number {
  return bodyCarbonOf(train, energetics, j);
}

/** Sets each population's weighted prey within reach [mol/m2]; feeding lengths must be set before. `derived`. */
export function setPreyDensity(living: readonly LivingPopulation[], ground: HuntingGround): void {
  for (const hunter of living) {
    hunter.preyDensity = 0;
    if (!hunts(hunter)) continue;
    for (const prey of living) {
      if (choice(hunter, prey) <= 0) continue;
      for (let j = 0; j < prey.train.size; j += 1) {
        hunter.preyDensity += prey.train.count[j]! * bodyCarbon(prey, j) * access(hunter, prey, j, ground);
      }
    }
  }
}

/** What each hunter caught of each population today [mol C], `caught[hunter][prey]`. */
export type Caught = readonly Float64Array[];

/**
 * Lets hunters catch what they wanted of prey: each cohort is hunted with hazard wanted / density x access, and deaths
 * are shared among hunters by hazard. Fills `meals[hunter]` at PREY and `caught`; takes the dead out of their trains.
 * @source derived: competing hazards constant over a day
 */
export function hunt(
  living: readonly LivingPopulation[],
  ground: HuntingGround,
  meals: readonly EatenByFood[],
  { caught, demography }: { readonly caught: Caught; readonly demography: Demography },
): void {
  for (const row of caught) row.fill(0);
  for (const meal of meals) {
    meal.carbon[PREY] = 0;
    meal.nitrogen[PREY] = 0;
    meal.phosphorus[PREY] = 0;
  }
  for (const prey of living) prey.adultsHunted = 0;
  if (!living.some((hunter) => hunter.preyDensity > 0)) return;
  for (const [q, prey] of living.entries()) huntOne(living, q, prey, { ground, meals, caught, demography });
  for (const prey of living) dropEmpty(prey.train, demography.least);
}

interface Hunt {
  readonly ground: HuntingGround;
  readonly meals: readonly EatenByFood[];
  readonly caught: Caught;
  readonly demography: Demography;
}

/** Hazards of one cohort by hunter [1/d], in all and on land; refilled by `setHazards`. */
const hazards: number[] = [];
const hazardsOnLand: number[] = [];

/** Fills `hazards` of prey cohort j; returns their sum [1/d]: on land what does not lie open today is safe. */
function setHazards(
  living: readonly LivingPopulation[],
  prey: LivingPopulation,
  j: number,
  ground: HuntingGround,
): number {
  let total = 0;
  let onLand = 0;
  let open = 0;
  for (let p = 0; p < living.length; p += 1) {
    const hunter = living[p]!;
    hazards[p] = 0;
    hazardsOnLand[p] = 0;
    const pace = hunter.preyDensity > 0 ? hunter.wanted[PREY]! / hunter.preyDensity : 0;
    if (!(pace > 0) || access(hunter, prey, j, ground) <= 0) continue;
    hazards[p] = pace * reach.inWater;
    hazardsOnLand[p] = pace * reach.onLand;
    total += hazards[p]!;
    onLand += hazardsOnLand[p]!;
    if (hazardsOnLand[p]! > 0) open = Math.max(open, reach.open);
  }
  if (onLand <= 0) return total;
  const spared = sparedHazard(onLand, open);
  for (let p = 0; p < living.length; p += 1) hazards[p] = hazards[p]! + (hazardsOnLand[p]! * spared) / onLand;
  return total + spared;
}

function huntOne(living: readonly LivingPopulation[], q: number, prey: LivingPopulation, hunt: Hunt): void {
  const { train, energetics, day } = prey;
  let adults = 0;
  let adultsKilled = 0;
  for (let j = 0; j < train.size; j += 1) {
    const count = train.count[j]!;
    if (train.adult[j] === GROWN) adults += count;
    const total = setHazards(living, prey, j, hunt.ground);
    if (total <= 0) continue;
    let dead = hunt.demography.among(count, -expm1(-total));
    if (count - dead < hunt.demography.least) dead = count;
    if (dead <= 0) continue;
    const carbon = dead * bodyCarbon(prey, j);
    train.count[j] = count - dead;
    if (train.adult[j] === GROWN) adultsKilled += dead;
    day.huntedCarbon += carbon;
    for (let p = 0; p < living.length; p += 1) {
      const part = hazards[p]! / total;
      if (part <= 0) continue;
      const meal = hunt.meals[p]!;
      meal.carbon[PREY] = meal.carbon[PREY]! + carbon * part;
      meal.nitrogen[PREY] = meal.nitrogen[PREY]! + carbon * part * energetics.nitrogenPerCarbon;
      meal.phosphorus[PREY] = meal.phosphorus[PREY]! + carbon * part * energetics.phosphorusPerCarbon;
      hunt.caught[p]![q] = hunt.caught[p]![q]! + carbon * part;
    }
    const own = living.indexOf(prey);
    const byOwn = hunt.demography.whole((dead * hazards[own]!) / total);
    day.deaths[EATEN_BY_OWN] = day.deaths[EATEN_BY_OWN]! + Math.min(dead, byOwn);
    day.deaths[EATEN] = day.deaths[EATEN]! + dead - Math.min(dead, byOwn);
  }
  prey.adultsHunted = adults > 0 ? adultsKilled / adults : 0;
}
