/**
 * Concentration [mol/m3] of an amount in the water, 0 where there is no water left to hold it.
 * @param amount [mol], >= 0
 * @param volume [m3], >= 0
 * @source derived: amount per volume
 */
export function concentration(amount: number, volume: number): number {
  return volume > 0 ? amount / volume : 0;
}

/**
 * Share of the highest rate that a concentration allows [0..1]: c / (K + c).
 * @param available c, >= 0
 * @param half K, > 0, in the unit of c: where half the rate is reached
 * @source monod-1949
 */
export function monod(available: number, half: number): number {
  return available / (half + available);
}
