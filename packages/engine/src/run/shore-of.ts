import { fieldGrid } from '../geometry/field-grid.ts';
import type { Shore } from '../life/drowning.ts';
import type { Plan } from '../plan/plan.ts';
import { escapeFigures } from '../shape/escapes.ts';

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
