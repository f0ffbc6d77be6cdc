import { type PhosphateSorptionParameters, phosphateSorption } from '../cycle/phosphate-sorption.ts';
import { wetLayers } from '../geometry/wet-layers.ts';
import { exp, log } from '../numerics/elementary.ts';
import type { PhosphateBinder, Plan } from '../plan/plan.ts';
import { checkedParameters, type ParameterTable } from '../process/compose.ts';
import { VARIABLE_INDEX as V } from '../variables/variables.ts';

/** Ground under water that binds phosphate. */
interface PlacedBinder {
  readonly binder: PhosphateBinder;
  /** Thickness under water and area in plan view [m, m2]. */
  readonly thickness: number;
  readonly area: number;
}

/**
 * The ground of a plan that binds phosphate of its water: of each zone the uppermost layer under water, since what lies
 * below another is reached by diffusion alone.
 * @source derived
 */
export function phosphateBindersOf({
  box,
  zones,
  water,
}: Pick<Plan, 'box' | 'zones' | 'water'>): PlacedBinder[] {
  return zones.flatMap((zone) => {
    const top = wetLayers({ box, zones: [zone] }, water.level).at(-1);
    const binder = top?.layer.phosphateBinder;
    return top && binder && binder.sites > 0
      ? [{ binder, thickness: top.volume / top.area, area: top.area }]
      : [];
  });
}

/** What a plan's ground can bind, its area, the mean half and what it holds when new. */
interface Binding {
  readonly sites: number;
  readonly held: number;
  readonly half: number;
  readonly area: number;
}

/** All ground as one, to a depth [m]; the half in logarithms, by sites. `derived`. */
function bindingTo(depth: number, placed: readonly PlacedBinder[], factor: number): Binding {
  let [sites, held, area, halves] = [0, 0, 0, 0];
  for (const { binder, thickness, area: bed } of placed) {
    const own = factor * binder.sites * bed * Math.min(thickness, depth);
    sites += own;
    held += own * binder.held;
    halves += own * log(binder.half);
    area += bed;
  }
  return { sites, held, area, half: sites > 0 ? exp(halves / sites) : 0 };
}

/**
 * Puts what the ground can bind, and what it holds when new, into the values.
 * @param parameters drawn of all processes
 * @param factor sites over those stated [1]
 * @source derived
 */
export function placePhosphateBinders(
  values: Float64Array,
  placed: readonly PlacedBinder[],
  parameters: ParameterTable,
  factor: number,
): void {
  if (placed.length === 0) return;
  const { mixedDepth } = checkedParameters<PhosphateSorptionParameters>(phosphateSorption, parameters);
  const { sites, held, half, area } = bindingTo(mixedDepth / 100, placed, factor);
  values[V.phosphateSites] = sites;
  values[V.phosphateHalf] = half;
  values[V.phosphateBedArea] = area;
  values[V.boundPhosphate] = held;
}
