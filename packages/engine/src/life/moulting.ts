import { exp } from '../numerics/elementary.ts';
import type { TraitValues } from './traits.ts';
import type { WaterConditions } from './water-stress.ts';

/**
 * Chance of dying at a moult [1], 0 to 1: p = 1 - (1 - p0) exp(-(x_h^2 + x_p^2)), x the shortfall of hardness and pH
 * below what a shell needs to harden, over their margins.
 * @param water undefined for those that moult on land, with calcium from their food
 * @source assumed: thresholds from keepers' ranges; the form is judgement
 */
export function deathPerMoult(traits: TraitValues, water: WaterConditions | undefined): number {
  const { moultDeath, moultHardness, moultPH, hardnessMargin, pHMargin } = traits;
  if (!water) return moultDeath;
  const soft = Math.max(0, moultHardness - water.hardness) / hardnessMargin;
  const acid = Math.max(0, moultPH - water.pH) / pHMargin;
  return 1 - (1 - moultDeath) * exp(-(soft * soft + acid * acid));
}

/**
 * Moults a day [1/d], >= 0: one per interval when full grown, more often when small, in proportion to length.
 * @param size length over end length [0..1]
 * @param rate temperature factor [1]
 * @source assumed: moult intervals of crustaceans lengthen about in proportion to body length
 */
export function moultsPerDay({ moultInterval }: TraitValues, size: number, rate: number): number {
  return moultInterval > 0 ? rate / (moultInterval * Math.max(size, LEAST_SIZE)) : 0;
}

const LEAST_SIZE = 0.15;
