import { bodyRate } from '../life/energetics.ts';
import { FOOD_SPECS, FOODS, type Food } from '../life/foods.ts';
import type { Plan } from '../plan/plan.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { medianTraits, needOfFood } from './need.ts';
import { type Larder, larderOf } from './production.ts';

/** How many adults of one population a food could feed alone. */
export interface FedAdults {
  readonly population: string;
  readonly name: string;
  /** [1], >= 0; half of it already leaves room for young, see `withYoung`. */
  readonly adults: number;
  /** Adults beside their own young, who eat about as much. */
  readonly withYoung: number;
}

/** One food of a plan and whom it carries. */
export interface FoodCapacity {
  readonly food: Food;
  readonly foodName: string;
  /** Made or given a day when nobody eats it [mg C/d]. */
  readonly production: number;
  readonly eaters: readonly FedAdults[];
}

/** Part of what arises that animals can get before it falls apart or out of reach [1]. @source assumed */
const WITHIN_REACH = 0.7;
/** Adults over all they feed beside young that eat as much again. @source assumed */
const BESIDE_YOUNG = 0.5;
const USUAL_DAYS = 120;

/**
 * How many adults each food of a plan carries, one species at a time and with nothing else to eat.
 * adults = 0.7 production / (upkeep of an adult / efficiency on the food), at the plan's mean temperature.
 * @param days over which production is averaged, 120 when left out
 * @throws RangeError as `run`
 * @validity a long-run mean: a stock of food carries more for a while, and growing or breeding animals need more
 * @source derived from `larderOf` and `upkeepOfAdult`
 */
export function carryingCapacity(plan: Plan, days: number = USUAL_DAYS): FoodCapacity[] {
  const larder = larderOf(plan, days);
  return larder.productions
    .filter(({ perDay }) => perDay > 0)
    .map(({ food, perDay }) => ({
      food,
      foodName: FOOD_SPECS[FOODS.indexOf(food)]!.name,
      production: perDay * MOLAR_MASS.carbon * 1000,
      eaters: plan.populations.flatMap((population) => {
        const traits = medianTraits(population);
        const need = needOfFood(traits, food, rateIn(larder, traits));
        if (need === undefined) return [];
        const adults = (WITHIN_REACH * perDay) / need;
        return [
          { population: population.id, name: population.name, adults, withYoung: BESIDE_YOUNG * adults },
        ];
      }),
    }))
    .filter(({ eaters }) => eaters.length > 0);
}

/** Temperature factor of a species in the place of a larder [1]. @source derived */
export function rateIn(larder: Larder, traits: ReturnType<typeof medianTraits>): number {
  const { shareInWater } = traits;
  return bodyRate(
    traits,
    shareInWater * larder.waterTemperature + (1 - shareInWater) * larder.airTemperature,
  );
}
