import { USUAL_WEIGHT, usualAmount } from './diet-rules.ts';
import type { Energetics } from './energetics.ts';
import { ALGAE, FEED, FIRST_LAND_FOOD, FOOD_SPECS, PREY, SUSPENDED } from './foods.ts';
import { feedingSquare } from './growth-curve.ts';
import type { TraitValues } from './traits.ts';

/** Diet of one species, arrays over FOODS. */
export interface Diet {
  readonly preference: Float64Array;
  readonly efficiency: Float64Array;
  /** Positions of the foods it eats. */
  readonly foods: Int32Array;
  readonly nutrientEfficiency: number;
  /** [mol/m2] */
  readonly halfSaturation: number;
  readonly algaeRefuge: number;
  /** How readily it takes feed that is all of plants, over mixed feed [0..1]. */
  readonly vegetables: number;
  /** Takes all that the water it filters carries, up to the most it can pass on. */
  readonly filters: boolean;
}

/** Parts of a diet of prey and carrion among its natural foods from which an animal begins to refuse vegetables [1]. @source assumed */
const HUNTER = 0.5;
const PREY_TRAITS = ['preferenceForPrey', 'preferenceForCarrion'] as const;

/**
 * How readily an animal takes feed that is all of plants, over mixed feed [1], 0 to 1: all who live of prey and carrion for
 * half of their natural foods or less; pure hunters not at all, in between in proportion.
 * @source assumed: grazers and scavengers take feeds of either kind, fish and frogs that hunt refuse vegetables
 */
export function vegetablesOf(
  traits: Pick<TraitValues, 'preferenceForPrey' | 'preferenceForCarrion' | 'preferenceForFeed'>,
): number {
  const weight = (id: keyof typeof traits): number => usualAmount(id) * traits[id];
  const natural = USUAL_WEIGHT - weight('preferenceForFeed');
  if (!(natural > 0)) return 1;
  const hunted = PREY_TRAITS.reduce((sum, id) => sum + weight(id), 0) / natural;
  return Math.min(1, Math.max(0, (1 - hunted) / (1 - HUNTER)));
}

/** Readiness to take feed of which a part is of animals, over mixed feed [1]. @source derived: linear up to a half */
export function appealOf({ vegetables }: Diet, meaty = 0.5): number {
  return meaty >= 0.5 ? 1 : vegetables + (1 - vegetables) * 2 * meaty;
}

/** The diet written in a species' traits, in the units of TRAIT_SPECS. `derived`. */
export function dietOf(traits: TraitValues): Diet {
  return {
    preference: Float64Array.from(FOOD_SPECS, ({ preference }) => traits[preference]),
    efficiency: Float64Array.from(FOOD_SPECS, ({ efficiency }) => traits[efficiency]),
    foods: Int32Array.from(FOOD_SPECS.flatMap(({ preference }, k) => (traits[preference] > 0 ? [k] : []))),
    nutrientEfficiency: traits.nutrientEfficiency,
    halfSaturation: traits.halfSaturation,
    algaeRefuge: traits.algaeRefuge,
    filters: traits.filtering > 0,
    vegetables: vegetablesOf(traits),
  };
}

/**
 * Part of the largest intake reached on several foods together [1], 0 to 1.
 * X / (X + H), with X the weighted amount of all foods: Holling's type II on their sum.
 * @param food weighted amount per surface, X [mol/m2], >= 0
 * @param halfSaturation H [mol/m2], > 0
 * @source holling-1959; the weighted sum follows from one handling time shared by all foods (derived)
 */
export function satiation(food: number, halfSaturation: number): number {
  return food / (food + halfSaturation);
}

/**
 * The same for animals that filter: in proportion to the food up to the most they can pass on [1], 0 to 1.
 * min(1, X / (2 H)): Holling's type I with intake half at H.
 * @param food weighted amount per surface, X [mol/m2], >= 0
 * @param halfSaturation H [mol/m2], > 0
 * @source jeschke-2004: filterers need no time for a bite, so food does not slow them before they are full
 */
export function filledBy(food: number, halfSaturation: number): number {
  return Math.min(1, food / (2 * halfSaturation));
}

/** Part of the largest intake that a diet reaches on a weighted amount of food [1], 0 to 1. `derived`. */
export function intakeShare({ filters, halfSaturation }: Diet, food: number): number {
  return filters ? filledBy(food, halfSaturation) : satiation(food, halfSaturation);
}

/**
 * How much more readily a hunter finds prey than its weight among foods says [1], so that a full-grown one clears the ground
 * it searches where prey is scarce:
 *   finding = search H / (p i),  i = min(ingestion, assimilation / efficiency) Lfull^2
 * 1 for those whose search is not known. As a hunter grows, what it clears grows with its intake, by the square of length.
 * @source derived: slope of the type II response at no prey, i p finding / H
 */
export function findingOf(traits: TraitValues, energetics: Energetics): number {
  const { search, preferenceForPrey, efficiencyOnPrey, halfSaturation } = traits;
  if (!(search > 0 && preferenceForPrey > 0)) return 1;
  const { ingestion, assimilation, fullGrown } = energetics;
  const most = Math.min(ingestion, assimilation / efficiencyOnPrey) * feedingSquare(energetics, fullGrown);
  return (search * halfSaturation) / (preferenceForPrey * most);
}

/** What lies within reach of a species: carbon by food [mol], and the ground it is spread over. */
export interface Table {
  readonly amounts: Float64Array;
  /** Submerged surface [m2]. */
  readonly area: number;
  /** Land surface [m2]; 0 when left out. */
  readonly landArea?: number;
  /** Part of its life the species spends in the water [0..1]; 1 when left out. */
  readonly inWater?: number;
  /** Of the water [m3]; when left out, what floats counts per surface like the rest. */
  readonly volume?: number;
  /** Prey within its reach per surface [mol/m2]; none when left out. */
  readonly prey?: number;
  /** Readiness to take the feed that lies there, over mixed feed [0..1]; 1 when left out. */
  readonly appeal?: number;
}

/** Water whose floating food counts as if it lay on the ground [m]: what filters feeds by concentration. @source assumed */
const FILTERED_DEPTH = 0.1;

function reachOf({ area, landArea = 0, inWater = 1, volume = 0 }: Table, k: number): number {
  if (k === SUSPENDED && volume > 0) return (inWater * FILTERED_DEPTH) / volume;
  if (k < FIRST_LAND_FOOD) return area > 0 ? inWater / area : 0;
  return landArea > 0 ? (1 - inWater) / landArea : 0;
}

/**
 * Writes what a species wants of each food per mm2 of body surface and day [mol/mm2/d] into `into`, at the
 * reference temperature; returns the sum of the weighted foods [mol/m2].
 * Intake of food k: s_k min(i, a / sum s_k e_k) X/(X + H), for filterers min(1, X/2H), s_k = p_k X_k / X: animals raise their intake of poor
 * food up to the limit i of their gut, and eat no more of rich food than they can use. Amounts count per surface of
 * their place, algae afloat by their concentration in a layer of 10 cm, times the part of its life the species spends there.
 * @source derived from `intakeShare` and the energy budget
 */
export function wantedFood(diet: Diet, energetics: Energetics, table: Table, into: Float64Array): number {
  const { foods } = diet;
  let weighted = 0;
  let worth = 0;
  into.fill(0);
  for (let f = 0; f < foods.length; f += 1) {
    const k = foods[f]!;
    let weight = 0;
    if (k === PREY) weight = diet.preference[k]! * (table.prey ?? 0);
    else {
      const hidden = k === ALGAE ? diet.algaeRefuge * table.area : 0;
      const reachable = table.amounts[k]! - hidden;
      if (reachable > 0) weight = diet.preference[k]! * reachable * reachOf(table, k);
      if (k === FEED) weight *= table.appeal ?? 1;
    }
    into[k] = weight;
    weighted += weight;
    worth += weight * diet.efficiency[k]!;
  }
  if (weighted <= 0) return 0;
  const efficiency = worth / weighted;
  const intake = Math.min(energetics.ingestion, energetics.assimilation / efficiency);
  const share = (intake * intakeShare(diet, weighted)) / weighted;
  for (let f = 0; f < foods.length; f += 1) into[foods[f]!] = into[foods[f]!]! * share;
  return weighted;
}
