/** Schmidt number of a gas in fresh water [1] as a cubic in the temperature [degC]. */
export interface SchmidtCubic {
  readonly coefficients: readonly [number, number, number, number];
}

/** @source wanninkhof-1992, table A1, fresh water, 0 to 30 degC */
export const OXYGEN_SCHMIDT: SchmidtCubic = { coefficients: [1800.6, -120.1, 3.7818, -0.047608] };
/** @source wanninkhof-1992, table A1, fresh water, 0 to 30 degC */
export const CARBON_DIOXIDE_SCHMIDT: SchmidtCubic = { coefficients: [1911.1, -118.11, 3.4527, -0.04132] };

/**
 * Schmidt number, kinematic viscosity over diffusivity [1].
 * Sc = a + b t + c t^2 + d t^3 between 0 and 30 degC; beyond, the value at the nearer end, because the cubic turns
 * away from the physics there (it falls to nothing at 40 degC).
 * @param cubic the gas
 * @param temperature t [degC]
 * @validity 0 to 30 degC; held constant outside, which understates transfer by about 7 % at 33 degC (derived from
 *   the trend of 2 % per degree)
 * @source wanninkhof-1992, table A1
 */
export function schmidtNumber(cubic: SchmidtCubic, temperature: number): number {
  const [a, b, c, d] = cubic.coefficients;
  const t = Math.min(30, Math.max(0, temperature));
  return a + t * (b + t * (c + t * d));
}
