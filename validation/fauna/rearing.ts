import { FOOD_COUNT, FOOD_SPECS, type TraitValues } from '@shoreglass/engine';
import { cohortOf, suitable } from '../../packages/engine/src/community/rearing-alone.ts';
import { bodyCarbonOf } from '../../packages/engine/src/life/cohort-train.ts';
import { EXPECTED } from '../../packages/engine/src/life/demography.ts';
import { bodyRate } from '../../packages/engine/src/life/energetics.ts';
import { type Meal, type Pasture, setWanted } from '../../packages/engine/src/life/feeding.ts';
import { nothingEaten } from '../../packages/engine/src/life/foods.ts';
import { liveDay } from '../../packages/engine/src/life/live-day.ts';
import { clearDay, type LivingPopulation } from '../../packages/engine/src/life/living-population.ts';
import type { Species } from './species.ts';

/** Food without end: N and P per C of Redfield's composition, near that of fungi and prey too. */
const NITROGEN = 16 / 106;
const PHOSPHORUS = 1 / 106;

export interface RearingSetup {
  readonly temperature: number;
  readonly count: number;
  /** Undefined for newborns. */
  readonly length?: number;
}

/** Animals of the library in suitable water without end, with or without food. */
export interface Rearing {
  readonly population: LivingPopulation;
  /** Lets a day pass. */
  pass(food: 'ample' | 'none'): void;
  /** Mean length [mm] and dry mass [mg] of the oldest cohort, and how many live in all. */
  length(): number;
  dryMass(): number;
  alive(): number;
  /** Takes out all but the oldest cohort, so that young do not mix with their parents. */
  keepOldest(): void;
}

function serve({ wanted }: LivingPopulation, meal: Meal, ration: number): void {
  for (let k = 0; k < wanted.length; k += 1) {
    const carbon = ration * wanted[k]!;
    meal.carbon[k] = carbon;
    meal.nitrogen[k] = carbon * NITROGEN;
    meal.phosphorus[k] = carbon * PHOSPHORUS;
  }
}

const ENDLESS = 1e12;

/** Algae without end for those that eat them, else all they eat but soil and leaves. */
function pastureFor(traits: TraitValues): Pasture {
  const amounts = new Float64Array(FOOD_COUNT);
  for (const [k, { food, preference }] of FOOD_SPECS.entries()) {
    const poor = food === 'soil' || food === 'litter' || food === 'land litter' || food === 'plants';
    const wanted = traits.preferenceForAlgae > 0 ? food === 'algae' : traits[preference] > 0 && !poor;
    if (wanted) amounts[k] = ENDLESS;
  }
  return { amounts, area: 1, landArea: 1 };
}

/** Water without end with floating algae held at a concentration [mg C/L]. */
function watered(concentration: number): Pasture {
  const amounts = new Float64Array(FOOD_COUNT);
  amounts[FOOD_SPECS.findIndex(({ food }) => food === 'suspended algae')] =
    (concentration / 12.011) * ENDLESS;
  return { amounts, area: ENDLESS, landArea: 1, volume: ENDLESS };
}

/** Starts a rearing. */
export function rear(
  { animal, traits, feedEvery = 1, ration = 1, concentration }: Species,
  { temperature, count, length }: RearingSetup,
): Rearing {
  const { id, brood, development = 'direct' } = animal;
  const ways = { mating: 'self-fertile', brood, development } as const;
  const population = cohortOf({ id, traits: ways, values: traits }, count, length);
  const { energetics, train } = population;
  const pasture = concentration === undefined ? pastureFor(traits) : watered(concentration);
  population.preyDensity =
    traits.preferenceForAlgae > 0 || concentration !== undefined ? 0 : ENDLESS * traits.preferenceForPrey;
  const meal = nothingEaten();
  let day = 0;
  const surroundings = suitable(traits, temperature);
  return {
    population,
    pass(food) {
      const isMealDay = day % feedEvery === 0;
      day += 1;
      setWanted(population, pasture, bodyRate(traits, temperature));
      serve(population, meal, isMealDay && food === 'ample' ? ration : 0);
      clearDay(population.day);
      liveDay(population, meal, surroundings, EXPECTED);
    },
    length: () => (train.size > 0 ? train.peak[0]! : Number.NaN),
    dryMass() {
      if (train.size === 0) return Number.NaN;
      const carbon = bodyCarbonOf(train, energetics, 0);
      return ((carbon * 12.011) / traits.carbonContent) * 1000;
    },
    alive() {
      let alive = 0;
      for (let i = 0; i < train.size; i += 1) alive += train.count[i]!;
      return alive;
    },
    keepOldest() {
      train.size = Math.min(1, train.size);
    },
  };
}

/** The values of a course by day 0, 1, 2 … at any time between, straight in between [unit of the course]. */
export function atTimes(course: readonly number[], times: readonly number[]): number[] {
  return times.map((time) => {
    const day = Math.min(Math.max(0, Math.floor(time)), course.length - 2);
    return course[day]! + (time - day) * (course[day + 1]! - course[day]!);
  });
}

/** First time at which a rising course reaches a level, straight in between; undefined when it never does [d]. */
export function timeOf(course: readonly number[], level: number): number | undefined {
  const day = course.findIndex((value) => value >= level);
  if (day <= 0) return day === 0 ? 0 : undefined;
  const before = course[day - 1]!;
  return day - 1 + (level - before) / (course[day]! - before);
}
