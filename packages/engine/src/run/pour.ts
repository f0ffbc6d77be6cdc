import { DISSOLVED_IDS, type WaterComposition } from '../plan/water-composition.ts';
import { VARIABLE_INDEX as V } from '../variables/variables.ts';
import type { World } from './world.ts';

/**
 * Pours water of a composition into the pool: adds its dissolved amounts and, in balance with the room's air at
 * `temperature`, its inorganic carbon and oxygen. Does not change the world's volume.
 * @param volume [m3], >= 0
 * @param temperature of the water poured [degC]
 * @source derived: amount = concentration x volume; the gases as `pouredGases`
 */
export function pour(world: World, water: WaterComposition, volume: number, temperature: number): void {
  const { values, setting } = world;
  for (const id of DISSOLVED_IDS) values[V[id]] = values[V[id]]! + water[id] * volume;
  if (water.copper) values[V.copper] = values[V.copper]! + water.copper * volume;
  const gases = setting.poured.at(water, temperature);
  values[V.dissolvedInorganicCarbon] =
    values[V.dissolvedInorganicCarbon]! + gases.dissolvedInorganicCarbon * volume;
  values[V.oxygen] = values[V.oxygen]! + gases.oxygen * volume;
}

const IN_THE_WATER = [
  ...DISSOLVED_IDS,
  'copper',
  'labileOrganicCarbon',
  'dissolvedInorganicCarbon',
  'oxygen',
  'suspendedAlgae',
] as const;

/** Takes a share [0..1] of everything dissolved or afloat out of the pool. Does not change the world's volume. `derived`. */
export function drain({ values }: World, share: number): void {
  for (const id of IN_THE_WATER) values[V[id]] = values[V[id]]! * (1 - share);
}
