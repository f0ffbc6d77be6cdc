/**
 * Part of all sites that a cation holds once it and the hydrogen ions are in balance with the water, all other sites
 * left as they are [0..s]. Gaines and Thomas: beta_M / beta_H^z = r, r = K_M a_M / (K_H a_H)^z, and
 * beta_M + beta_H = s:
 *   one charge   beta_M = s r / (1 + r)
 *   two charges  beta_M = 4 r s^2 / (1 + sqrt(1 + 4 r s))^2
 * @param charge z of the cation
 * @param shared s, part of all sites that the cation and the hydrogen ions hold now [0..1]
 * @param ratio r [1], >= 0
 * @source appelo-postma-2005, chapter 6 (Gaines-Thomas convention); the solution for the pair is derived
 */
export function heldInBalance(charge: number, shared: number, ratio: number): number {
  if (charge === 1) return (shared * ratio) / (1 + ratio);
  const root = Math.sqrt(1 + 4 * ratio * shared);
  return Math.min(shared, (shared * 4 * ratio * shared) / ((root + 1) * (root + 1)));
}
