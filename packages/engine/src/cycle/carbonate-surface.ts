import { cbrt, exp10 } from '../numerics/elementary.ts';
import { ICE_POINT } from '../units/constants.ts';
import { logFirstDissociation, logSecondDissociation } from '../water/constants/carbonate.ts';
import { logAragoniteSolubility, logCalciteSolubility } from '../water/constants/minerals.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';

/** Densities of the two minerals of calcium carbonate [kg/m3]. @source deer-1992 (memory) */
export const CALCITE_DENSITY = 2710;
export const ARAGONITE_DENSITY = 2930;
/** Below this share of what was placed, grains are taken to vanish whole instead of shrinking further. */
const LAST_SHARE = 1e-3;
/** Calcite that a litre of pure closed water dissolves at 25 degC [mol/m3]. @source water reference set, PHREEQC 3.7.3 */
const CLOSED_CAPACITY = 0.123;

/**
 * Forward rate constants of calcite dissolution [mmol/cm2/s per unit activity]: log k1 = 0.198 - 444/T,
 * log k2 = 2.84 - 2177/T, log k3 = -5.86 - 317/T up to 25 degC and -1.10 - 1737/T above (T in K).
 * @param temperature [degC], 5 to 60
 * @source plummer-wigley-parkhurst-1978 (rate constants; read in parkhurst-1999)
 */
export function plummerConstants(temperature: number): { k1: number; k2: number; k3: number } {
  const inverse = 1 / (temperature + ICE_POINT);
  return {
    k1: exp10(0.198 - 444 * inverse),
    k2: exp10(2.84 - 2177 * inverse),
    k3: temperature <= 25 ? exp10(-5.86 - 317 * inverse) : exp10(-1.1 - 1737 * inverse),
  };
}

/**
 * Surface of the carbonate that is left [m2]: of smooth spheres of the starting grain, 6 M / (rho d), times
 * (placed / left)^(1/3) since each grain shrinks while their number stays. When less than a thousandth is left the
 * factor stays at 10 and the surface falls with the mass.
 * @param left amount left [mol], >= 0
 * @param placed amount placed so far [mol]; taken as `left` when less than that
 * @param grain starting diameter d [m]; no surface when 0
 * @param density rho of the grains [kg/m3], calcite when left out
 * @source derived: geometry of shrinking spheres
 */
export function carbonateSurface(
  left: number,
  placed: number,
  grain: number,
  density = CALCITE_DENSITY,
): number {
  if (!(left > 0 && grain > 0)) return 0;
  const mass = (left * MOLAR_MASS.calciumCarbonate) / 1000;
  const remaining = placed > left ? Math.max(LAST_SHARE, left / placed) : 1;
  return (6 * mass) / (density * grain * cbrt(remaining));
}

/**
 * Saturation ratio of aragonite over that of calcite in the same water [1, below 1]: K_calcite / K_aragonite.
 * @param temperature [degC]
 * @source plummer-busenberg-1982
 */
export function aragoniteOverCalcite(temperature: number): number {
  const T = temperature + ICE_POINT;
  return exp10(logCalciteSolubility(T) - logAragoniteSolubility(T));
}

/**
 * What calcite in balance adds to dilute water per cube root of its carbon dioxide [(mol/m3)^(2/3)]:
 * Ca^3 = K1 Kc CO2 / (4 K2), all in mol/kg, activities taken as concentrations.
 * @param temperature [degC]
 * @source plummer-busenberg-1982 (constants); the balance of the open system is derived from charge and mass action
 */
export function calciteCapacity(temperature: number): number {
  const T = temperature + ICE_POINT;
  const k = exp10(logFirstDissociation(T) + logCalciteSolubility(T) - logSecondDissociation(T));
  return 1000 * cbrt((k * 1e-3) / 4);
}

/**
 * Calcium carbonate that dilute water holds in balance with the mineral [mol/m3, > 0], by its carbon dioxide and, where
 * that is used up, by what closed pure water takes.
 * @param perCubeRoot see `calciteCapacity`
 * @param carbonDioxide CO2(aq) [mol/m3], >= 0
 * @source derived: sum of the two limits in the third power
 */
export function carbonateHeld(perCubeRoot: number, carbonDioxide: number): number {
  const open = perCubeRoot * perCubeRoot * perCubeRoot * carbonDioxide;
  return cbrt(open + CLOSED_CAPACITY * CLOSED_CAPACITY * CLOSED_CAPACITY);
}
