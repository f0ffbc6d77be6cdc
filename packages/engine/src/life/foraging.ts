import type { Energetics } from './energetics.ts';
import { ALGAE, FOOD_COUNT, FOOD_SPECS } from './foods.ts';
import type { TraitValues } from './traits.ts';

/** Diet of one species, arrays over FOODS. */
export interface Diet {
  readonly preference: Float64Array;
  readonly efficiency: Float64Array;
  readonly nutrientEfficiency: number;
  /** [mol/m2] */
  readonly halfSaturation: number;
  readonly algaeRefuge: number;
}

/** The diet written in a species' traits, in the units of TRAIT_SPECS. `derived`. */
export function dietOf(traits: TraitValues): Diet {
  return {
    preference: Float64Array.from(FOOD_SPECS, ({ preference }) => traits[preference]),
    efficiency: Float64Array.from(FOOD_SPECS, ({ efficiency }) => traits[efficiency]),
    nutrientEfficiency: traits.nutrientEfficiency,
    halfSaturation: traits.halfSaturation,
    algaeRefuge: traits.algaeRefuge,
  };
}

/**
 * Part of the largest intake reached on several foods together [1], 0 to 1.
 * X / (X + H), with X the weighted amount of all foods: Holling's type II on their sum.
 * @param food weighted amount per submerged area, X [mol/m2], >= 0
 * @param halfSaturation H [mol/m2], > 0
 * @source holling-1959; the weighted sum follows from one handling time shared by all foods (derived)
 */
export function satiation(food: number, halfSaturation: number): number {
  return food / (food + halfSaturation);
}

/**
 * Writes what a species wants of each food per mm2 of body surface and day [mol/mm2/d] into `into`, at the
 * reference temperature; returns the sum of the weighted foods [mol/m2].
 * Intake of food k: s_k min(i, a / sum s_k e_k) X/(X + H), s_k = p_k X_k / X: animals raise their intake of poor
 * food up to the limit i of their gut, and eat no more of rich food than they can use.
 * @param amounts carbon of each food [mol]
 * @param area submerged surface [m2], > 0
 * @source derived from `satiation` and the energy budget
 */
export function wantedFood(
  diet: Diet,
  energetics: Energetics,
  { amounts, area }: { readonly amounts: Float64Array; readonly area: number },
  into: Float64Array,
): number {
  let weighted = 0;
  let worth = 0;
  for (let k = 0; k < FOOD_COUNT; k += 1) {
    const hidden = k === ALGAE ? diet.algaeRefuge * area : 0;
    const reachable = amounts[k]! - hidden;
    const weight = reachable > 0 ? (diet.preference[k]! * reachable) / area : 0;
    into[k] = weight;
    weighted += weight;
    worth += weight * diet.efficiency[k]!;
  }
  if (weighted <= 0) return 0;
  const efficiency = worth / weighted;
  const intake = Math.min(energetics.ingestion, energetics.assimilation / efficiency);
  const share = (intake * satiation(weighted, diet.halfSaturation)) / weighted;
  for (let k = 0; k < FOOD_COUNT; k += 1) into[k] = into[k]! * share;
  return weighted;
}
