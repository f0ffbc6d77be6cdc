import { exp, log } from '../numerics/elementary.ts';
import { GAS_CONSTANT, ICE_POINT } from '../units/constants.ts';

/** Multiplies a rate known at a reference temperature [1], at a temperature [degC]. */
export type TemperatureResponse = (temperature: number) => number;

/**
 * The same response, computed anew only when the temperature differs from the last call's [unit of `response`].
 * Between two steps of the climate the water temperature stands still, and a response costs an exponential.
 * @param response any function of temperature
 * @source derived: the answer depends on the temperature alone, so keeping the last one changes no bit
 */
export function rememberingLast(response: TemperatureResponse): TemperatureResponse {
  let last = Number.NaN;
  let value = 0;
  return (temperature) => {
    if (temperature !== last) {
      value = response(temperature);
      last = temperature;
    }
    return value;
  };
}

/**
 * Factor on a rate [1, 1 at the reference]: theta^(T - reference).
 * @param theta [1], 1 to 1.2
 * @param reference [degC]
 * @validity about 5 to 32 degC; heat damage is not in it
 * @source phelps-1944 (the form); theta comes with each parameter
 */
export function thetaResponse(theta: number, reference: number): TemperatureResponse {
  const slope = log(theta);
  return rememberingLast((temperature) => exp(slope * (temperature - reference)));
}

/**
 * Factor on a rate [1, 1 at the reference]: exp(E/R (1/T_ref - 1/T)), T in K.
 * @param activationEnergy E [J/mol], 0 to 2e5
 * @param reference [degC]
 * @validity 1 to 32 degC for nitrifiers; heat damage is not in it
 * @source arrhenius-1889
 */
export function arrheniusResponse(activationEnergy: number, reference: number): TemperatureResponse {
  const slope = activationEnergy / GAS_CONSTANT;
  const inverseReference = 1 / (reference + ICE_POINT);
  return rememberingLast((temperature) => exp(slope * (inverseReference - 1 / (temperature + ICE_POINT))));
}

/**
 * Factor on a rate [1, 1 at the reference]: ((T - T_min)/(T_ref - T_min))^2, 0 below T_min. The square root of the rate at
 * which bacteria grow rises along a line.
 * @param coldest T_min [degC], below the reference
 * @param reference [degC]
 * @validity below the optimum of the bacteria; 0 to 25 degC for those that spoil fish
 * @source ratkowsky-1982
 */
export function squareRootResponse(coldest: number, reference: number): TemperatureResponse {
  const span = reference - coldest;
  return (temperature) => {
    const root = Math.max(0, temperature - coldest) / span;
    return root * root;
  };
}

/** Steepness of the fall towards the heat limit [1/K]. @source assumed: from full growth to a tenth within 8 degrees */
const HEAT_STEEPNESS = 0.6;

/**
 * The same response times what heat leaves of it: 1 / (1 + exp(s (T - T_half))), s = 0.6 per degree.
 * @param response any function of temperature [1]
 * @param half T_half [degC], where heat halves it
 * @source assumed: logistic fall beyond the optimum
 */
export function heatLimited(response: TemperatureResponse, half: number): TemperatureResponse {
  return rememberingLast(
    (temperature) => response(temperature) / (1 + exp(HEAT_STEEPNESS * (temperature - half))),
  );
}
