import type { LandStand } from '../cycle/land-stand.ts';
import { geometryOf } from '../geometry/geometry.ts';
import { FIRST_LAND_FOOD, FOOD_SPECS, FOODS, type Food } from '../life/foods.ts';
import { LAND_BREAKDOWN, type LandBreakdownParameters } from '../life/land-breakdown.ts';
import { STAGES, type TraitValues } from '../life/traits.ts';
import { expectedDraw } from '../outlook/prepare.ts';
import type { Plan } from '../plan/plan.ts';
import { checkedParameters, type ReactionSystem } from '../process/compose.ts';
import { type BookShape, bookShape } from '../run/block-book.ts';
import { toughPart } from '../run/plant-cover.ts';
import { type RunRecord, run } from '../run/run.ts';
import type { SeriesId } from '../run/series.ts';
import { settingOf } from '../run/setting.ts';
import { CARE_TERMS } from '../run/terms.ts';
import { createWorld, STATE_COUNT } from '../run/world.ts';
import { VARIABLE_INDEX, type VariableId } from '../variables/variables.ts';

/** What a plan makes or is given of each food when no animal eats it. */
export interface FoodProduction {
  readonly food: Food;
  /** Mean over the days [mol C/d], >= 0. */
  readonly perDay: number;
  /** Lying there when nobody eats it, mean over the days [mol C]. */
  readonly stock: number;
}

/** A plan's own foods without animals, and the conditions in which they arose. */
export interface Larder {
  readonly productions: readonly FoodProduction[];
  /** Means of the run [degC]. */
  readonly waterTemperature: number;
  readonly airTemperature: number;
  /** On the first day [m2]. */
  readonly submergedArea: number;
  readonly landArea: number;
}

/** Temperature of a species' bodies in the place of a larder [degC]. @source derived: by the part of its life in water */
export function larderTemperature(
  { waterTemperature, airTemperature }: Larder,
  { shareInWater }: Pick<TraitValues, 'shareInWater'>,
): number {
  return shareInWater * waterTemperature + (1 - shareInWater) * airTemperature;
}

function withoutAnimals(plan: Plan): Plan {
  return {
    ...plan,
    populations: [],
    routines: plan.routines.filter(({ kind }) => kind !== 'remove animals'),
    actions: plan.actions.filter(({ kind }) => kind !== 'add animals' && kind !== 'remove animals'),
  };
}

/** Reactions by which a living pool loses its own carbon as carbon dioxide. */
const RESPIRES = /^respiration|^decay of bacterial film/;

/** Carbon that reactions and care bring into a pool, less what it respires itself [mol]. */
function broughtInto(pool: number, record: RunRecord, system: ReactionSystem, shape: BookShape): number {
  let sum = 0;
  for (let row = 0; row < record.bookRows.length; row += shape.rowLength) {
    for (const [r, { name }] of system.reactions.entries()) {
      for (let e = system.start[r]!; e < system.start[r + 1]!; e += 1) {
        if (system.index[e] !== pool) continue;
        const moved = system.coefficient[e]! * record.bookRows[row + r]!;
        if (moved > 0 || RESPIRES.test(name)) sum += moved;
      }
    }
    for (let k = 0; k < CARE_TERMS.length; k += 1) {
      const brought = record.bookRows[row + shape.careOffset + k * STATE_COUNT + pool]!;
      if (brought > 0) sum += brought;
    }
  }
  return sum;
}

/** Part of a food that animals take [0..1]: of living plants what is not too tough or bitter on the first day. */
function edibleOf(food: Food, plan: Plan, stands: readonly LandStand[]): number {
  if (food === 'plants') return 1 - toughPart(plan, 'submerged');
  if (food === 'floating plants') return 1 - toughPart(plan, 'floating');
  if (food === 'marsh plants') return 1 - toughPart(plan, 'emersed');
  if (food !== 'moss' && food !== 'land plants') return 1;
  const layer = food === 'moss' ? 'moss' : 'tall';
  let all = 0;
  let edible = 0;
  for (const stand of stands) {
    if (stand.layer !== layer) continue;
    const biomass = stand.area * stand.fullCoverBiomass * stand.cover;
    all += biomass;
    edible += biomass * (stand.edible ?? 1);
  }
  return all > 0 ? edible / all : 1;
}

const meanOf = (series: Float64Array): number =>
  series.reduce((sum, value) => sum + value, 0) / series.length;

/** Pools of a run read from its book: at its end, in the mean, and what care brought [mol]. */
interface Pools {
  end(pool: VariableId): number;
  mean(pool: VariableId): number;
  brought(pool: VariableId): number;
}

function poolsOf(record: RunRecord, { rowLength, stateOffset, careOffset }: BookShape): Pools {
  const rows = record.bookRows.length / rowLength;
  const at = (row: number, entry: number): number => record.bookRows[row * rowLength + entry]!;
  return {
    end: (pool) => at(rows - 1, stateOffset + VARIABLE_INDEX[pool]),
    mean(pool) {
      let sum = record.start[VARIABLE_INDEX[pool]]!;
      for (let row = 0; row < rows; row += 1) sum += at(row, stateOffset + VARIABLE_INDEX[pool]);
      return sum / (rows + 1);
    },
    brought(pool) {
      let sum = 0;
      for (let row = 0; row < rows; row += 1)
        for (let k = 0; k < CARE_TERMS.length; k += 1)
          sum += Math.max(0, at(row, careOffset + k * STATE_COUNT + VARIABLE_INDEX[pool]));
      return sum;
    },
  };
}

/**
 * What each food brings a day when nobody eats it [mol C/d]: growth less respiration of what lives, what falls or is
 * given of what is dead, leaves that are laid down spread over a year at least; of soil what rots, and the fungi
 * made of what rots.
 * @param days over which it is averaged, 1 to 1500
 * @throws RangeError as `run`
 * @validity grazed stands may grow faster or slower than the ungrazed ones reckoned with
 * @source derived: one expected run without animals, read from its book
 */
export function larderOf(plan: Plan, days: number): Larder {
  const empty = withoutAnimals(plan);
  const setting = settingOf(empty, days, STAGES);
  const draw = expectedDraw(empty);
  const record = run(setting, draw);
  const { system } = createWorld(setting, draw);
  const shape = bookShape(system.reactions.length, STATE_COUNT, 0, setting.stands.length);
  const pools = poolsOf(record, shape);
  const at = (id: SeriesId): Float64Array => record.series[setting.seriesIds.indexOf(id)]!;
  const inWater = FOOD_SPECS.slice(0, FIRST_LAND_FOOD).map(({ food, pool }): FoodProduction => {
    const index = VARIABLE_INDEX[pool!];
    const fromStock = food === 'litter' ? record.start[index]! : 0;
    const brought = broughtInto(index, record, system, shape);
    const edible = edibleOf(food, plan, setting.stands);
    return {
      food,
      perDay: (edible * Math.max(0, brought + fromStock)) / days,
      stock: edible * pools.mean(pool!),
    };
  });
  const marsh = broughtInto(VARIABLE_INDEX.emersedPlants, record, system, shape);
  const plants = plantProductions(record, pools, marsh).map(({ food, perDay, stock }): FoodProduction => {
    const edible = edibleOf(food, plan, setting.stands);
    return { food, perDay: (edible * perDay) / days, stock: edible * stock };
  });
  const geometry = geometryOf(plan);
  return {
    productions: [
      ...inWater,
      ...landProductions(record, pools, { days, ...checkedParameters(LAND_BREAKDOWN, draw.parameters) }),
      ...plants,
    ],
    waterTemperature: meanOf(at('waterTemperature')),
    airTemperature: meanOf(at('airTemperature')),
    submergedArea: geometry.submergedAreaAt(plan.water.level),
    landArea: geometry.landAreaAt(plan.water.level),
  };
}

/**
 * What plants above the water add over the days [mol C]: on land the carbon they took from the air, shared by what stands
 * there in the mean; in wet ground `marsh`, by the cycle's book.
 */
function plantProductions(record: RunRecord, { end, mean }: Pools, marsh: number): FoodProduction[] {
  const taken = Math.max(0, end('airCarbonTaken') - record.start[VARIABLE_INDEX.airCarbonTaken]!);
  const [moss, tall] = [mean('moss'), mean('landPlants')];
  const standing = moss + tall;
  const part = (stock: number): number => (standing > 0 ? (taken * stock) / standing : 0);
  return [
    { food: 'moss', perDay: part(moss), stock: moss },
    { food: 'land plants', perDay: part(tall), stock: tall },
    { food: 'marsh plants', perDay: Math.max(0, marsh), stock: mean('emersedPlants') },
  ];
}

/** Days over which leaves that lie there, or are laid down on land, are to last at least [d]. @source assumed: keepers renew them once a year */
const LEAVES_LAST = 365;
/** Pools of dead matter on land, and what of it went to the air. */
const ON_LAND = [
  'landWoodCarbon',
  'landLitterCarbon',
  'landFungi',
  'soilCarbon',
  'remainsCarbon',
  'givenOffCarbon',
] as const;

/**
 * Carbon that plants on land dropped [mol]: what the pools of the land and the air above them gained beyond what care
 * brought.
 */
function droppedOnLand(record: RunRecord, { end, brought }: Pools): number {
  return Math.max(
    0,
    ON_LAND.reduce((sum, pool) => sum + end(pool) - record.start[VARIABLE_INDEX[pool]]! - brought(pool), 0),
  );
}

/** What the land's decomposition makes of leaves and leftovers over the days. */
interface Rotting extends Pick<LandBreakdownParameters, 'fungalYield' | 'fungiInLeaves'> {
  readonly days: number;
}

function landProductions(
  record: RunRecord,
  pools: Pools,
  { days, fungalYield, fungiInLeaves }: Rotting,
): FoodProduction[] {
  const start = (pool: VariableId): number => record.start[VARIABLE_INDEX[pool]]!;
  const come = (pool: VariableId): number => start(pool) + pools.brought(pool);
  const laid = come('landLitterCarbon');
  const dropped = droppedOnLand(record, pools);
  const remains = come('remainsCarbon');
  const leaves = Math.max(0, laid + dropped - pools.end('landLitterCarbon'));
  const leftovers = Math.max(0, remains - pools.end('remainsCarbon'));
  const outside = 1 - fungiInLeaves;
  const perDay: Partial<Record<Food, number>> = {
    'land litter': laid / Math.max(days, LEAVES_LAST) + dropped / days,
    'land fungi': (fungalYield * (outside * leaves + leftovers)) / days,
    soil: Math.max(0, come('soilCarbon') - pools.end('soilCarbon')) / days,
    remains: remains / days,
  };
  return Object.entries(perDay).map(([food, amount]) => ({
    food: food as Food,
    perDay: amount,
    stock: (food === 'land fungi' ? outside : 1) * pools.mean(FOOD_SPECS[FOODS.indexOf(food as Food)]!.pool!),
  }));
}
