import { exp, exp10 } from '../numerics/elementary.ts';
import { logCarbonDioxideSolubility } from './constants/carbonate.ts';
import { MOLAR_MASS } from './molar-masses.ts';

/** Standard atmosphere [Pa], exact. @source bipm-si */
export const ATMOSPHERE = 101325;

/** Air above the water: what an enclosure breathes. */
export interface Air {
  /** CO2 in dry air [umol/mol]. */
  readonly carbonDioxide: number;
  /** Total pressure [Pa]. */
  readonly pressure: number;
}

/**
 * Saturation pressure of water vapour over water [atm], as used with the oxygen equation.
 * ln p = 11.8571 - 3840.70/T - 216961/T2
 * @param temperature [degC], 0 to 40
 * @source benson-krause-1984
 */
export function vapourPressureOverWater(temperature: number): number {
  const T = temperature + 273.15;
  return exp(11.8571 - 3840.7 / T - 216961 / (T * T));
}

/**
 * Coefficient theta of the second-order pressure term of oxygen's solubility [1/atm].
 * theta = 0.000975 - 1.426e-5 t + 6.436e-8 t2
 * @param t [degC], 0 to 40
 * @source benson-krause-1984
 */
export function oxygenPressureCoefficient(t: number): number {
  return 0.000975 - 1.426e-5 * t + 6.436e-8 * t * t;
}

/**
 * Oxygen in fresh water in equilibrium with moist air at 1 atm [mol/m3].
 * ln C(mg/L) = -139.34411 + 1.575701e5/T - 6.642308e7/T2 + 1.243800e10/T3 - 8.621949e11/T4
 * @param temperature [degC], 0 to 40
 * @source benson-krause-1984, as in APHA 4500-O
 */
export function oxygenAtOneAtmosphere(temperature: number): number {
  const u = 1 / (temperature + 273.15);
  const logMass = -139.34411 + u * (1.575701e5 + u * (-6.642308e7 + u * (1.2438e10 - 8.621949e11 * u)));
  return exp(logMass) / MOLAR_MASS.oxygen;
}

/**
 * Factor on oxygen's solubility for a pressure other than 1 atm [1].
 * f = P (1 - pw/P) (1 - theta P) / ((1 - pw) (1 - theta)), never below 0
 * @param P total pressure [atm]
 * @param pw vapour pressure [atm], theta coefficient [1/atm]
 * @source benson-krause-1984
 */
export function oxygenPressureFactor(P: number, pw: number, theta: number): number {
  return (Math.max(0, P - pw) * Math.max(0, 1 - theta * P)) / ((1 - pw) * (1 - theta));
}

/**
 * Oxygen in fresh water in equilibrium with moist air [mol/m3].
 * @param temperature [degC], 0 to 40
 * @param pressure total pressure [Pa], 50 000 to 110 000
 * @source benson-krause-1984
 */
export function oxygenSaturation(temperature: number, pressure: number): number {
  const factor = oxygenPressureFactor(
    pressure / ATMOSPHERE,
    vapourPressureOverWater(temperature),
    oxygenPressureCoefficient(temperature),
  );
  return oxygenAtOneAtmosphere(temperature) * factor;
}

/**
 * Partial pressure of CO2 in vapour-saturated air [Pa]: p = x (P - pw).
 * @param temperature of the water [degC], 0 to 40
 * @source derived: Dalton's law, the film of air at the surface is saturated with vapour
 */
export function carbonDioxidePressure(temperature: number, air: Air): number {
  const dry = Math.max(0, air.pressure - vapourPressureOverWater(temperature) * ATMOSPHERE);
  return air.carbonDioxide * 1e-6 * dry;
}

/**
 * CO2(aq) in equilibrium with a partial pressure of CO2, in very dilute water [mol/m3]: KH p.
 * @param temperature [degC], 0 to 90
 * @param pressure partial pressure of CO2 [Pa]
 * @source plummer-busenberg-1982
 */
export function dissolvedCarbonDioxide(temperature: number, pressure: number): number {
  return 1000 * exp10(logCarbonDioxideSolubility(temperature + 273.15)) * (pressure / ATMOSPHERE);
}
