import { WATER_DENSITY } from '../climate/moisture-pools.ts';
import type { Plan } from '../plan/plan.ts';
import type { World } from './world.ts';

/**
 * Part of the cover through which an animal can leave [0..1]: what is open and not meshed.
 * @source derived; mesh is taken to hold every animal that leaves by itself
 */
export function openCoverOf({ box }: Pick<Plan, 'box'>): number {
  return box.coverMesh ? 0 : box.coverOpenFraction;
}

/**
 * Moisture of the upper ground over what it can hold [0..1].
 * @source derived: moisture of the climate's land over store times land surface
 */
export function groundWetness({ climate, draw, setting, volume }: World): number {
  const { geometry } = setting;
  const area = geometry.landAreaAt(geometry.levelAt(volume));
  const capacity = (draw.parameters.climate?.landStore ?? 0) * area;
  return capacity > 0 ? Math.min(1, (climate.state.landWater * WATER_DENSITY) / capacity) : 1;
}
