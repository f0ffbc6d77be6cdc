import { type Geometry, geometryOf } from '../geometry/geometry.ts';
import { FIELD_ROWS, type HeightField, heightField, type Patch } from '../geometry/height-field.ts';
import { type Stratum, strataOf } from '../geometry/zone-section.ts';
import type { Plan, Zone } from '../plan/plan.ts';

/** What the parts of the sheet share: the plan's geometry, its height field, and the layers of each zone. */
export interface ShapeGround {
  readonly plan: Plan;
  readonly geometry: Geometry;
  readonly field: HeightField;
  /** Patches by position of their zone in the plan's list. */
  readonly patches: readonly (readonly Patch[])[];
}

/** @source derived */
export function shapeGround(plan: Plan): ShapeGround {
  const field = heightField(plan, FIELD_ROWS);
  const patches: Patch[][] = plan.zones.map(() => []);
  for (const patch of field.patches) if (patch.owner) patches[patch.owner.index]!.push(patch);
  return { plan, geometry: geometryOf(plan), field, patches };
}

/** Integral over an area whose ground lies evenly between `low` and `high` of how far it stays below `z` [m3 per m2]. */
export function meanBelow({ low, high }: Pick<Patch, 'low' | 'high'>, z: number): number {
  if (z <= low) return 0;
  if (z >= high) return z - 0.5 * (low + high);
  return ((z - low) * (z - low)) / (2 * (high - low));
}

/** Part of a patch whose ground lies below `z` [0..1]. */
export function shareBelow({ low, high }: Pick<Patch, 'low' | 'high'>, z: number): number {
  if (z <= low) return 0;
  return z >= high ? 1 : (z - low) / (high - low);
}

/** A layer of a zone with the bulk volume it takes, and of that below the water level [m3]. */
export interface LayerVolume {
  readonly layer: Zone['layers'][number];
  readonly stratum: Stratum;
  readonly volume: number;
  readonly underWater: number;
}

/** Bulk volume of ground in a patch up to height z: its mean height, not more than z. */
const meanUpTo = (patch: Patch, z: number): number => {
  const mean = 0.5 * (patch.low + patch.high);
  return z === Number.POSITIVE_INFINITY ? mean : z - meanBelow(patch, z);
};

/** Volumes of the layers of a zone. @source derived */
export function layerVolumes(zone: Zone, patches: readonly Patch[], level: number): LayerVolume[] {
  const strata = strataOf(zone);
  return zone.layers.map((layer, i) => {
    const stratum = strata[i]!;
    const between = (top: number): number => {
      if (top <= stratum.bottom) return 0;
      let total = 0;
      for (const patch of patches)
        total += patch.area * Math.max(0, meanUpTo(patch, top) - meanUpTo(patch, stratum.bottom));
      return total;
    };
    return {
      layer,
      stratum,
      volume: between(stratum.top),
      underWater: between(Math.min(stratum.top, level)),
    };
  });
}
