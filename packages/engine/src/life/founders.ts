import { cbrt } from '../numerics/elementary.ts';
import { addWellFed } from './cohort-train.ts';
import { type Energetics, structureOf } from './energetics.ts';
import { scaledTime } from './growth-curve.ts';
import type { LivingPopulation } from './living-population.ts';
import { pupates } from './pupation.ts';

/** Sizes of bought or caught animals, as parts of the way through their stage's lengths (assumed). */
const SIZES = [0.6, 0.35, 0.15] as const;

/** Where a stage's lengths begin and end [mm]. */
function stageLengths(energetics: Energetics, stage: 'juvenile' | 'adult'): readonly [number, number] {
  return stage === 'adult'
    ? [energetics.puberty, energetics.fullGrown]
    : [energetics.birth, energetics.puberty];
}

/**
 * Age at which a well-fed animal has a length [d, at the reference temperature], >= 0.
 * -ln((end - L)/(end - birth))/r, by `scaledTime` for those that start slowly.
 * @param length below the end length [mm]
 * @source derived: von Bertalanffy growth solved for time
 */
export function ageAtLength(energetics: Energetics, length: number): number {
  return scaledTime(energetics, energetics.birth, length) / energetics.growthRate;
}

/**
 * Puts animals in as three cohorts of different size, oldest first, well fed but with empty egg buffers.
 * @param count whole number >= 0 [1]
 */
export function addAnimals(population: LivingPopulation, stage: 'juvenile' | 'adult', count: number): void {
  const [from, to] = stageLengths(population.energetics, stage);
  let left = count;
  for (const [order, part] of SIZES.entries()) {
    const share = Math.ceil(left / (SIZES.length - order));
    left -= share;
    if (share <= 0) continue;
    const length = from + part * (to - from);
    if (stage === 'adult' && pupates(population)) {
      addFlies(population, share, order);
      continue;
    }
    addWellFed(population.train, population.energetics, {
      count: share,
      length,
      age: ageAtLength(population.energetics, length),
      isAdult: stage === 'adult',
    });
  }
}

/** Insects that came out of their pupae some days ago and have not laid yet. */
function addFlies({ train, energetics, traits }: LivingPopulation, count: number, days: number): void {
  const eggs = traits.eggsOfBody * traits.femaleShare;
  const whole = structureOf(energetics, energetics.puberty);
  const length = energetics.puberty * cbrt(1 - eggs);
  addWellFed(train, energetics, {
    count,
    length,
    age: days,
    isAdult: true,
    buffer: eggs * (1 + energetics.store) * whole,
  });
}
