import { exp10 } from '../../numerics/elementary.ts';
import { chargeCoefficients } from '../activity.ts';

/**
 * pKa of ammonium [1]: NH4+ = NH3 + H+. pKa = 0.09018 + 2729.92 / T
 * @param T [K]
 * @validity 0 to 50 degC, infinite dilution.
 * @source emerson-1975, equation for pKa
 */
export function ammoniumAcidity(T: number): number {
  return 0.09018 + 2729.92 / T;
}

/**
 * Share of total ammonia that is un-ionised [0..1].
 * NH3 / NH4 = 10^(pH - pKa) g(NH4) / g(NH3), with Davies' activity coefficients.
 * @param temperature [degC], 0 to 50
 * @param pH activity scale
 * @param ionicStrength [mol/kg], 0 to 0.5
 * @throws RangeError when an argument is not finite or the ionic strength is negative.
 * @source emerson-1975 for pKa; derived: law of mass action with activity coefficients
 */
export function unionisedFraction(temperature: number, pH: number, ionicStrength: number): number {
  if (!Number.isFinite(temperature) || !Number.isFinite(pH) || !(ionicStrength >= 0)) {
    throw new RangeError(
      `un-ionised ammonia at ${temperature} degC, pH ${pH}, ionic strength ${ionicStrength} mol/kg cannot be computed`,
    );
  }
  const { single, neutral } = chargeCoefficients(temperature, ionicStrength);
  const ratio = (exp10(pH - ammoniumAcidity(temperature + 273.15)) * single) / neutral;
  return ratio / (1 + ratio);
}
