import { cbrt } from '../numerics/elementary.ts';
import type { PreyKind } from './traits.ts';

/**
 * Dry mass over cubed length of the prey that lengths for mouths are told of: springtails, woodlice and water fleas,
 * 0.005 to 0.007 mg/mm3 in the library. @source derived
 */
const COMPACT = 0.006;

/**
 * Length that prey counts as in a mouth that takes prey up to a length, over its own length [1], above 0, at most 1. A
 * worm bends and goes in end first, so it counts as compact prey of its mass: (dryMassPerCube / 0.006)^(1/3). All others,
 * with limbs, fins, shells or stiff bodies, count by their length.
 * @param kind what it is as prey; undefined for animals nobody hunts
 * @param dryMassPerCube its dry mass over cubed length [mg/mm3], above 0
 * @source derived: equal mass of prey of another shape; that worms bend and the rest does not is assumed
 */
export function mouthfulPerLength(kind: PreyKind | undefined, dryMassPerCube: number): number {
  return kind === 'worms' && dryMassPerCube < COMPACT ? cbrt(dryMassPerCube / COMPACT) : 1;
}
