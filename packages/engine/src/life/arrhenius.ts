import { exp } from '../numerics/elementary.ts';
import { ICE_POINT } from '../units/constants.ts';

const BOLTZMANN_EV = 8.617333262e-5;
/** Steepness with which heat or cold stops an enzyme-limited rate [eV]; 2 to 5 eV are usual. */
const DEACTIVATION_ENERGY = 3;

/**
 * Factor on a biological rate relative to the reference temperature [1], > 0.
 * c = exp(E/k (1/Tref - 1/T)), temperatures in kelvin.
 * @param temperature [degC], -10 to 60
 * @param reference [degC], -10 to 60
 * @param energy activation energy E [eV], 0 to 2
 * @validity between the coolest and the warmest temperature at which the rate was measured
 * @source brown-2004 Box 1; k from codata-2018
 */
export function arrheniusFactor(temperature: number, reference: number, energy: number): number {
  const cold = 1 / (reference + ICE_POINT);
  const warm = 1 / (temperature + ICE_POINT);
  return exp((energy / BOLTZMANN_EV) * (cold - warm));
}

/**
 * Part of a rate that heat leaves working [1], 0 to 1; one half at the heat limit.
 * h = 1 / (1 + exp(Ed/k (1/Tlimit - 1/T))), Ed = 3 eV (assumed).
 * @param temperature [degC], -10 to 60
 * @param limit temperature of one half [degC]
 * @source schoolfield-1981 eq. 4, high-temperature term
 */
export function workingPart(temperature: number, limit: number): number {
  return 1 / (1 + arrheniusFactor(temperature, limit, DEACTIVATION_ENERGY));
}

/**
 * Part of a rate that cold leaves working [1], 0 to 1; one half at the cold limit.
 * h = 1 / (1 + exp(Ed/k (1/T - 1/Tlimit))), Ed = 3 eV (assumed).
 * @param temperature [degC], -10 to 60
 * @param limit temperature of one half [degC]
 * @source schoolfield-1981 eq. 4, low-temperature term
 */
export function warmPart(temperature: number, limit: number): number {
  return 1 / (1 + arrheniusFactor(limit, temperature, DEACTIVATION_ENERGY));
}
