import { cbrt } from '../numerics/elementary.ts';
import { GROWN, PUPA, YOUNG } from './cohort-train.ts';
import { SHRINKING_YIELD, structureOf } from './energetics.ts';
import type { LivingPopulation } from './living-population.ts';
import type { AirConditions } from './surroundings.ts';
import { hazardBeyond } from './water-stress.ts';

/** Part of its full length from which a larva that finds no more food pupates small [1]. @source assumed: the smallest gnats are two thirds as long as usual ones */
const CRITICAL = 2 / 3;
/** Growth of the body below which a larva counts as finding no more food [1/d]. @source assumed */
const STALLED = 0.01;
/** A day's hunger leaves at least this part of a body [1]. */
const LEAST = 0.1;
/** Dryness of the ground at which half of eggs and larvae die in four days, over the wetness they need [1]. @source assumed */
const DRY_MARGIN = 0.5;

/** True for those whose larvae rest as pupae and become insects that neither eat nor grow. `derived`. */
export function pupates({ traits }: Pick<LivingPopulation, 'traits'>): boolean {
  return traits.pupaTime > 0;
}

/** True when the animals of cohort i eat: all but pupae and what comes of them. `derived`. */
export function eats({ traits, train }: LivingPopulation, i: number): boolean {
  return traits.pupaTime === 0 || train.adult[i] === YOUNG;
}

/**
 * Stage of cohort i after a day's growth. Those that do not pupate are grown up from puberty on; larvae pupate at that
 * length, or from two thirds of it once they find no more food, and their age counts from then.
 * @param growth of structure today [mol C]
 * @source derived; pupating small when food ends is general among flies, the part is assumed
 */
export function setStage(population: LivingPopulation, i: number, growth: number): void {
  const { train, energetics } = population;
  if (train.adult[i] !== YOUNG) return;
  const length = train.length[i]!;
  if (!pupates(population)) {
    if (length >= energetics.puberty) train.adult[i] = GROWN;
    return;
  }
  const stalled =
    length >= CRITICAL * energetics.puberty && growth < STALLED * structureOf(energetics, length);
  if (length < energetics.puberty && !stalled) return;
  train.adult[i] = PUPA;
  train.age[i] = 0;
}

/**
 * A day of a pupa or of a grown insect that does not eat: it comes out when its rest is over, a part of its body now its
 * eggs, and lives on store and body at the upkeep of a starving animal, never on its eggs.
 * @param rate temperature factor of the day [1]
 * @returns change of its carbon [mol C per animal], <= 0
 * @source derived: jager-2013 section 2.5 (starvation), without the egg buffer
 */
export function liveOnBody(population: LivingPopulation, i: number, rate: number): number {
  const { train, energetics, traits } = population;
  if (train.adult[i] === PUPA && train.age[i]! >= traits.pupaTime) emerge(population, i);
  const before = structureOf(energetics, train.length[i]!);
  const length = train.length[i]!;
  const need = traits.starvedUpkeep * rate * energetics.upkeep * length * length * length;
  const fromStore = Math.min(train.store[i]!, need);
  train.store[i] = train.store[i]! - fromStore;
  const fromBody = Math.min((1 - LEAST) * before, (need - fromStore) / SHRINKING_YIELD);
  train.length[i] = length * cbrt(1 - fromBody / before);
  return structureOf(energetics, train.length[i]!) - before - fromStore;
}

/** The pupa becomes a grown insect; carbon is kept. */
function emerge({ train, energetics, traits }: LivingPopulation, i: number): void {
  const eggs = traits.eggsOfBody * traits.femaleShare;
  const body = structureOf(energetics, train.length[i]!);
  const length = train.length[i]! * cbrt(1 - eggs);
  train.buffer[i] = train.buffer[i]! + body - structureOf(energetics, length) + eggs * train.store[i]!;
  train.store[i] = (1 - eggs) * train.store[i]!;
  train.length[i] = length;
  train.peak[i] = length;
  train.adult[i] = GROWN;
  train.age[i] = 0;
}

/** Part of animals in the ground that hunters which dig or turn leaves find all the same [1]. @source assumed */
const DUG_OUT = 0.2;

/**
 * Part of cohort i that hunters on land can find [1]: larvae and pupae of those that pupate lie in the ground, all others for
 * the part of their lives their file states.
 * @param hunterDigs whether the hunter digs or turns leaves, and so finds a fifth of what lies in the ground
 * @source assumed
 */
export function aboveGround(population: LivingPopulation, i: number, hunterDigs: boolean): number {
  const within = pupates(population) && population.train.adult[i] !== GROWN ? 1 : population.inGround;
  return hunterDigs ? 1 - (1 - DUG_OUT) * within : 1 - within;
}

/**
 * Hazard of eggs, larvae and pupae in drying ground [1/d], >= 0: ln 2/4 d x (shortfall/(wetness needed/2))^2.
 * @source derived: as other tolerances (`hazardBeyond`); that eggs and larvae dry out and die with the upper soil is common
 *   practice, no source; the margin is assumed
 */
export function dryGroundHazard({ traits }: LivingPopulation, { groundWetness }: AirConditions): number {
  return hazardBeyond(traits.wetGround - groundWetness, DRY_MARGIN * traits.wetGround);
}
