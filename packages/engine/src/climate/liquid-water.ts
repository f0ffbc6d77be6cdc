import { exp, exp10, log, pow } from '../numerics/elementary.ts';
import { ICE_POINT } from '../units/constants.ts';
import { liquidWaterDensity } from '../water/activity.ts';

/**
 * Returns the dynamic viscosity of fresh water [Pa s, > 0]:
 * log10(mu/1.002 mPa s) = (20 - t)/(t + 96) (1.2364 - 1.37e-3 (20 - t) + 5.7e-6 (20 - t)^2).
 * @param temperature t [degC], 0 to 40
 * @source kestin-1978
 */
export function waterViscosity(temperature: number): number {
  const below = 20 - temperature;
  const exponent = (below / (temperature + 96)) * (1.2364 + below * (-1.37e-3 + 5.7e-6 * below));
  return 1.002e-3 * exp10(exponent);
}

/**
 * Returns the kinematic viscosity of fresh water [m2/s, > 0]: mu/rho.
 * @param temperature [degC], 0 to 40
 * @source kestin-1978; kell-1975
 */
export function kinematicViscosity(temperature: number): number {
  return waterViscosity(temperature) / liquidWaterDensity(temperature);
}

/**
 * Returns the surface tension of water against air [N/m, > 0]: 0.2358 u^1.256 (1 - 0.625 u), u = 1 - T/647.096.
 * @param temperature [degC], 0 to 100
 * @source iapws-r1-76
 */
export function surfaceTension(temperature: number): number {
  const u = 1 - (temperature + ICE_POINT) / 647.096;
  return 0.2358 * pow(u, 1.256) * (1 - 0.625 * u);
}

/**
 * Returns the specific heat of fresh water at constant pressure [J/(kg K), > 0], a polynomial of fourth degree.
 * @param temperature t [degC], 0 to 40
 * @source millero-1973
 */
export function waterHeatCapacity(temperature: number): number {
  const t = temperature;
  return 4217.4 + t * (-3.720283 + t * (0.1412855 + t * (-2.654387e-3 + t * 2.093236e-5)));
}

/**
 * Returns the heat conductivity of water [W/(m K), > 0]:
 * 1.6630 r^-1.15 - 1.7781 r^-3.4 + 1.1567 r^-6 - 0.432115 r^-7.6, r = T/300.
 * @param temperature [degC], 0 to 100
 * @source iapws-sr6-08
 */
export function waterConductivity(temperature: number): number {
  const r = (temperature + ICE_POINT) / 300;
  return 1.663 * pow(r, -1.15) - 1.7781 * pow(r, -3.4) + 1.1567 * pow(r, -6) - 0.432115 * pow(r, -7.6);
}

/**
 * Returns the density of brackish water [kg/m3, > 0]: rho_0(t) + S (0.80373 - 3.1532e-3 t + 3.5098e-5 t^2).
 * @param temperature t [degC], 4 to 32
 * @param salinity S [g/kg], 0 to 20
 * @validity within 0.024 kg/m3
 * @source teos-10, fitted; fresh water kell-1975
 */
export function brackishDensity(temperature: number, salinity: number): number {
  const perSalinity = 0.80373 + temperature * (-3.1532e-3 + temperature * 3.5098e-5);
  return liquidWaterDensity(temperature) + salinity * perSalinity;
}

/**
 * Returns the factor by which salt lowers the solubility of oxygen [0..1]:
 * exp(-S (1.7674e-2 - 10.754/T + 2140.7/T^2)).
 * @param temperature [degC], 0 to 40
 * @param salinity S [g/kg], 0 to 40
 * @source benson-krause-1984, salinity term (memory)
 */
export function oxygenSalinityFactor(temperature: number, salinity: number): number {
  const inverse = 1 / (temperature + ICE_POINT);
  return exp(-salinity * (1.7674e-2 + inverse * (-10.754 + inverse * 2140.7)));
}

/**
 * Returns the solubility of carbon dioxide [mol/(kg atm)] for water of some salinity, after Weiss:
 * ln K = -58.0931 + 90.5069 (100/T) + 22.2940 ln(T/100) + S (0.027766 - 0.025888 (T/100) + 0.0050578 (T/100)^2).
 * @param temperature [degC], 0 to 40
 * @param salinity S [g/kg], 0 to 40
 * @source weiss-1974
 */
export function carbonDioxideSolubilityWeiss1974(temperature: number, salinity: number): number {
  const h = (temperature + ICE_POINT) / 100;
  const fresh = -58.0931 + 90.5069 / h + 22.294 * log(h);
  return exp(fresh + salinity * (0.027766 + h * (-0.025888 + h * 0.0050578)));
}
