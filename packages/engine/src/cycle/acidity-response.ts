import { exp10 } from '../numerics/elementary.ts';

/** Share of the highest rate [0..1] at an activity of hydrogen ions [mol/kg]. */
export type AcidityResponse = (hydrogenActivity: number) => number;

/**
 * Response of an enzyme with two ionising groups, 1 at its optimum half way between the two pK:
 * f = (1 + 2 sqrt(K2/K1)) / (1 + aH/K1 + K2/aH). About half at pH = pK1 and at pH = pK2.
 * @param acidSide pK1 [pH], 4 to 8
 * @param alkalineSide pK2 [pH], above `acidSide`
 * @source antoniou-1990
 */
export function acidityResponse(acidSide: number, alkalineSide: number): AcidityResponse {
  const k1 = exp10(-acidSide);
  const k2 = exp10(-alkalineSide);
  const scale = 1 + 2 * Math.sqrt(k2 / k1);
  return (activity) => (scale * activity) / (activity + (activity * activity) / k1 + k2);
}
