import type { Patch } from '../geometry/height-field.ts';
import { highestGround, lowestGround } from '../geometry/plan-zones.ts';
import type { Zone } from '../plan/plan.ts';
import { layerVolumes, meanBelow, type ShapeGround, shareBelow } from './shape-ground.ts';
import type { Drainage, ZoneFigures } from './shape-sheet.ts';

/** Where the library tells nothing of a layer's pores [m]. @source assumed: fine ground, and coarse layers */
const USUAL_RISE = { fine: 0.15, coarse: 0.02 } as const;
/** Ground whose uppermost part stays wet by less than this is soggy [m]. @source assumed */
const SKIN = 0.01;

const isFine = ({ kind }: Zone['layers'][number]): boolean => kind === 'substrate' || kind === 'litter';

/**
 * Returns the height to which the pores of a zone's layers lift water [m]: from layer to layer, each no higher than its
 * own rise above the water, until one cannot lift it through.
 * @param zone with its layers
 * @param level of the water [m]
 * @source derived: heath-1982 for the rises
 */
export function wetFront(zone: Pick<Zone, 'layers'>, level: number): number {
  let bottom = 0;
  let front = level;
  for (const [i, layer] of zone.layers.entries()) {
    const top = i === zone.layers.length - 1 ? Number.POSITIVE_INFINITY : bottom + layer.thickness;
    if (top > level) {
      if (front < bottom) return front;
      const rise = layer.capillaryRise ?? (isFine(layer) ? USUAL_RISE.fine : USUAL_RISE.coarse);
      front = Math.max(front, Math.min(top, level + rise));
    }
    bottom = top;
  }
  return front;
}

/** Underside of the uppermost run of fine layers [m]. */
function soilBottom({ layers }: Zone): number {
  let bottom = 0;
  let found = 0;
  for (const [i, layer] of layers.entries()) {
    if (isFine(layer) && (i === 0 || !isFine(layers[i - 1]!))) found = bottom;
    bottom += layer.thickness;
  }
  return found;
}

function drainageOf(zone: Zone, ground: number, front: number, level: number): Drainage {
  if (ground <= level) return 'under water';
  if (ground - front < SKIN) return 'soggy';
  return front > Math.max(level, soilBottom(zone)) + 1e-6 ? 'moist' : 'drains';
}

function waterOver(zone: Zone, patches: readonly Patch[], level: number) {
  let waterArea = 0;
  let volume = 0;
  let lowest = level;
  for (const patch of patches) {
    waterArea += patch.area * shareBelow(patch, level);
    volume += patch.area * meanBelow(patch, level);
    lowest = Math.min(lowest, patch.low);
  }
  const { roof } = zone;
  const slab = roof ? waterArea * Math.max(0, Math.min(level, roof.top) - roof.bottom) : 0;
  return { waterArea, volume: Math.max(0, volume - slab), deepest: level - Math.max(0, lowest) };
}

function zoneFigures(ground: ShapeGround, zone: Zone, index: number): ZoneFigures {
  const { level } = ground.plan.water;
  const patches = ground.patches[index]!;
  let area = 0;
  let dry = 0;
  let dryGround = 0;
  let steepest = 0;
  for (const patch of patches) {
    area += patch.area;
    const slope = patch.slopedArea / patch.area;
    steepest = Math.max(steepest, Math.sqrt(Math.max(0, slope * slope - 1)));
    const land = patch.area * (1 - shareBelow(patch, level));
    dry += land;
    dryGround += land * Math.max(level, 0.5 * (patch.low + patch.high));
  }
  const { waterArea, volume, deepest } = waterOver(zone, patches, level);
  const meanDry = dry > 0 ? dryGround / dry : level;
  const front = wetFront(zone, level);
  const soil = layerVolumes(zone, patches, level).filter(({ layer }) => isFine(layer));
  return {
    id: zone.id,
    name: zone.name,
    kind: zone.kind,
    area,
    waterArea,
    lowest: lowestGround(zone),
    highest: highestGround(zone),
    steepest,
    waterVolume: volume,
    meanDepth: waterArea > 0 ? volume / waterArea : 0,
    greatestDepth: waterArea > 0 ? deepest : 0,
    soilVolume: soil.reduce((sum, one) => sum + one.volume, 0),
    wetFront: front,
    drainHeight: Math.max(0, meanDry - front),
    drainage: dry < 0.02 * area ? 'under water' : drainageOf(zone, meanDry, front, level),
  };
}

/**
 * Returns areas, depths, soil and drainage of every zone, in the order of the plan.
 * @param ground of a plan that can be drawn
 * @validity hardscape is not taken off the water of a zone
 * @source derived
 */
export function allZoneFigures(ground: ShapeGround): ZoneFigures[] {
  return ground.plan.zones.map((zone, index) => zoneFigures(ground, zone, index));
}
