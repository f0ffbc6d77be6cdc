import { applyCare } from '../care/apply-care.ts';
import type { SingleCare } from '../plan/care.ts';
import type { ElementId } from '../variables/elements.ts';
import { type Book, createBook } from './book.ts';
import { closureOf } from './closure.ts';
import { passCycle } from './cycle-day.ts';
import { createEatenReader } from './eaten.ts';
import { fill } from './fill.ts';
import { bringMistSalts, passDay } from './pass-day.ts';
import { createRecorder, type Recorder } from './recorder.ts';
import type { RunSetting } from './setting.ts';
import { carryNutrients } from './soil-water.ts';
import { createWorld, type Draw, STATE_COUNT, setWaterDrivers, type World } from './world.ts';

export type ClosureId = Exclude<ElementId, 'charge'> | 'alkalinity';

export interface RunRecord {
  /** By position in `setting.seriesIds`, one value a day. */
  readonly series: readonly Float64Array[];
  readonly bookRows: Float64Array;
  /** States when the run began, filled and stocked, before any care [mol], in the order of the variables. */
  readonly start: Float64Array;
  readonly closure: Readonly<Record<ClosureId, number>>;
}

const BALANCED = [
  'nitrogen',
  'phosphorus',
  'carbon',
  'oxygen',
  'calcium',
  'magnesium',
  'sodium',
  'potassium',
  'chloride',
  'sulfur',
  'copper',
] as const;

interface WaterLedger {
  brought: number;
  lost: number;
}

/** Runs the climate through a day; returns hourly water temperatures and books the water it moved. */
function climateDay(world: World, day: number, hourly: Float64Array, tools: Tools): void {
  const { climate } = world;
  const { book, recorder, ledger } = tools;
  let misted = 0;
  let drawn = 0;
  let drained = 0;
  for (let hour = 0; hour < 24; hour += 1) {
    climate.step(day * 24 + hour, world.volume);
    world.volume += climate.poolChange;
    ledger.brought += climate.misted;
    misted += climate.misted;
    ledger.lost += climate.lostToRoom;
    book.water('evaporation', -climate.evaporated);
    book.water('dripping back and mist', climate.returnedToPool);
    drawn += climate.wicked;
    drained += climate.drained;
    book.water('drawn up by the ground', -climate.wicked);
    hourly[hour] = climate.state.waterTemperature;
    recorder.hour(world);
  }
  bringMistSalts(world, book, misted);
  carryNutrients(world, book, { drawn, drained });
}

interface Tools {
  readonly book: Book;
  readonly recorder: Recorder;
  readonly ledger: WaterLedger;
}

function careDay(world: World, due: readonly SingleCare[], { book, recorder, ledger }: Tools): void {
  for (const care of due) {
    const before = world.volume;
    applyCare(world, book, care);
    if (care.kind !== 'top-off') continue;
    recorder.toppedOff(world.volume - before);
    ledger.brought += world.volume - before;
  }
}

/**
 * Runs one enclosure for the days of its setting: care, climate, cycle and life, day by day.
 * The same setting and draw give the same bits everywhere.
 * A pool that dries out is lived through: those who live in it die of it (`left dry`).
 * @throws RangeError when a parameter is out of range.
 * @source derived
 */
export function run(setting: RunSetting, draw: Draw): RunRecord {
  const world = createWorld(setting, draw);
  fill(world);
  const start = world.values.slice();
  const startWater = world.volume + world.climate.storedWater();
  const book = createBook(
    setting.days,
    world.system.reactions.length,
    world.life.populations.length,
    world.landPlants?.stands.length,
  );
  const recorder = createRecorder(setting);
  const tools: Tools = { book, recorder, ledger: { brought: 0, lost: 0 } };
  const hourly = new Float64Array(24);
  const eaten = createEatenReader(world.system.reactions);
  const cycleTools = { book, recorder, eaten };

  for (let day = 0; day < setting.days; day += 1) {
    careDay(world, setting.care[day]!, tools);
    climateDay(world, day, hourly, tools);
    setWaterDrivers(world, hourly[0]!);
    passCycle(world, day, hourly, cycleTools);
    const conditions = recorder.conditions(world);
    world.life.step(world.values, eaten.read(book.extents()), conditions);
    world.woodMould?.pass(world.values, conditions.air);
    world.land.pass(world.values, conditions.air);
    world.landPlants?.pass(world.values, conditions.air);
    passDay(world, book.extents());
    recorder.endDay(world, day);
    book.endDay(day, world);
  }

  const { brought, lost } = tools.ledger;
  const water = world.volume + world.climate.storedWater() - startWater - brought + lost;
  const closureOfElement = closureOf(start, book, world);
  const closure = Object.fromEntries(BALANCED.map((element) => [element, closureOfElement(element)]));
  return {
    series: recorder.series,
    bookRows: book.rows,
    start: start.slice(0, STATE_COUNT),
    closure: {
      ...closure,
      alkalinity: closureOfElement('charge'),
      water: water / (startWater + brought + lost),
    } as Record<ClosureId, number>,
  };
}
