/** Volume of a mole of gas at 25 degC and 1 atm [m3/mol]. @source derived: ideal gas law */
export const MOLAR_VOLUME = 0.02445;

/**
 * Returns the mass of a vapour per volume of air [kg/m3, >= 0]: x M/V.
 * @param fraction x by volume, 1e-6 for 1 ppm
 * @param molarMass M [kg/mol]
 * @param molarVolume V [m3/mol], see `MOLAR_VOLUME`
 * @source derived: ideal gas law
 */
export function fumeConcentration(fraction: number, molarMass: number, molarVolume: number): number {
  return (fraction * molarMass) / molarVolume;
}

/**
 * Returns how often the air of a room must be renewed to keep a fume at its limit [1/s, >= 0]: G/(C V).
 * @param release G [kg/s], the mean; early release is faster
 * @param limit C [kg/m3]
 * @param roomVolume V [m3]
 * @validity even mixing, steady release
 * @source derived: steady dilution
 */
export function neededAirChanges(release: number, limit: number, roomVolume: number): number {
  return release / (limit * roomVolume);
}
