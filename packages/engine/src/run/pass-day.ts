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
