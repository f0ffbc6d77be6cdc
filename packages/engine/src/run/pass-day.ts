import { carcassPace } from '../cycle/carcass-breakdown.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { VARIABLE_INDEX as V } from '../variables/variables.ts';
import type { Book } from './book.ts';
import { pour } from './pour.ts';
import type { World } from './world.ts';

/** Paces of dead bodies are told apart by this part of the pace of small ones, so that few kinds stand beside each other. */
const PACE_STEPS = 20;

/** Calcium carbonate that bodies of today's size carry [mol]. */
function shellTarget({ life, setting }: World): number {
  return setting.plan.populations.reduce(
    (sum, { shell = 0 }, index) => (shell > 0 ? sum + shell * life.carbon(index) : sum),
    0,
  );
}

/** Sets what today's dead leave of the shells, at most all over a day, and how much of that is aragonite. */
function shedShells({ life, setting, values }: World): void {
  const shells = values[V.shellCarbonate]!;
  if (shells <= 0) {
    values[V.shellLoss] = 0;
    return;
  }
  let [left, ofSnails, worn, wornBySnails] = [0, 0, 0, 0];
  for (const [index, { shell = 0, shellMineral }] of setting.plan.populations.entries()) {
    if (shell === 0) continue;
    const dead = shell * life.day(index).deadCarbon;
    const carried = shell * life.carbon(index);
    left += dead;
    worn += carried;
    if (shellMineral !== 'aragonite') continue;
    ofSnails += dead;
    wornBySnails += carried;
  }
  values[V.shellLoss] = Math.min(1, left / shells) / SECONDS_PER_DAY;
  if (left > 0) values[V.shellAragonite] = ofSnails / left;
  else if (worn > 0) values[V.shellAragonite] = wornBySnails / worn;
}

/** Puts the bodies of those that died today among the dead in the water, and lets what is there fall apart. */
function layOutTheDead({ life, setting, values, kinds }: World): void {
  const populations = setting.plan.populations.length;
  if (populations === 0) return;
  let fresh = 0;
  for (let p = 0; p < populations; p += 1) fresh += life.deadInWater(p);
  kinds.dead.settle(Math.max(0, values[V.carcassCarbon]! - fresh));
  for (let p = 0; p < populations; p += 1) {
    const pace = Math.round(PACE_STEPS * carcassPace(life.deadBody(p))) / PACE_STEPS;
    kinds.dead.add(life.deadInWater(p), pace);
  }
  values[V.carcassPace] = kinds.dead.pace();
}

/**
 * What changes once a day beside the pools: which kinds of litter, feed, dead plants and dead animals are left, how long
 * carbonate has lain, how much shell the bodies want, and the leaves that give off water.
 * @param extents of the reactions so far; none before the first day
 * @source derived
 */
export function passDay(world: World, extents?: Float64Array): void {
  const { values, kinds } = world;
  kinds.litter.settle(values[V.litterCarbon]!);
  kinds.feed.settle(values[V.feedCarbon]!);
  values[V.litterPace] = kinds.litter.pace();
  values[V.feedPace] = kinds.feed.pace();
  world.life.taste(kinds.feed.meaty());
  if (values[V.carbonateSolid]! + values[V.aragoniteSolid]! > 0) {
    values[V.carbonateAge] = values[V.carbonateAge]! + 1;
  }
  values[V.shellTarget] = shellTarget(world);
  shedShells(world);
  layOutTheDead(world);
  if (extents) world.remains?.pass(values, extents);
  world.climate.setLeaves(
    world.landPlants?.leafConductance() ?? 0,
    world.wetLeaves * values[V.emersedPlants]!,
  );
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
