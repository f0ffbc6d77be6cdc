import { WATER_DENSITY } from '../climate/moisture-pools.ts';
import { fieldGrid } from '../geometry/field-grid.ts';
import type { Shore } from '../life/drowning.ts';
import type { Plan } from '../plan/plan.ts';
import { escapeFigures } from '../shape/escapes.ts';
import type { World } from './world.ts';

/**
 * Part of the cover through which an animal can leave [0..1]: what is open and not meshed.
 * @source derived; mesh is taken to hold every animal that leaves by itself
 */
export function openCoverOf({ box }: Pick<Plan, 'box'>): number {
  return box.coverMesh ? 0 : box.coverOpenFraction;
}

/** Shore that a piece which stands out of the water is worth as a way out [m]. @source assumed */
const PIECE = 0.1;

/**
 * Where water and land meet in a plan: length of the shore [m], part of it that leads out [0..1].
 * @param plan that can be drawn; the level is the planned one
 * @source derived from `escapeFigures`; each piece that stands out counts as a decimetre of gentle shore
 */
export function shoreOf(plan: Plan): Shore {
  const { shoreline, climbable, pieces } = escapeFigures(plan, fieldGrid(plan));
  const out = climbable + PIECE * pieces.length;
  return {
    length: shoreline,
    wayOut: shoreline > 0 ? Math.min(1, out / shoreline) : 0,
    hasPerch: pieces.length > 0,
  };
}

/** The shore where somebody lives who could drown; nothing to reckon where nobody does. `derived`. */
export function shoreFor(plan: Plan): Shore | undefined {
  return plan.populations.some(({ traits }) => traits.priors.shareInWater.median < 1)
    ? shoreOf(plan)
    : undefined;
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
