import { addWellFed } from './cohort-train.ts';
import type { Demography } from './demography.ts';
import type { LivingPopulation } from './living-population.ts';

/** Part of the young of a day that are poor feeders, and as large a part that are good ones [1]. */
const OUTER = 1 / 6;
/** How far both feed from the mean, in spreads [1]: with the parts above mean, spread and the fourth moment are a normal's. */
const REACH = Math.sqrt(3);

/** Puts some of the young in that eat a share of the mean; none where there are none. */
function put({ train, energetics }: LivingPopulation, count: number, share: number): void {
  if (count > 0)
    addWellFed(train, energetics, { count, length: energetics.birth, age: 0, isAdult: false, share });
}

/**
 * Puts the young of a day in: one cohort, or of a species whose young differ in how much they eat three for life, 1/6, 2/3 and
 * 1/6 of them at 1 - sqrt(3) s, 1 and 1 + sqrt(3) s of the mean, s the spread.
 * @param count [1], > 0
 * @source derived: Gauss-Hermite points of a normal; that young differ so and do not hand it on: martin-2014
 */
export function addNewborns(population: LivingPopulation, count: number, demography: Demography): void {
  const away = REACH * population.traits.variation;
  if (away === 0) {
    put(population, count, 1);
    return;
  }
  const poor = demography.among(count, OUTER);
  const good = Math.min(count - poor, demography.among(count - poor, OUTER / (1 - OUTER)));
  put(population, poor, 1 - away);
  put(population, count - poor - good, 1);
  put(population, good, 1 + away);
}
