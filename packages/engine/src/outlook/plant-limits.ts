import { emersedPlants } from '../cycle/emersed-plants.ts';
import { floatingPlants } from '../cycle/floating-plants.ts';
import { submergedPlants } from '../cycle/submerged-plants.ts';
import { log } from '../numerics/elementary.ts';
import { checkedParameters } from '../process/compose.ts';
import type { RunningProcess } from '../process/contract.ts';
import type { BookShape } from '../run/block-book.ts';
import type { RootedInWater } from '../run/plant-cover.ts';
import { createWorld, setConstantDrivers, setWaterDrivers, type World } from '../run/world.ts';
import { STATE_IDS, VARIABLE_INDEX as V, VARIABLE_IDS, type VariableId } from '../variables/variables.ts';
import { expectedDraw, type PreparedOutlook } from './prepare.ts';

/** Bright light and a long day, as a yardstick [umol/m2/s, h]: some 9 mol/m2 a day. @source assumed */
const AMPLE_LIGHT = { ppfd: 200, hours: 12 } as const;
/** Carbon dioxide, nitrogen and phosphorus of which no plant wants more [mol/m3]. @source assumed */
const AMPLE = { carbonDioxide: 1, nitrate: 5, phosphate: 1 } as const;
/** Warmth up to which cold counts as a lack [degC], at which rates of the library hold. @source derived */
const MILD = 20;
/** Gain beyond which no difference is made [1], and that below which nothing was short. @source assumed */
const [MOST_GAIN, LEAST_GAIN] = [100, 1.1];
/** Part of a stand by which crowding is judged: few enough to have all the room. */
const FEW = 0.01;

const GROUPS = {
  submerged: { pool: 'submergedPlants', kept: 'keptBySubmergedPlants', light: 'lightOnPlants' },
  floating: { pool: 'floatingPlants', kept: 'keptByFloatingPlants', light: 'lightOnFloatingPlants' },
  emersed: { pool: 'emersedPlants', kept: 'keptByEmersedPlants', light: 'lightOnEmersedPlants' },
} as const satisfies Record<RootedInWater, Record<'pool' | 'kept' | 'light', VariableId>>;

/** What keeps plants that feed from the water from growing. */
export type PlantLimit =
  | 'too little light'
  | 'too little carbon dioxide'
  | 'too little nitrogen'
  | 'too little phosphate'
  | 'too little nitrogen and phosphate'
  | 'cold or heat'
  | 'crowding';

/** How much of each a plant would have gained had it alone been ample: logarithms of the factors [1], >= 0. */
export type PlantGains = ReadonlyMap<PlantLimit, number>;

function processOf(group: RootedInWater, world: World): RunningProcess {
  const { parameters } = world.draw;
  const setting = { index: (id: VariableId): number => V[id] };
  if (group === 'submerged')
    return submergedPlants.prepare(checkedParameters(submergedPlants, parameters), setting);
  if (group === 'floating')
    return floatingPlants.prepare(checkedParameters(floatingPlants, parameters), setting);
  return emersedPlants.prepare(checkedParameters(emersedPlants, parameters), setting);
}

/** Growth of the few, per stand [1/s times the stand], with some values changed. */
function growthReader(process: RunningProcess): (values: Float64Array) => number {
  const rates = new Float64Array(process.reactions.length);
  const growing = process.reactions.flatMap(({ name }, at) => (name.startsWith('growth of') ? [at] : []));
  return (values) => {
    process.evaluate(values, rates, 0);
    return growing.reduce((sum, at) => sum + rates[at]!, 0);
  };
}

const gain = (better: number, now: number): number =>
  better > now ? log(Math.min(MOST_GAIN, now > 0 ? better / now : MOST_GAIN)) : 0;

function nutrientLimit(nitrogen: number, phosphate: number, both: number): PlantLimit {
  if (nitrogen > 0.5 * both) return 'too little nitrogen';
  return phosphate > 0.5 * both ? 'too little phosphate' : 'too little nitrogen and phosphate';
}

/** Reader of what keeps a group of plants back in a state of the water. */
export interface PlantLimitReader {
  /**
   * @param row of a book, whose states at the block's end are taken
   * @param temperature of the water [degC]
   */
  gains(row: Float64Array, shape: BookShape, temperature: number): PlantGains;
}

type Change = (state: Float64Array) => void;

/** What is made ample, one at a time, in a state of a water of some volume [m3]. */
function ampleIn(volume: number, light: VariableId) {
  const enough =
    (id: 'nitrate' | 'phosphate'): Change =>
    (state) => {
      state[V[id]] = AMPLE[id] * volume;
    };
  const [nitrogen, phosphate] = [enough('nitrate'), enough('phosphate')];
  return {
    nothing() {},
    light(state) {
      state[V[light]] = AMPLE_LIGHT.ppfd;
    },
    carbonDioxide(state) {
      const all = AMPLE.carbonDioxide * volume;
      state[V.carbonDioxide] = AMPLE.carbonDioxide;
      state[V.dissolvedInorganicCarbon] = Math.max(state[V.dissolvedInorganicCarbon]!, all);
    },
    nitrogen,
    phosphate,
    nutrients(state) {
      nitrogen(state);
      phosphate(state);
    },
    warmth(state) {
      state[V.waterTemperature] = MILD;
    },
  } satisfies Record<string, Change>;
}

/**
 * Returns the reader of what keeps plants of a group from growing: the model's own growth in a state of the run, lamps
 * and night as planned, beside that with one thing at a time made ample. What gains most was shortest.
 * @param group plants under, on or rooted in the water
 * @return logarithms of growth with the one ample over growth as it was [1]; none where nothing gains a tenth
 * @validity by medians of the parameters, the state at the end of a day, and without shade of plants on land
 * @source derived: ratios of the process' own rates
 */
export function plantLimitReader({ plan, setting }: PreparedOutlook, group: RootedInWater): PlantLimitReader {
  const world = createWorld(setting, expectedDraw(plan));
  const growth = growthReader(processOf(group, world));
  const { pool, kept, light } = GROUPS[group];
  const spare = new Float64Array(VARIABLE_IDS.length);
  const segments = setting.segments.filter(({ ppfd }) => ppfd > 0);
  const litHours = segments.reduce((sum, { from, to }) => sum + to - from, 0);

  /** States of the water under each light of a day; none without plants, water or light. */
  const litStates = (row: Float64Array, shape: BookShape, temperature: number): Float64Array[] => {
    const { values } = world;
    for (let i = 0; i < STATE_IDS.length; i += 1) values[i] = row[shape.stateOffset + i]!;
    world.volume = row[shape.volumeOffset]!;
    if (!(values[V[pool]]! > 0 && world.volume > 0)) return [];
    setConstantDrivers(world);
    setWaterDrivers(world, temperature);
    return segments.map(({ ppfd }) => {
      values[V.lightAtSurface] = ppfd;
      world.system.derive(values);
      return values.slice();
    });
  };
  /** Mean growth of a day as lit, with some of its values changed. */
  const dayWith = (lit: readonly Float64Array[], change: Change): number =>
    lit.reduce((sum, state, k) => {
      spare.set(state);
      change(spare);
      const { from, to } = segments[k]!;
      return sum + (growth(spare) * (to - from)) / 24;
    }, 0);
  const thin: Change = (state) => {
    state[V[pool]] = FEW * state[V[pool]]!;
    state[V[kept]] = FEW * state[V[kept]]!;
  };

  return {
    gains(row, shape, temperature) {
      const lit = litStates(row, shape, temperature);
      if (lit.length === 0) return new Map();
      const ample = ampleIn(world.volume, light);
      const grown = (change: Change): number =>
        dayWith(lit, (state) => {
          thin(state);
          change(state);
        });
      const now = grown(ample.nothing);
      const gainBy = (change: Change): number => gain(grown(change), now);
      const nutrients = gainBy(ample.nutrients);
      const all: [PlantLimit, number][] = [
        ['too little light', gain((grown(ample.light) * AMPLE_LIGHT.hours) / litHours, now)],
        ['too little carbon dioxide', gainBy(ample.carbonDioxide)],
        [nutrientLimit(gainBy(ample.nitrogen), gainBy(ample.phosphate), nutrients), nutrients],
        ['cold or heat', gainBy(ample.warmth)],
        ['crowding', gain(now / FEW, dayWith(lit, ample.nothing))],
      ];
      return new Map(all.filter(([, each]) => each > log(LEAST_GAIN)));
    },
  };
}

/**
 * Splits what a group's own growth took from its cover by what kept it back, in proportion to the gains.
 * @param totals contributions by term [mol C], in which the group's own goes by `own`; changed in place
 * @param gains summed over runs and blocks
 * @source derived
 */
export function splitByLimits(
  totals: Map<string, number>,
  own: string,
  gains: ReadonlyMap<PlantLimit, number>,
): void {
  const amount = totals.get(own) ?? 0;
  const sum = [...gains.values()].reduce((total, each) => total + each, 0);
  if (!(amount < 0 && sum > 0)) return;
  totals.delete(own);
  for (const [limit, each] of gains) totals.set(limit, (totals.get(limit) ?? 0) + (amount * each) / sum);
}
