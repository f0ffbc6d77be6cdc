import { log10 } from '../../numerics/elementary.ts';

/**
 * log10 of Henry's constant of CO2 [mol/kg/atm]: CO2(g) = CO2(aq).
 * @param T [K]
 * @validity 0 to 90 degC, infinite dilution.
 * @source plummer-busenberg-1982, table of fitted constants
 */
export function logCarbonDioxideSolubility(T: number): number {
  return 108.3865 + 0.01985076 * T - 6919.53 / T - 40.45154 * log10(T) + 669365 / (T * T);
}

/**
 * log10 of the first dissociation constant of carbonic acid [mol/kg]: CO2(aq) + H2O = H+ + HCO3-.
 * @param T [K]
 * @validity 0 to 90 degC, infinite dilution.
 * @source plummer-busenberg-1982, table of fitted constants
 */
export function logFirstDissociation(T: number): number {
  return -356.3094 - 0.06091964 * T + 21834.37 / T + 126.8339 * log10(T) - 1684915 / (T * T);
}

/**
 * log10 of the second dissociation constant of carbonic acid [mol/kg]: HCO3- = H+ + CO3 2-.
 * @param T [K]
 * @validity 0 to 90 degC, infinite dilution.
 * @source plummer-busenberg-1982, table of fitted constants
 */
export function logSecondDissociation(T: number): number {
  return -107.8871 - 0.03252849 * T + 5151.79 / T + 38.92561 * log10(T) - 563713.9 / (T * T);
}

/**
 * log10 of the ion product of water [mol2/kg2]: H2O = H+ + OH-.
 * @param T [K]
 * @validity 0 to 100 degC, infinite dilution.
 * @source ball-nordstrom-1991, water; after Harned and Owen
 */
export function logIonProductOfWater(T: number): number {
  return -283.971 - 0.05069842 * T + 13323 / T + 102.24447 * log10(T) - 1119669 / (T * T);
}
