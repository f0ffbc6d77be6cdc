import { MOLAR_MASS } from './molar-masses.ts';

/**
 * How dissolved organic carbon acts as an acid.
 * Oliver: one site whose strength falls with pH; `siteDensity` is the charge at full dissociation [eq/mol C].
 * triprotic: three sites per molecule with fixed pKa.
 */
export type OrganicAcid =
  | { readonly kind: 'Oliver'; readonly siteDensity: number }
  | {
      readonly kind: 'triprotic';
      readonly siteDensity: number;
      readonly pKa: readonly [number, number, number];
    };

/**
 * Site density of organic acids [eq/mol C] from the unit in which it is published.
 * @param perMilligram [ueq/mg C]
 * @source derived: 1 ueq/mg C = 12.011e-3 eq/mol C
 */
export function siteDensityPerCarbon(perMilligram: number): number {
  return perMilligram * MOLAR_MASS.carbon * 1e-3;
}

/** Carboxyl groups of dissolved humic matter as isolated: 10 ueq/mg C. @source oliver-1983 */
export const HUMIC_ACID: OrganicAcid = { kind: 'Oliver', siteDensity: siteDensityPerCarbon(10) };

/**
 * Three-site analogue of the organic acids of streams: 8.6 ueq/mg C, pKa 2.5, 4.0, 5.8.
 * @source wrr-37-1043, abstract
 */
export const STREAM_ACID: OrganicAcid = {
  kind: 'triprotic',
  siteDensity: siteDensityPerCarbon(8.6),
  pKa: [2.5, 4, 5.8],
};

/** Below this pH Oliver's fitted curve has no meaning; the exponent keeps its value there. */
const OLIVER_FLOOR = 0;

/**
 * log10 of undissociated over dissociated sites [1] after Oliver: pK - pH with pK = 0.96 + 0.90 pH - 0.039 pH2.
 * @param pH activity scale
 * @validity pH 3 to 8, 25 degC; no temperature dependence is published.
 * @source oliver-1983 (memory)
 */
export function oliverExponent(pH: number): number {
  const x = Math.max(OLIVER_FLOOR, pH);
  return 0.96 + x * (-0.1 - 0.039 * x);
}

/**
 * Slope of `oliverExponent` over pH [1], never positive.
 * @param pH activity scale
 * @source derived: derivative of the curve above
 */
export function oliverSlope(pH: number): number {
  return pH > OLIVER_FLOOR ? -0.1 - 0.078 * pH : 0;
}
