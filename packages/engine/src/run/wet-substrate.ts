import { expm1 } from '../numerics/elementary.ts';
import type { Plan, Zone } from '../plan/plan.ts';

/** Depth over which substrate turns from aired to airless [m]. @source assumed: 1 to 4 cm in sand and gravel */
const AIRLESS_DEPTH = 0.02;

/** Thickness of substrate that lies under the water level, at the middle of a zone [m]. */
function wetThickness({ groundStart, groundEnd, layers }: Zone, level: number): number {
  const top = (groundStart + groundEnd) / 2;
  let bottom = 0;
  let wet = 0;
  for (const [k, { kind, thickness }] of layers.entries()) {
    const end = k === layers.length - 1 ? top : Math.min(top, bottom + thickness);
    if (kind === 'substrate') wet += Math.max(0, Math.min(end, level) - bottom);
    bottom = end;
  }
  return wet;
}

/**
 * Wet substrate deep enough to run short of oxygen [m2]: plan area of each zone times 1 - e^(-d/2 cm), d the thickness
 * of its substrate under the water level the plan keeps.
 * @source assumed: the share of a bed without oxygen grows with its depth
 */
export function wetSubstrate({ box, zones, water }: Pick<Plan, 'box' | 'zones' | 'water'>): number {
  return zones.reduce((area, zone) => {
    const wet = wetThickness(zone, water.level);
    return area - (zone.to - zone.from) * box.width * expm1(-wet / AIRLESS_DEPTH);
  }, 0);
}
