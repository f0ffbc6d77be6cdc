import { expm1 } from '../numerics/elementary.ts';
import { VARIABLE_INDEX } from '../variables/variables.ts';
import { type EatenByFood, edibleCarbon, FIRST_LAND_FOOD, FUNGI, LAND_POOLS } from './foods.ts';

const { fungiInLeaves } = VARIABLE_INDEX;

/**
 * Takes what animals eat on land out of its pools and writes it into `eaten` by food [mol]: of each food
 * 1 - exp(-wanted days / amount), so that a dwindling food is never overdrawn; of plants only what is not too tough, of
 * fungi only what grows outside of leaves: what grows within them stays.
 * @param wanted by all animals, by food [mol C/d]
 * @param days over which they eat [d]
 * @source derived: clearance constant over the day, as the cycle clears foods in the water
 */
export function eatOnLand(values: Float64Array, wanted: Float64Array, eaten: EatenByFood, days = 1): void {
  for (let order = 0; order < LAND_POOLS.length; order += 1) {
    const k = FIRST_LAND_FOOD + order;
    const { carbon, nitrogen, phosphorus, composition } = LAND_POOLS[order]!;
    const amount = values[carbon]!;
    const edible = edibleCarbon(values, k);
    const part = edible > 0 && wanted[k]! > 0 ? (edible / amount) * -expm1((-wanted[k]! * days) / edible) : 0;
    const bite = amount * part;
    eaten.carbon[k] = bite;
    values[carbon] = amount - bite;
    if (k === FUNGI && bite > 0 && bite < amount)
      values[fungiInLeaves] = Math.min(1, (values[fungiInLeaves]! * amount) / (amount - bite));
    if (composition) {
      eaten.nitrogen[k] = bite * composition.nitrogenPerCarbon;
      eaten.phosphorus[k] = bite * composition.phosphorusPerCarbon;
      continue;
    }
    eaten.nitrogen[k] = values[nitrogen]! * part;
    eaten.phosphorus[k] = values[phosphorus]! * part;
    values[nitrogen] = values[nitrogen]! - eaten.nitrogen[k]!;
    values[phosphorus] = values[phosphorus]! - eaten.phosphorus[k]!;
  }
}
