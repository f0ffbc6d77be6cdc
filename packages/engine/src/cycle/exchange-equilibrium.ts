/** Hold of an exchanger on each cation over that on sodium, half reactions M(z+) + z X = MX(z) in mol/L [1]. */
export interface Selectivity {
  readonly calcium: number;
  readonly magnesium: number;
  readonly potassium: number;
  readonly ammonium: number;
  readonly sodium: number;
  readonly hydrogen: number;
}

/** Concentrations of free cations [mol/L] and the activity of hydrogen ions [mol/kg]. */
export interface ExchangingWater {
  readonly calcium: number;
  readonly magnesium: number;
  readonly potassium: number;
  readonly ammonium: number;
  readonly sodium: number;
  readonly hydrogen: number;
}

/** Keeps the sums finite where the water holds no hydrogen ions or the exchanger no hold on them. */
const LEAST = 1e-14;

/**
 * Shares a water leaves to an exchanger in balance with it: returns beta_Na / a_Na [L/mol], from which all follow as
 *   beta_i = K_i a_i q (one charge), beta_i = K_i a_i q^2 (two charges), q = beta_H / (K_H a_H) = beta_Na / a_Na,
 * with the equivalent fractions adding up to 1 (Gaines and Thomas): one positive root of
 *   D q^2 + (K_H a_H + M) q = 1,  M, D: sums of K_i a_i over cations of one and of two charges.
 * @param single K_H a_H + M, sum over all cations of one charge [mol/L]
 * @param double D, sum over those of two [mol/L]
 * @validity dilute water: concentrations stand for activities of all but hydrogen ions
 * @source appelo-postma-2005, chapter 6 (Gaines-Thomas convention); the quadratic is derived
 */
export function exchangeQuotient(single: number, double: number): number {
  const sum = Math.max(single, LEAST);
  return 2 / (sum + Math.sqrt(sum * sum + 4 * double));
}

/**
 * Equivalent fractions of an exchanger in balance with a water [0..1], adding up to 1.
 * @source appelo-postma-2005; see `exchangeQuotient`
 */
export function exchangeFractions(k: Selectivity, water: ExchangingWater): ExchangingWater {
  const single =
    k.hydrogen * water.hydrogen +
    k.sodium * water.sodium +
    k.potassium * water.potassium +
    k.ammonium * water.ammonium;
  const q = exchangeQuotient(single, k.calcium * water.calcium + k.magnesium * water.magnesium);
  return {
    calcium: k.calcium * water.calcium * q * q,
    magnesium: k.magnesium * water.magnesium * q * q,
    potassium: k.potassium * water.potassium * q,
    ammonium: k.ammonium * water.ammonium * q,
    sodium: k.sodium * water.sodium * q,
    hydrogen: k.hydrogen * water.hydrogen * q,
  };
}
