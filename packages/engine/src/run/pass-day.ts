import { SECONDS_PER_DAY } from '../units/constants.ts';
import { VARIABLE_INDEX as V } from '../variables/variables.ts';
import type { Book } from './book.ts';
import { pour } from './pour.ts';
import type { World } from './world.ts';

/** Calcium carbonate that bodies of today's size carry [mol]. */
function shellTarget({ life, setting }: World): number {
  return setting.plan.populations.reduce(
    (sum, { shell = 0 }, index) => (shell > 0 ? sum + shell * life.carbon(index) : sum),
    0,
  );
}

/** Part of the shells that today's dead leave, over a day [1/s]; at most all. */
function shellLoss({ life, setting, values }: World): number {
  const shells = values[V.shellCarbonate]!;
  if (shells <= 0) return 0;
  let left = 0;
  for (const [index, { shell = 0 }] of setting.plan.populations.entries()) {
    if (shell > 0) left += shell * life.day(index).deadCarbon;
  }
  return Math.min(1, left / shells) / SECONDS_PER_DAY;
}

/**
 * What changes once a day beside the pools: which kinds of litter and feed are left, how long carbonate has lain, and
 * how much shell the bodies want.
 * @source derived
 */
export function passDay(world: World): void {
  const { values, kinds } = world;
  kinds.litter.settle(values[V.litterCarbon]!);
  kinds.feed.settle(values[V.feedCarbon]!);
  values[V.litterPace] = kinds.litter.pace();
  values[V.feedPace] = kinds.feed.pace();
  if (values[V.carbonateSolid]! + values[V.aragoniteSolid]! > 0) {
    values[V.carbonateAge] = values[V.carbonateAge]! + 1;
  }
  values[V.shellTarget] = shellTarget(world);
  values[V.shellLoss] = shellLoss(world);
}

/**
 * Lets animals that came or went bring or take their shells: the shells change as the target does.
 * @source derived
 */
export function bringShells(world: World): void {
  const { values } = world;
  const before = values[V.shellTarget]!;
  const after = shellTarget(world);
  values[V.shellTarget] = after;
  values[V.shellCarbonate] = Math.max(0, values[V.shellCarbonate]! + after - before);
}

/**
 * Adds what the mist that fell on open water today brought beside water; the climate has moved the water itself. Salts
 * that fall on land stay there.
 * @param misted volume sprayed today [m3]
 * @source derived: share of the open water in the base
 */
export function bringMistSalts(world: World, book: Book, misted: number): void {
  const { setting, values, climate } = world;
  const water = setting.plan.devices.mister?.water;
  if (!water || misted <= 0) return;
  const onWater = (misted * values[V.waterArea]!) / setting.geometry.baseArea;
  book.care(world, 'misting', () => pour(world, water, onWater, climate.state.airTemperature));
}
