import { GROWN } from '../life/cohort-train.ts';
import { EXPECTED } from '../life/demography.ts';
import { fullGrownEquivalents } from '../life/dying.ts';
import { bodyRate } from '../life/energetics.ts';
import { feedingSurface, setFeedingLengths } from '../life/feeding.ts';
import { nothingEaten } from '../life/foods.ts';
import { liveDay } from '../life/live-day.ts';
import { clearDay, type LivingPopulation } from '../life/living-population.ts';
import { addNewborns } from '../life/newborns.ts';
import { findRoot } from '../numerics/roots.ts';
import { cohortOf, type RearedSpecies, suitable, takeNewborns } from './rearing-alone.ts';

/** What the life of one newborn comes to at a steady ration. */
export interface FedLife {
  /** Young released in a whole life [1]. */
  readonly young: number;
  /** Carbon assimilated in a whole life [mol]. */
  readonly assimilated: number;
  /** Days lived as young, as adult, and weighed by feeding surface over that of a full-grown animal [d]. */
  readonly youngDays: number;
  readonly adultDays: number;
  readonly equivalentDays: number;
}

/** A population whose births make up for its deaths, for each carbon it assimilates a day. */
export interface SteadyPopulation {
  /** Assimilation over that with ample food [0..1]. */
  readonly ration: number;
  /** Animals, and full-grown equivalents, over assimilation [d/mol]. */
  readonly adults: number;
  readonly young: number;
  readonly equivalents: number;
}

const NEWBORNS = 1e6;
const LEAST_ALIVE = 0.02;
const MOST_DAYS = 8000;
/** Food that lacks no nitrogen and phosphorus [mol/mol]: what is not needed is excreted. @source assumed */
const NITROGEN = 0.3;
const PHOSPHORUS = 0.03;
/** The rations between which the one that keeps numbers steady is looked for, and how closely [1]. */
const LEAST_RATION = 0.2;
const PRECISION = 0.005;

/** Free-living animals [1]. */
function aliveIn({ train }: LivingPopulation): number {
  let alive = 0;
  for (let i = 0; i < train.size; i += 1) alive += train.count[i]!;
  return alive;
}

/**
 * The life of newborns that assimilate a steady part of what ample food would give, by the code that carries an
 * enclosure's animals; per newborn, in water and air that suit them and without anybody beside them.
 * @param ration assimilation over that with ample food [0..1]
 * @param temperature of water and air [degC]
 * @throws RangeError when a trait is missing, outside its range or contradicts another
 * @source derived: `liveDay` on meals in proportion to feeding surface
 */
export function lifeOnRation(species: RearedSpecies, temperature: number, ration: number): FedLife {
  const population = cohortOf(species, NEWBORNS);
  population.train.size = 0;
  addNewborns(population, NEWBORNS, EXPECTED);
  const { energetics, train, diet, day, broods } = population;
  const around = suitable(population.traits, temperature);
  const rate = bodyRate(population.traits, temperature);
  const meal = nothingEaten();
  const food = diet.foods[0] ?? 0;
  const sums = { young: 0, assimilated: 0, youngDays: 0, adultDays: 0, equivalentDays: 0 };
  population.fullness = ration;
  for (let age = 0; age < MOST_DAYS && (train.size > 0 || broods.size > 0); age += 1) {
    setFeedingLengths(population, rate);
    const assimilated = ration * feedingSurface(population) * rate * energetics.assimilation;
    meal.carbon[food] = assimilated / diet.efficiency[food]!;
    meal.nitrogen[food] = (assimilated * NITROGEN) / diet.nutrientEfficiency;
    meal.phosphorus[food] = (assimilated * PHOSPHORUS) / diet.nutrientEfficiency;
    for (let i = 0; i < train.size; i += 1) {
      if (train.adult[i] === GROWN) sums.adultDays += train.count[i]!;
      else sums.youngDays += train.count[i]!;
    }
    sums.equivalentDays += fullGrownEquivalents(population);
    clearDay(day);
    liveDay(population, meal, around, EXPECTED);
    sums.assimilated += assimilated;
    sums.young += day.born;
    takeNewborns(population);
    if (aliveIn(population) < LEAST_ALIVE * NEWBORNS) train.size = 0;
  }
  return {
    young: sums.young / NEWBORNS,
    assimilated: sums.assimilated / NEWBORNS,
    youngDays: sums.youngDays / NEWBORNS,
    adultDays: sums.adultDays / NEWBORNS,
    equivalentDays: sums.equivalentDays / NEWBORNS,
  };
}

/**
 * The population that food alone holds steady: at the ration at which every newborn leaves one newborn. Undefined for a
 * species that does not replace itself even with ample food.
 * @param temperature of water and air [degC]
 * @throws RangeError as `lifeOnRation`
 * @validity a long-run mean: real numbers swing about it, and crowding, hunters, water and air take their part
 * @source de-roos-1988 (a population at equilibrium holds its food where R0 = 1); the rearing is derived
 */
export function steadyPopulation(species: RearedSpecies, temperature: number): SteadyPopulation | undefined {
  const spare = (ration: number): number => lifeOnRation(species, temperature, ration).young - 1;
  if (!(spare(1) > 0)) return undefined;
  // Births set in at the ration on which puberty is reached, so the end of the bracket that has them is taken.
  const ration =
    spare(LEAST_RATION) >= 0
      ? LEAST_RATION
      : Math.min(1, findRoot(spare, { low: LEAST_RATION, high: 1, tolerance: PRECISION }) + PRECISION);
  const { assimilated, youngDays, adultDays, equivalentDays } = lifeOnRation(species, temperature, ration);
  return {
    ration,
    adults: adultDays / assimilated,
    young: youngDays / assimilated,
    equivalents: equivalentDays / assimilated,
  };
}
