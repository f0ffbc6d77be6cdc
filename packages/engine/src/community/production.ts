import type { LandLayer, LandStand } from '../cycle/land-stand.ts';
import { FIRST_LAND_FOOD, FOOD_SPECS, FOODS, type Food } from '../life/foods.ts';
import { STAGES } from '../life/traits.ts';
import { expectedDraw } from '../outlook/prepare.ts';
import type { Plan } from '../plan/plan.ts';
import { bookShape } from '../run/block-book.ts';
import { type RunRecord, run } from '../run/run.ts';
import { toughPart } from '../run/plant-cover.ts';
import { settingOf } from '../run/setting.ts';
import { CARE_TERMS } from '../run/terms.ts';
import { createWorld, STATE_COUNT } from '../run/world.ts';
import { VARIABLE_INDEX, type VariableId } from '../variables/variables.ts';

/** What a plan makes or is given of each food when no animal eats it. */
export interface FoodProduction {
  readonly food: Food;
  /** Mean over the days [mol C/d], >= 0. */
  readonly perDay: number;
}

/** A plan's own foods without animals, and the conditions in which they arose. */
export interface Larder {
  readonly productions: readonly FoodProduction[];
  /** Means of the run [degC]. */
  readonly waterTemperature: number;
  readonly airTemperature: number;
}

function withoutAnimals(plan: Plan): Plan {
  return {
    ...plan,
    populations: [],
    actions: plan.actions.filter(({ kind }) => kind !== 'add animals' && kind !== 'remove animals'),
  };
}

/** Reactions by which a living pool loses its own carbon as carbon dioxide. */
const RESPIRES = /^respiration|^decay of bacterial film/;

/** Carbon that reactions and care bring into a pool, less what it respires itself [mol]. */
function broughtInto(pool: number, record: RunRecord, plan: Plan, days: number): number {
  const setting = settingOf(plan, days, STAGES);
  const { system } = createWorld(setting, expectedDraw(plan));
  const shape = bookShape(system.reactions.length, STATE_COUNT, 0, setting.stands.length);
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

const GROUP = { plants: 'submerged', 'floating plants': 'floating' } as const;

const meanOf = (series: Float64Array): number =>
  series.reduce((sum, value) => sum + value, 0) / series.length;

/** Carbon that fungi on land make of what rots there [mol/mol]. @source assumed, as in `land-breakdown` */
const FUNGI_PER_ROT = 0.3;

/**
 * What each food brings a day when nobody eats it [mol C/d]: growth less respiration of what lives, what falls or is
 * given of what is dead; on land what rots, and the fungi made of it.
 * @param days over which it is averaged, 1 to 1500
 * @throws RangeError as `run`
 * @validity grazed stands may grow faster or slower than the ungrazed ones reckoned with
 * @source derived: one expected run without animals, read from its book
 */
export function larderOf(plan: Plan, days: number): Larder {
  const empty = withoutAnimals(plan);
  const setting = settingOf(empty, days, STAGES);
  const record = run(setting, expectedDraw(empty));
  const at = (id: string): Float64Array => record.series[setting.seriesIds.indexOf(id as never)]!;
  const productions = FOODS.slice(0, FIRST_LAND_FOOD).map((food, k) => {
    const pool = VARIABLE_INDEX[FOOD_SPECS[k]!.pool!];
    const start = record.start[pool]!;
    const fromStock = food === 'litter' ? start : 0;
    const edible = food === 'plants' || food === 'floating plants' ? 1 - toughPart(plan, GROUP[food]) : 1;
    const brought = Math.max(0, broughtInto(pool, record, empty, days) + fromStock);
    return { food, perDay: (edible * brought) / days };
  });
  return {
    productions: [...productions, ...landProductions(record, empty, days)],
    waterTemperature: meanOf(at('waterTemperature')),
    airTemperature: meanOf(at('airTemperature')),
  };
}

function landProductions(record: RunRecord, plan: Plan, days: number): FoodProduction[] {
  const setting = settingOf(plan, days, STAGES);
  const shape = bookShape(
    createWorld(setting, expectedDraw(plan)).system.reactions.length,
    STATE_COUNT,
    0,
    setting.stands.length,
  );
  const last = record.bookRows.length - shape.rowLength;
  const lost = (id: 'landLitterCarbon' | 'soilCarbon' | 'remainsCarbon'): number => {
    const pool = VARIABLE_INDEX[id];
    let brought = 0;
    for (let row = 0; row <= last; row += shape.rowLength) {
      for (let k = 0; k < CARE_TERMS.length; k += 1)
        brought += Math.max(0, record.bookRows[row + shape.careOffset + k * STATE_COUNT + pool]!);
    }
    return Math.max(
      0,
      (record.start[pool]! + brought - record.bookRows[last + shape.stateOffset + pool]!) / days,
    );
  };
  const litter = lost('landLitterCarbon');
  const remains = lost('remainsCarbon');
  return [
    { food: 'land litter', perDay: litter },
    { food: 'land fungi', perDay: FUNGI_PER_ROT * (litter + remains) },
    { food: 'soil', perDay: lost('soilCarbon') },
    { food: 'remains', perDay: remains },
    ...plantProductions(record, plan, days),
  ];
}

/**
 * What is edible of what plants above the water add a day [mol C/d]: on land the carbon they took from the air, shared by
 * what stands at the end; in wet ground by the cycle's book.
 */
function plantProductions(record: RunRecord, plan: Plan, days: number): FoodProduction[] {
  const setting = settingOf(plan, days, STAGES);
  const { system } = createWorld(setting, expectedDraw(plan));
  const shape = bookShape(system.reactions.length, STATE_COUNT, 0, setting.stands.length);
  const last = record.bookRows.length - shape.rowLength + shape.stateOffset;
  const atEnd = (id: VariableId): number => record.bookRows[last + VARIABLE_INDEX[id]]!;
  const taken = atEnd('airCarbonTaken') - record.start[VARIABLE_INDEX.airCarbonTaken]!;
  const standing = atEnd('moss') + atEnd('landPlants');
  const edibleOf = (layer: LandLayer): number => {
    const stands = setting.stands.filter((stand) => stand.layer === layer);
    const weight = ({ area, fullCoverBiomass, cover }: LandStand): number => area * fullCoverBiomass * cover;
    const all = stands.reduce((sum, stand) => sum + weight(stand), 0);
    return all > 0 ? stands.reduce((sum, stand) => sum + weight(stand) * (stand.edible ?? 1), 0) / all : 1;
  };
  const onLand = (id: 'moss' | 'landPlants', layer: LandLayer): number =>
    standing > 0 ? (edibleOf(layer) * (taken * atEnd(id))) / standing / days : 0;
  const marsh = Math.max(0, broughtInto(VARIABLE_INDEX.emersedPlants, record, plan, days)) / days;
  return [
    { food: 'moss', perDay: onLand('moss', 'moss') },
    { food: 'land plants', perDay: onLand('landPlants', 'tall') },
    { food: 'marsh plants', perDay: (1 - toughPart(plan, 'emersed')) * marsh },
  ];
}
