import { thetaResponse } from '../cycle/temperature-response.ts';
import { expm1 } from '../numerics/elementary.ts';
import type { ParameterSpecs } from '../process/contract.ts';
import { COMPOSITIONS } from '../variables/compositions.ts';
import { VARIABLE_INDEX as V } from '../variables/variables.ts';
import type { AirConditions } from './surroundings.ts';

export interface LandBreakdownParameters {
  readonly litterRate: number;
  readonly remainsRate: number;
  readonly fungiRate: number;
  readonly soilRate: number;
  readonly theta: number;
  readonly halfWetness: number;
  readonly fungalYield: number;
  readonly humified: number;
  readonly woodRate: number;
  readonly mouldTime: number;
  readonly fungiInLeaves: number;
}

const SPECS: ParameterSpecs<LandBreakdownParameters> = {
  litterRate: { unit: '1/d', min: 0.0002, max: 0.03, meaning: 'breakdown of leaves on wet land at 20 degC' },
  remainsRate: { unit: '1/d', min: 0.02, max: 1, meaning: 'moulding of leftovers on wet land at 20 degC' },
  fungiRate: { unit: '1/d', min: 0.005, max: 0.5, meaning: 'upkeep and death of fungi at 20 degC' },
  soilRate: { unit: '1/d', min: 1e-5, max: 0.01, meaning: 'breakdown of soil organic matter at 20 degC' },
  theta: { unit: '1', min: 1, max: 1.2, meaning: 'temperature factor of all four per degree' },
  halfWetness: {
    unit: '1',
    min: 0.02,
    max: 0.8,
    meaning: 'wetness of the ground at which all four are halved',
  },
  fungalYield: {
    unit: '1',
    min: 0.05,
    max: 0.7,
    meaning: 'fungi made per carbon of litter and leftovers broken down',
  },
  humified: { unit: '1', min: 0.02, max: 0.8, meaning: 'part of the rest that becomes soil organic matter' },
  woodRate: {
    unit: '1/d',
    min: 0.002,
    max: 0.5,
    meaning: 'sugars of wood that mould all over it uses at 20 degC',
  },
  mouldTime: { unit: '1', min: 0.2, max: 10, meaning: 'time to mould on the bare wood over that of sapwood' },
  fungiInLeaves: {
    unit: '1',
    min: 0,
    max: 0.95,
    meaning: 'part of the fungi made of leaves that grows within them, or that small animals refuse',
  },
};

/** Identity of the parameters in the library. */
export const LAND_BREAKDOWN = { id: 'land-breakdown', parameters: SPECS };

/** Litter, mould and soil of the land, moved on once a day. */
export interface LandBreakdown {
  /** Lets a day pass. Elements move between land pools; carbon respired is counted as given off. */
  pass(values: Float64Array, air: AirConditions): void;
}

/** One organic pool by its three elements; sugars hold carbon alone. */
interface Organic {
  readonly carbon: number;
  readonly nitrogen?: number;
  readonly phosphorus?: number;
}

const LITTER: Organic = {
  carbon: V.landLitterCarbon,
  nitrogen: V.landLitterNitrogen,
  phosphorus: V.landLitterPhosphorus,
};
const REMAINS: Organic = {
  carbon: V.remainsCarbon,
  nitrogen: V.remainsNitrogen,
  phosphorus: V.remainsPhosphorus,
};
const SOIL = { carbon: V.soilCarbon, nitrogen: V.soilNitrogen, phosphorus: V.soilPhosphorus };
const WOOD: Organic = { carbon: V.landWoodCarbon };
const MINERAL = { nitrogen: V.soilMineralNitrogen, phosphorus: V.soilMineralPhosphorus } as const;
const { nitrogenPerCarbon, phosphorusPerCarbon } = COMPOSITIONS.fungi;

function add(values: Float64Array, pool: number, amount: number): void {
  values[pool] = values[pool]! + amount;
}

function take(values: Float64Array, pool: number, part: number): number {
  const amount = values[pool]! * part;
  values[pool] = values[pool]! - amount;
  return amount;
}

/**
 * The land's decomposition. A day breaks down 1 - exp(-k theta^(T-20) w/(w + K)) of each pool:
 *   litter, leftovers: yield y to fungi, as far as their and the soil's mineral nitrogen and phosphorus allow; of the
 *   rest a part h to soil organic matter, the remainder respired to the air; spare nitrogen and phosphorus with h to
 *   the soil, the remainder mineral;
 *   fungi: half to soil organic matter, half respired, their nutrients likewise;
 *   soil organic matter: respired, its nutrients mineral;
 *   sugars of bare wood, as far as mould covers it (`wood-mould`): as litter, with nutrients of the soil alone.
 * Of the fungi made of litter a part grows within the leaves, out of reach of small animals; it dies as the rest does.
 * @throws RangeError when a parameter is missing or outside its range
 * @validity no leaching into the pool, no loss of nitrogen to the air, no limit by oxygen
 * @source olson-1963 (first order); leonard-anderson-1991 for the fungi within leaves; routes and efficiencies assumed, see
 *   docs/science/life.md
 */
export function createLandBreakdown(parameters: Readonly<LandBreakdownParameters>): LandBreakdown {
  const { woodRate, litterRate, remainsRate, fungiRate, soilRate } = parameters;
  const { halfWetness, fungalYield, humified, fungiInLeaves } = parameters;
  const warmth = thetaResponse(parameters.theta, 20);

  /** Lets a part of a pool rot; returns the fungi made of it [mol C]. */
  const rot = (values: Float64Array, from: Organic, part: number): number => {
    const carbon = take(values, from.carbon, part);
    const nitrogen = from.nitrogen === undefined ? 0 : take(values, from.nitrogen, part);
    const phosphorus = from.phosphorus === undefined ? 0 : take(values, from.phosphorus, part);
    if (carbon <= 0) {
      add(values, MINERAL.nitrogen, nitrogen);
      add(values, MINERAL.phosphorus, phosphorus);
      return 0;
    }
    const byNitrogen = (nitrogen + values[MINERAL.nitrogen]!) / nitrogenPerCarbon;
    const byPhosphorus = (phosphorus + values[MINERAL.phosphorus]!) / phosphorusPerCarbon;
    const fungi = Math.min(fungalYield * carbon, byNitrogen, byPhosphorus);
    add(values, V.landFungi, fungi);
    add(values, SOIL.carbon, humified * (carbon - fungi));
    add(values, V.givenOffCarbon, (1 - humified) * (carbon - fungi));
    spread(values, { pool: 'nitrogen', amount: nitrogen, used: fungi * nitrogenPerCarbon });
    spread(values, { pool: 'phosphorus', amount: phosphorus, used: fungi * phosphorusPerCarbon });
    return fungi;
  };
  /** What fungi leave of a nutrient goes to the soil; what they lack they take from it. */
  const spread = (
    values: Float64Array,
    { pool, amount, used }: { pool: 'nitrogen' | 'phosphorus'; amount: number; used: number },
  ): void => {
    const spare = amount - used;
    if (spare <= 0) {
      values[MINERAL[pool]] = Math.max(0, values[MINERAL[pool]]! + spare);
      return;
    }
    add(values, SOIL[pool], humified * spare);
    add(values, MINERAL[pool], (1 - humified) * spare);
  };
  const fungiDie = (values: Float64Array, part: number): void => {
    const carbon = take(values, V.landFungi, part);
    const half = 0.5 * carbon;
    add(values, SOIL.carbon, half);
    add(values, V.givenOffCarbon, half);
    add(values, SOIL.nitrogen, half * nitrogenPerCarbon);
    add(values, MINERAL.nitrogen, half * nitrogenPerCarbon);
    add(values, SOIL.phosphorus, half * phosphorusPerCarbon);
    add(values, MINERAL.phosphorus, half * phosphorusPerCarbon);
  };

  return {
    pass(values, { temperature, groundWetness }) {
      const pace = (warmth(temperature) * groundWetness) / (groundWetness + halfWetness);
      const part = (rate: number): number => -expm1(-rate * pace);
      add(values, V.givenOffCarbon, take(values, SOIL.carbon, part(soilRate)));
      add(values, MINERAL.nitrogen, take(values, SOIL.nitrogen, part(soilRate)));
      add(values, MINERAL.phosphorus, take(values, SOIL.phosphorus, part(soilRate)));
      fungiDie(values, part(fungiRate));
      const within =
        values[V.fungiInLeaves]! * values[V.landFungi]! +
        fungiInLeaves * rot(values, LITTER, part(litterRate));
      rot(values, REMAINS, part(remainsRate));
      const mouldy = values[V.woodMouldCover]!;
      if (mouldy > 0) rot(values, WOOD, -expm1(-woodRate * mouldy * warmth(temperature)));
      values[V.fungiInLeaves] = within > 0 ? within / values[V.landFungi]! : 0;
    },
  };
}
