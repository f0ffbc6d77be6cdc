import type { Plan } from '../plan/plan.ts';
import type { BookedReaction } from '../process/compose.ts';
import { VARIABLE_INDEX as V } from '../variables/variables.ts';
import { createKindMix } from './kind-mix.ts';
import { meanOfPlantings, PLANT_POOLS, plantedBiomass, type RootedInWater } from './plant-cover.ts';

/**
 * Breakdown of dead parts over that of soft shoots where an entry states none [1]: floating rosettes as water lettuce,
 * wet-rooted plants as cattail and maidencane, 0.0082, 0.0031 and 0.0049 a day in litter bags of a pond in Florida.
 * @source zhou-2018 (abstract); taken at 25 degC over what plant-remains has there
 */
export const USUAL_BREAKDOWN: Readonly<Record<RootedInWater, number>> = {
  submerged: 1,
  floating: 0.16,
  emersed: 0.08,
};

type Planted = Pick<Plan, 'box' | 'zones' | 'plants'>;

/** Reaction by which each group leaves its dead parts, as `producer` names it. */
const LOSS: Readonly<Record<RootedInWater, string>> = {
  submerged: 'loss of submerged plants',
  floating: 'loss of floating plants',
  emersed: 'loss of plants rooted in wet ground',
};

/** Follows which plants the dead water plants came from. */
export interface RemainsMix {
  /**
   * Sets the mean pace of what lies there at a day's end.
   * @param extents of the reactions; a new array starts from 0
   */
  pass(values: Float64Array, extents: Float64Array): void;
}

const GROUPS = Object.keys(PLANT_POOLS) as RootedInWater[];

function plantedGroups(plan: Planted): RootedInWater[] {
  return GROUPS.filter((group) => plantedBiomass(plan, group) > 0);
}

function breakdownOf(plan: Planted, group: RootedInWater): number {
  return meanOfPlantings(plan, group, ({ breakdown = USUAL_BREAKDOWN[group] }) => breakdown);
}

/** Breakdown of dead parts of all plants in the water over that of soft shoots [1], mean by biomass; 1 without any. `derived`. */
export function meanBreakdown(plan: Planted): number {
  let [all, sum] = [0, 0];
  for (const group of plantedGroups(plan)) {
    const biomass = plantedBiomass(plan, group);
    all += biomass;
    sum += biomass * breakdownOf(plan, group);
  }
  return all > 0 ? sum / all : 1;
}

/**
 * Returns what follows the kinds of dead plants, or nothing where one group was planted.
 * @throws Error when the reaction of a planted group is missing. `derived`.
 */
export function createRemainsMix(
  plan: Planted,
  reactions: readonly BookedReaction[],
): RemainsMix | undefined {
  const groups = plantedGroups(plan);
  if (groups.length < 2) return undefined;
  const at = groups.map((group) => {
    const reaction = reactions.findIndex(({ name }) => name === LOSS[group]);
    if (reaction < 0) throw new Error(`no reaction is named ${LOSS[group]}`);
    return reaction;
  });
  const paces = groups.map((group) => breakdownOf(plan, group));
  const mix = createKindMix();
  const before = new Float64Array(groups.length);
  let last: Float64Array | undefined;
  return {
    pass(values, extents) {
      if (extents !== last) before.fill(0);
      last = extents;
      const fallen = at.map((reaction, k) => extents[reaction]! - before[k]!);
      const left = values[V.plantRemains]!;
      const fresh = fallen.reduce((sum, amount) => sum + amount, 0);
      mix.settle(Math.max(0, left - fresh));
      for (let k = 0; k < groups.length; k += 1) {
        before[k] = extents[at[k]!]!;
        mix.add(fallen[k]!, paces[k]!);
      }
      if (left > 0) values[V.remainsPace] = mix.pace();
    },
  };
}
