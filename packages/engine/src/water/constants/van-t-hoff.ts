import { GAS_CONSTANT } from '../../units/constants.ts';

const LN10 = Math.LN10;

/**
 * log10 of an equilibrium constant [1] at another temperature, for a constant enthalpy of reaction.
 * log K(T) = log K(298.15) - dH / (R ln 10) (1/T - 1/298.15)
 * @param logAt25 log10 K at 25 degC
 * @param enthalpy enthalpy of the reaction [J/mol]
 * @param T [K], > 0
 * @validity within some 20 K of 25 degC.
 * @source derived: van 't Hoff's equation integrated with a constant enthalpy.
 */
export function vanTHoff(logAt25: number, enthalpy: number, T: number): number {
  return logAt25 - (enthalpy / (GAS_CONSTANT * LN10)) * (1 / T - 1 / 298.15);
}
