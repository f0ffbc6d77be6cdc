import type { Layer, Plan, Zone } from '../plan/plan.ts';
import { outlineArea } from './ground-surface.ts';
import { highestGround, lowestGround } from './plan-zones.ts';

/** A layer of a zone as far as it lies under a water level. */
export interface WetLayer {
  readonly layer: Layer;
  /** Bulk volume, pores included [m3]. */
  readonly volume: number;
  /** Mean area over which it lies, in plan view [m2]. */
  readonly area: number;
}

/** Integral from 0 to `height` of the part of a zone whose ground reaches that high [m]. */
function groundBelow(zone: Zone, height: number): number {
  const low = lowestGround(zone);
  const high = highestGround(zone);
  if (height <= low) return height;
  const top = Math.min(height, high);
  const slope = high - low;
  return low + (slope > 0 ? (top - low) * (1 - (top - low) / (2 * slope)) : 0);
}

/**
 * The layers of a plan that lie under its water level, with their bulk volumes.
 * V = area (G(top) - G(bottom)), G the integral of the share of the ground that reaches a height.
 * @param level of the water above the base [m]
 * @validity ground that rises evenly from its lowest to its highest place; exact for two straight ends
 * @source derived
 */
export function wetLayers({ box, zones }: Pick<Plan, 'box' | 'zones'>, level: number): WetLayer[] {
  return zones.flatMap((zone) => {
    const base = zone.outline ? outlineArea(zone.outline) : (zone.to - zone.from) * box.width;
    let bottom = 0;
    return zone.layers.flatMap((layer, k) => {
      const end = k === zone.layers.length - 1 ? Number.POSITIVE_INFINITY : bottom + layer.thickness;
      const from = bottom;
      bottom = end;
      const top = Math.min(end, level);
      if (top <= from) return [];
      const volume = base * (groundBelow(zone, top) - groundBelow(zone, from));
      const reach = Math.min(top, highestGround(zone)) - from;
      return volume > 0 ? [{ layer, volume, area: volume / reach }] : [];
    });
  });
}
