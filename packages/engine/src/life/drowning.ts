import type { TraitValues } from './traits.ts';

/** The line where water and land meet. */
export interface Shore {
  /** [m] */
  readonly length: number;
  /** Part of it where an animal climbs out: gentle ground, a ledge or a piece that stands out of the water [0..1]. */
  readonly wayOut: number;
  /** Whether a piece stands out of the water, so that something dry is left without land. */
  readonly hasPerch: boolean;
}

/** A gentle bank all round: nobody drowns. */
export const GENTLE_SHORE: Shore = { length: 0, wayOut: 1, hasPerch: true };

/** Places at the shore an animal reaches before it is spent: woodlice last for hours. @source assumed */
const TRIES = 6;

/**
 * Hazard of drowning of animals of the land [1/d], >= 0. With land: those within a strip of the shore get into the water,
 * and drown when each of six places they reach is too steep,
 *   s L / A (1 - w)^6,
 * s strip a day [m/d], L shore [m], A land [m2], w part of the shore that leads out. Without any land or piece to sit on:
 * half are dead after the time a swimmer lasts, ln 2 / T.
 * @param landArea A [m2], >= 0
 * @source assumed: no counts of drowned animals are known; that they drown only where nothing leads out is common practice
 */
export function drowningHazard(
  { strayIntoWater, timeAfloat }: Pick<TraitValues, 'strayIntoWater' | 'timeAfloat'>,
  shore: Shore,
  landArea: number,
): number {
  if (landArea <= 0) return shore.hasPerch ? 0 : Math.LN2 / timeAfloat;
  if (strayIntoWater === 0) return 0;
  const steep = 1 - shore.wayOut;
  let none = 1;
  for (let place = 0; place < TRIES; place += 1) none *= steep;
  return ((strayIntoWater * shore.length) / landArea) * none;
}
