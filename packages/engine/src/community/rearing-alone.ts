import { addWellFed } from '../life/cohort-train.ts';
import { type Demography, EXPECTED } from '../life/demography.ts';
import { bodyRate } from '../life/energetics.ts';
import { type Pasture, setWanted } from '../life/feeding.ts';
import {
  type EatenByFood,
  FIRST_LAND_FOOD,
  FOOD_COUNT,
  FOOD_SPECS,
  nothingEaten,
  PREY,
} from '../life/foods.ts';
import { liveDay } from '../life/live-day.ts';
import {
  clearDay,
  createLivingPopulation,
  type LivingPopulation,
  type NamedSpecies,
} from '../life/living-population.ts';
import { populationInWater } from '../life/place.ts';
import type { Surroundings } from '../life/surroundings.ts';
import type { TraitValues } from '../life/traits.ts';
import type { WaterConditions } from '../life/water-stress.ts';

/** A species and one value of each of its traits. */
export interface RearedSpecies extends NamedSpecies {
  readonly values: Readonly<Record<string, number>>;
}

/** What of a rearing is not as usual. */
export interface RearingSetup {
  /** Of all animals at the start [mm]; newborn when left out. */
  readonly length?: number;
  /** What of the water is not in the middle of what the species bears. */
  readonly water?: Partial<WaterConditions>;
  /** Means when left out. */
  readonly demography?: Demography;
}

/** Newborns of one species in water and air that suit it, by themselves, with room and food without end. */
export interface RearingAlone {
  readonly population: LivingPopulation;
  /** Lets a day pass; newborns of the day stay in when `keepYoung`. */
  pass(keepYoung: boolean): void;
}

/** Food without end holds N and P per C as algae do. @source assumed, the ratio 106:16:1 of plankton; fungi and prey are near it */
const NITROGEN = 16 / 106;
const PHOSPHORUS = 1 / 106;
const ENDLESS = 1e12;
/** Oxygen above what the species needs [mg/L], and moist air [%]. @source assumed */
const OXYGEN_TO_SPARE = 5;
const MOIST = 98;

/**
 * Water without end and moist air that suit a species at a temperature [degC]: acidity and hardness in the middle of what it
 * bears, oxygen 5 mg/L above its need, no poison.
 * @source assumed: as rearings are done
 */
export function suitable(
  traits: TraitValues,
  temperature: number,
  { water }: RearingSetup = {},
): Surroundings {
  return {
    water: {
      temperature,
      oxygen: traits.oxygenNeeded + OXYGEN_TO_SPARE,
      unionisedAmmonia: 0,
      pH: (traits.pHLow + traits.pHHigh) / 2,
      hardness: (traits.hardnessLow + traits.hardnessHigh) / 2,
      ...water,
    },
    air: { temperature, humidity: MOIST, groundWetness: 1 },
    volume: Number.POSITIVE_INFINITY,
  };
}

/** The food within reach that an animal makes most of; undefined when it eats nothing there. */
function bestFood(traits: TraitValues, inWater: number): number | undefined {
  let best: number | undefined;
  let most = 0;
  for (const [k, { preference, efficiency }] of FOOD_SPECS.entries()) {
    const isWithinReach = k === PREY || (k < FIRST_LAND_FOOD ? inWater > 0 : inWater < 1);
    if (isWithinReach && traits[preference] > 0 && traits[efficiency] > most) {
      most = traits[efficiency];
      best = k;
    }
  }
  return best;
}

/**
 * Well-fed animals of one length and age 0, of a species whose mates never want.
 * @param count [1], > 0
 * @param length [mm]; of newborns when left out
 * @throws RangeError when a trait is missing, outside its range or contradicts another
 * @source derived
 */
export function cohortOf(
  { id, traits, values }: RearedSpecies,
  count: number,
  length?: number,
): LivingPopulation {
  const population = createLivingPopulation({ id, traits: { ...traits, mating: 'self-fertile' } }, values);
  const { energetics, train } = population;
  const size = length ?? energetics.birth;
  addWellFed(train, energetics, { count, length: size, age: 0, isAdult: size >= energetics.puberty });
  return population;
}

/**
 * A rearing: animals of a species by themselves at a temperature, in water in the middle of what it bears unless told
 * otherwise, in moist air, with as much of its best food as it wants and nobody crowding it. Mates never want.
 * @param temperature of water and air [degC]
 * @param count animals at the start [1], > 0
 * @throws RangeError when a trait is missing, outside its range or contradicts another
 * @source derived: the life module's own day, `liveDay`, on food without end
 */
export function rearAlone(
  species: RearedSpecies,
  temperature: number,
  count: number,
  setup: RearingSetup = {},
): RearingAlone {
  const population = cohortOf(species, count, setup.length);
  const { demography = EXPECTED } = setup;
  const amounts = new Float64Array(FOOD_COUNT);
  const pasture: Pasture = { amounts, area: 1, landArea: 1 };
  const around = suitable(population.traits, temperature, setup);
  const rate = bodyRate(population.traits, temperature);
  const meal = nothingEaten();
  return {
    population,
    pass(keepYoung) {
      amounts.fill(0);
      const best = bestFood(population.traits, populationInWater(population));
      if (best !== undefined) amounts[best] = ENDLESS;
      population.preyDensity = best === PREY ? ENDLESS : 0;
      setWanted(population, pasture, rate);
      fill(meal, population.wanted);
      clearDay(population.day);
      liveDay(population, meal, around, demography);
      if (!keepYoung) takeNewborns(population);
    },
  };
}

function fill(meal: EatenByFood, wanted: Float64Array): void {
  for (let k = 0; k < FOOD_COUNT; k += 1) {
    meal.carbon[k] = wanted[k]!;
    meal.nitrogen[k] = wanted[k]! * NITROGEN;
    meal.phosphorus[k] = wanted[k]! * PHOSPHORUS;
  }
}

/** Takes out who was released today: the last cohorts, of age 0, wherever their mothers already have aged a day. `derived`. */
export function takeNewborns({ train, day }: LivingPopulation): void {
  if (day.born <= 0) return;
  while (train.size > 0 && train.age[train.size - 1] === 0) train.size -= 1;
}
