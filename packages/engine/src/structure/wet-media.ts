/**
 * Returns the density of a moist medium [kg/m3, > 0]: dry bulk density plus water by volume.
 * @param dryDensity dry bulk density [kg/m3]
 * @param waterShare water by volume [m3/m3]: retained water, or the porosity when saturated
 * @param waterDensity [kg/m3]
 * @source derived
 */
export function moistDensity(dryDensity: number, waterShare: number, waterDensity: number): number {
  return dryDensity + waterShare * waterDensity;
}

/**
 * Returns the water a medium holds [kg, >= 0]: dry mass times what it holds of its own mass.
 * @param dryMass [kg]
 * @param holding [kg/kg]
 * @source derived
 */
export function heldWater(dryMass: number, holding: number): number {
  return dryMass * holding;
}
