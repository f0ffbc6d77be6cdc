/** A brine: what evaporation would concentrate beyond this has left the solution [mol/m3]. */
const MOST_CONCENTRATED = 2000;
/** Stands for the film that is left of a dry pool [m3]. */
const LEAST_VOLUME = 1e-9;

/**
 * Volume over which dissolved amounts are spread [m3], > 0: the water's, or more where a pool about to dry out
 * would hold more than 2 mol/L in all; beyond that salts have crystallised, each in proportion.
 * @param volume of the water [m3]
 * @param dissolved sum of all dissolved amounts [mol], >= 0
 * @source assumed: order of magnitude at which common salts begin to crystallise from mixed waters
 */
export function dissolvingVolume(volume: number, dissolved: number): number {
  return Math.max(volume, dissolved / MOST_CONCENTRATED, LEAST_VOLUME);
}
