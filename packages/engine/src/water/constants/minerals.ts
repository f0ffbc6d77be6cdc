import { log10 } from '../../numerics/elementary.ts';

/**
 * log10 of the solubility product of calcite [mol2/kg2]: CaCO3 = Ca 2+ + CO3 2-.
 * @param T [K]
 * @validity 0 to 90 degC, +-0.02; belongs with the CaHCO3+ and CaCO3 pairs of the same work.
 * @source plummer-busenberg-1982, abstract
 */
export function logCalciteSolubility(T: number): number {
  return -171.9065 - 0.077993 * T + 2839.319 / T + 71.595 * log10(T);
}

/**
 * log10 of the solubility product of aragonite [mol2/kg2]: CaCO3 = Ca 2+ + CO3 2-.
 * @param T [K]
 * @validity 0 to 90 degC, +-0.02; skeletons that hold magnesium dissolve a little better.
 * @source plummer-busenberg-1982, abstract
 */
export function logAragoniteSolubility(T: number): number {
  return -171.9773 - 0.077993 * T + 2903.293 / T + 71.595 * log10(T);
}

/**
 * log10 of the solubility product of gypsum [mol2/kg2]: CaSO4 2H2O = Ca 2+ + SO4 2- + 2 H2O.
 * @param T [K]
 * @validity 0 to 70 degC; the activity of water is taken as 1.
 * @source langmuir-melchior-1985
 */
export function logGypsumSolubility(T: number): number {
  return 68.2401 - 3221.51 / T - 25.0627 * log10(T);
}
