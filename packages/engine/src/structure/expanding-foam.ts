/** Foam per litre of can [m3/m3] and density of cured one-component foam [kg/m3]. @source soudal-sheets */
export const FOAM_YIELD = 35;
export const FOAM_DENSITY = 27;
/** Water to moisten with, per volume of can [m3/m3]: 40 mL for 750 mL. @source polyfoam-faq */
export const FOAM_WATER = 40 / 750;

/**
 * Returns the volume of cured foam [m3, >= 0]; shaped by hand or in a narrow place only 40 to 60 % of it.
 * @param canVolume of all cans [m3]
 * @param yieldRatio foam by can [m3/m3], see `FOAM_YIELD`
 * @source soudal-sheets
 */
export function foamVolume(canVolume: number, yieldRatio: number): number {
  return canVolume * yieldRatio;
}

/**
 * Returns the mass of cured foam [kg, >= 0].
 * @param volume [m3]
 * @source soudal-sheets
 */
export function foamMass(volume: number): number {
  return volume * FOAM_DENSITY;
}

/**
 * Returns the water for moistening [m3, >= 0].
 * @param cans number
 * @param waterPerCan [m3]
 * @source polyfoam-faq
 */
export function moisteningWater(cans: number, waterPerCan: number): number {
  return cans * waterPerCan;
}
