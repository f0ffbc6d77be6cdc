import { VARIABLE_INDEX } from '../variables/variables.ts';
import { type EatenByFood, FOOD_COUNT } from './foods.ts';
import { type LivingPopulation, populationCarbon } from './living-population.ts';

/** Positions of the pools of one element between which a day is settled. */
interface Pools {
  readonly eaten: number;
  readonly excreted: number;
  readonly faeces: number;
  readonly dead: number;
  readonly excretedOnLand: number;
  readonly faecesOnLand: number;
  readonly deadOnLand: number;
  readonly left: number;
}

const V = VARIABLE_INDEX;
const ELEMENTS: readonly Pools[] = [
  {
    eaten: V.eatenCarbon,
    excreted: V.excretedCarbon,
    faeces: V.detritusCarbon,
    dead: V.carcassCarbon,
    excretedOnLand: V.givenOffCarbon,
    faecesOnLand: V.soilCarbon,
    deadOnLand: V.remainsCarbon,
    left: V.givenOffCarbon,
  },
  {
    eaten: V.eatenNitrogen,
    excreted: V.excretedNitrogen,
    faeces: V.detritusNitrogen,
    dead: V.carcassNitrogen,
    excretedOnLand: V.soilMineralNitrogen,
    faecesOnLand: V.soilNitrogen,
    deadOnLand: V.remainsNitrogen,
    left: V.givenOffNitrogen,
  },
  {
    eaten: V.eatenPhosphorus,
    excreted: V.excretedPhosphorus,
    faeces: V.detritusPhosphorus,
    dead: V.carcassPhosphorus,
    excretedOnLand: V.soilMineralPhosphorus,
    faecesOnLand: V.soilPhosphorus,
    deadOnLand: V.remainsPhosphorus,
    left: V.givenOffPhosphorus,
  },
];

/** Sums of one element over all populations [mol]. */
interface Sums {
  excreted: number;
  faeces: number;
  dead: number;
  excretedOnLand: number;
  faecesOnLand: number;
  deadOnLand: number;
  left: number;
}

/** Where the day's food went, element by element. */
export interface Settlement {
  begin(): void;
  /** Counts a population that has lived its day on a meal, and renews its body. */
  add(population: LivingPopulation, meal: EatenByFood): void;
  /** Empties the eaten pools into what `add` counted. */
  settle(values: Float64Array): void;
}

/** What is a rounding error of the amounts it was worked out from [1]. */
const ROUNDING = 1e-9;

function total(amounts: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < FOOD_COUNT; k += 1) sum += amounts[k]!;
  return sum;
}

/**
 * Settles a day: for each population and element, what it ate = what its body gained + excreted + what others ate of
 * it + what left the glass + the dead + faeces, faeces being the rest. Each goes to the water for the part of its life
 * it spends there, to the land for the rest.
 * @throws Error when a population used more than it had, beyond rounding
 * @source derived: conservation of carbon, nitrogen and phosphorus
 */
export function createSettlement(): Settlement {
  const sums: Sums[] = ELEMENTS.map(() => ({
    excreted: 0,
    faeces: 0,
    dead: 0,
    excretedOnLand: 0,
    faecesOnLand: 0,
    deadOnLand: 0,
    left: 0,
  }));

  const addElement = (sum: Sums, population: LivingPopulation, flow: Flow): void => {
    const { inWater, day } = population;
    const dead = day.deadCarbon * flow.ratio;
    const left = day.leftCarbon * flow.ratio;
    let faeces =
      flow.eaten - flow.excreted - flow.gained * flow.ratio - day.huntedCarbon * flow.ratio - left - dead;
    let excreted = flow.excreted;
    if (faeces < 0) {
      if (faeces < -ROUNDING * (flow.eaten + population.body * flow.ratio + 1e-9))
        throw new Error(`${population.id} used ${-faeces} mol more than it had`);
      excreted += faeces;
      faeces = 0;
    }
    sum.excreted += inWater * excreted;
    sum.faeces += inWater * faeces;
    sum.dead += inWater * dead;
    sum.excretedOnLand += (1 - inWater) * excreted;
    sum.faecesOnLand += (1 - inWater) * faeces;
    sum.deadOnLand += (1 - inWater) * dead;
    sum.left += left;
  };

  return {
    begin() {
      for (const sum of sums) {
        sum.excreted = 0;
        sum.faeces = 0;
        sum.dead = 0;
        sum.excretedOnLand = 0;
        sum.faecesOnLand = 0;
        sum.deadOnLand = 0;
        sum.left = 0;
      }
    },
    add(population, meal) {
      const { day, energetics } = population;
      const body = populationCarbon(population);
      const gained = body - population.body;
      population.body = Math.max(body, population.body);
      addElement(sums[0]!, population, {
        eaten: total(meal.carbon),
        excreted: day.respiredCarbon,
        gained,
        ratio: 1,
      });
      addElement(sums[1]!, population, {
        eaten: total(meal.nitrogen),
        excreted: day.excretedNitrogen,
        gained,
        ratio: energetics.nitrogenPerCarbon,
      });
      addElement(sums[2]!, population, {
        eaten: total(meal.phosphorus),
        excreted: day.excretedPhosphorus,
        gained,
        ratio: energetics.phosphorusPerCarbon,
      });
      population.body = body;
    },
    settle(values) {
      for (const [e, pools] of ELEMENTS.entries()) {
        const sum = sums[e]!;
        values[pools.eaten] = 0;
        addTo(values, pools.excreted, sum.excreted);
        addTo(values, pools.faeces, sum.faeces);
        addTo(values, pools.dead, sum.dead);
        addTo(values, pools.excretedOnLand, sum.excretedOnLand);
        addTo(values, pools.faecesOnLand, sum.faecesOnLand);
        addTo(values, pools.deadOnLand, sum.deadOnLand);
        addTo(values, pools.left, sum.left);
      }
    },
  };
}

interface Flow {
  readonly eaten: number;
  readonly excreted: number;
  /** Change of the body [mol C], and the element over carbon in it. */
  readonly gained: number;
  readonly ratio: number;
}

/** @throws Error when rounding alone cannot explain a pool below nothing */
function addTo(values: Float64Array, pool: number, amount: number): void {
  const after = values[pool]! + amount;
  if (after < -1e-12) throw new Error(`a pool would hold ${after} mol`);
  values[pool] = Math.max(0, after);
}
