import { exp, log } from '../numerics/elementary.ts';
import { GROWN } from './cohort-train.ts';
import { type Demography, EXPECTED } from './demography.ts';
import type { LivingPopulation } from './living-population.ts';

/** Above this many adults one sex is not missing by chance. */
const MANY = 40;

/**
 * Chance that both sexes are among the adults [1], 0 to 1.
 * 1 - f^n - (1 - f)^n.
 * @param adults n, >= 0
 * @param femaleShare f [0..1]
 * @source derived: each adult's sex is an independent draw
 */
export function bothSexesPresent(adults: number, femaleShare: number): number {
  if (adults > MANY) return 1;
  if (adults < 1) return 0;
  return 1 - exp(adults * log(femaleShare)) - exp(adults * log(1 - femaleShare));
}

/** Adults of a population [1]. @source derived: sum over cohorts. */
export function adultCount({ train }: LivingPopulation): number {
  let adults = 0;
  for (let i = 0; i < train.size; i += 1) if (train.adult[i] === GROWN) adults += train.count[i]!;
  return adults;
}

/**
 * Follows the sexes of adults through a day: whoever came or grew up is female by chance, whoever is gone was of either
 * sex by their numbers. Sets the part that is female, and the chance that mates meet: in a member whether both sexes are
 * there, in the expected run how likely they are. With one sex missing, no eggs are made or laid.
 * @source derived: independent draws; that mates find each other in a glass box is assumed, a lack of them at low density is
 * not known for any species here
 */
export function followSexes(population: LivingPopulation, demography: Demography): void {
  const { femaleShare } = population.traits;
  if (population.isSelfFertile) return;
  const adults = adultCount(population);
  if (demography === EXPECTED) {
    population.mated = bothSexesPresent(adults, femaleShare);
    return;
  }
  const { sexes } = population;
  const more = adults - sexes.adults;
  if (more > 0) sexes.females += demography.among(more, femaleShare);
  else if (more < 0) sexes.females -= demography.taken(-more, sexes.females, sexes.adults);
  sexes.adults = adults;
  population.femalePart = adults > 0 ? sexes.females / adults : femaleShare;
  population.mated = femaleShare >= 1 || (sexes.females > 0 && sexes.females < adults) ? 1 : 0;
}
