import type { Removal } from '../plan/care.ts';
import { dropEmptyBroods } from './brood-train.ts';
import { dropEmpty, GROWN, YOUNG } from './cohort-train.ts';
import type { Demography } from './demography.ts';
import type { LivingPopulation } from './living-population.ts';

/**
 * Takes animals of a stage out, whichever come to hand or to a bait; carried eggs leave with their share of the adults.
 * A bait or trap takes min(count, finds x those there), so that the last of many are the hardest to catch.
 * @returns how many were taken [1], at most those there are
 * @source derived: each animal of the stage is as likely to be taken
 */
export function removeAnimals(
  population: LivingPopulation,
  { stage, count: most, finds }: Removal,
  demography: Demography,
): number {
  const { train } = population;
  const flag = stage === 'adult' ? GROWN : YOUNG;
  let total = 0;
  for (let i = 0; i < train.size; i += 1) if (train.adult[i] === flag) total += train.count[i]!;
  const taken = Math.min(most, finds === undefined ? total : demography.among(total, finds));
  let left = taken;
  let unsearched = total;
  for (let i = 0; i < train.size && left > 0; i += 1) {
    if (train.adult[i] !== flag) continue;
    const count = train.count[i]!;
    const here = Math.min(count, demography.taken(left, count, unsearched));
    train.count[i] = count - here;
    left -= here;
    unsearched -= count;
  }
  dropEmpty(train, demography.least);
  if (stage === 'adult' && population.carriesBrood && total > 0) {
    removeCarriedEggs(population, taken / total, demography);
  }
  return taken;
}

function removeCarriedEggs({ broods }: LivingPopulation, share: number, demography: Demography): void {
  for (let i = 0; i < broods.size; i += 1) {
    broods.count[i] = broods.count[i]! - demography.among(broods.count[i]!, share);
  }
  dropEmptyBroods(broods, demography.least);
}
