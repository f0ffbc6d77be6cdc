import { exp } from '../numerics/elementary.ts';

/** Davies' equation has lost its meaning above this ionic strength [mol/kg]; coefficients stay at its value there. */
export const DAVIES_LIMIT = 0.5;

/**
 * Static dielectric constant of water [1].
 * eps = 87.740 - 0.40008 t + 9.398e-4 t2 - 1.410e-6 t3
 * @param t [degC], 0 to 100
 * @source malmberg-maryott-1956, fitted equation (memory)
 */
export function dielectricConstant(t: number): number {
  return 87.74 + t * (-0.40008 + t * (9.398e-4 - 1.41e-6 * t));
}

/**
 * Density of air-free water at 1 atm [kg/m3].
 * @param t [degC], 0 to 100
 * @source kell-1975, fitted equation (memory)
 */
export function liquidWaterDensity(t: number): number {
  const numerator =
    999.83952 +
    t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - 280.54253e-12 * t))));
  return numerator / (1 + 16.87985e-3 * t);
}

/**
 * Debye-Hueckel slope A [kg^0.5/mol^0.5], for log10 of activity coefficients.
 * A = 1.82483e6 rho^0.5 (eps T)^-1.5, rho in g/cm3
 * @param t [degC], 0 to 100
 * @source truesdell-jones-1974
 */
export function debyeHueckelSlope(t: number): number {
  const product = dielectricConstant(t) * (t + 273.15);
  return (1.82483e6 * Math.sqrt(liquidWaterDensity(t) / 1000)) / (product * Math.sqrt(product));
}

/**
 * Activity coefficients [1] by charge; those of charge 2 and 3 are powers 4 and 9 of the single one.
 * log g = -A z2 (sqrt I / (1 + sqrt I) - 0.3 I); neutral species log g = 0.1 I
 * @param temperature [degC], 0 to 100
 * @param ionicStrength [mol/kg], >= 0; above 0.5 the coefficients of 0.5
 * @validity good to 0.05, usable to 0.1 mol/kg
 * @source davies-1962; neutral species parkhurst-appelo-2013
 */
export function chargeCoefficients(temperature: number, ionicStrength: number) {
  const I = Math.min(ionicStrength, DAVIES_LIMIT);
  const root = Math.sqrt(I);
  const single = exp(-Math.LN10 * debyeHueckelSlope(temperature) * (root / (1 + root) - 0.3 * I));
  const square = single * single;
  return { single, double: square * square, neutral: exp(0.1 * Math.LN10 * I) };
}
