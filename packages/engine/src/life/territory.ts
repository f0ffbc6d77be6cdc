import { type CohortTrain, GROWN } from './cohort-train.ts';
import type { Energetics } from './energetics.ts';
import type { Surroundings } from './surroundings.ts';
import type { TraitValues } from './traits.ts';

const SQUARE_CENTIMETRES = 1e4;
const SQUARE_MILLIMETRES = 100;
/** Claims of more squares of its own end length than this are held against others, smaller ones only shared [1]. @source assumed */
const HELD_SQUARES = 8;

/** What a population's claims are reckoned from. */
export interface Claimants {
  readonly train: CohortTrain;
  readonly energetics: Energetics;
  readonly traits: TraitValues;
}

/**
 * Ground claimed over the ground there is [1], >= 0: of the land for the part of their lives spent there, of the pool's
 * surface for the rest; the greater of the two.
 * @param animals full-grown equivalents that claim ground [1], >= 0
 * @source derived
 */
export function groundTimes(
  { groundPerAdult, shareInWater }: TraitValues,
  animals: number,
  { landArea = 0, waterArea = 0 }: Pick<Surroundings, 'landArea' | 'waterArea'>,
): number {
  const claimed = animals * groundPerAdult;
  const onLand = landArea > 0 ? claimed / (landArea * SQUARE_CENTIMETRES) : 0;
  const inWater = waterArea > 0 ? claimed / (waterArea * SQUARE_CENTIMETRES) : 0;
  return Math.max((1 - shareInWater) * onLand, shareInWater * inWater);
}

/**
 * Whether a species keeps others off the ground it claims: a claim of more than eight squares of its end length.
 * @source assumed: crabs, frogs, lizards and fighting fish claim tens of such squares, woodlice and springtails less than five
 */
export function holdsGround({ groundPerAdult, lengthAtEnd }: TraitValues): boolean {
  return groundPerAdult * SQUARE_MILLIMETRES > HELD_SQUARES * lengthAtEnd * lengthAtEnd;
}

/**
 * Part of the adults that have a place of their own to breed in [1], 0 to 1: all where adults claim no more ground than
 * there is, else as many as it has room for. 1 for those that hold no ground.
 * @source assumed: adults without ground do not breed; how many do so anyway is not known for any species here
 */
export function placedPart({ train, energetics, traits }: Claimants, around: Surroundings): number {
  if (!holdsGround(traits)) return 1;
  let adults = 0;
  for (let i = 0; i < train.size; i += 1) {
    if (train.adult[i] !== GROWN) continue;
    const size = train.peak[i]! / energetics.end;
    adults += train.count[i]! * size * size;
  }
  const times = groundTimes(traits, adults, around);
  return times > 1 ? 1 / times : 1;
}
