import { type FieldGrid, fieldGrid } from '../geometry/field-grid.ts';
import { displacedVolume, geometryOf } from '../geometry/geometry.ts';
import { FIELD_ROWS } from '../geometry/height-field.ts';
import { lowestOpening } from '../geometry/lowest-opening.ts';
import { isStraightAcross } from '../geometry/profile.ts';
import { escapeFigures } from './escapes.ts';
import { gapFigures } from './gaps.ts';
import { layerVolumes, type ShapeGround } from './shape-ground.ts';
import type { FieldFigures, GeometryFigures } from './shape-sheet.ts';

/** Ground counted as margin: from this far below the water to this far above it [m]. @source assumed */
const MARGIN = { below: 0.03, above: 0.05 } as const;
const CURVE_POINTS = 40;

function fieldFigures({ plan, geometry }: ShapeGround, level: number, grid: FieldGrid): FieldFigures {
  const volume = geometry.volumeAt(level);
  const coarse = isStraightAcross(plan) ? volume : geometryOf(plan, FIELD_ROWS / 2).volumeAt(level);
  return { ...grid, convergence: volume > 0 ? Math.abs(coarse / volume - 1) : 0 };
}

function curveOf({ geometry }: ShapeGround, top: number): GeometryFigures['curve'] {
  const { floor } = geometry;
  const levels = Array.from(
    { length: CURVE_POINTS + 1 },
    (_, i) => floor + ((top - floor) * i) / CURVE_POINTS,
  );
  return {
    levels,
    volumes: levels.map((z) => geometry.volumeAt(z)),
    areas: levels.map((z) => geometry.openAreaAt(z)),
  };
}

/**
 * Returns volumes, areas and heights of a plan [m, m2, m3].
 * @param ground of a plan that can be drawn
 * @source derived
 */
export function geometryFigures(ground: ShapeGround): GeometryFigures {
  const { plan, geometry, field } = ground;
  const { level } = plan.water;
  const opening = lowestOpening(plan.box);
  const grid = fieldGrid(plan);
  let wallArea = 0;
  for (const { length, low, high } of field.faces)
    wallArea += length * Math.max(0, high - Math.max(low, level));
  let soilVolume = 0;
  for (const [i, zone] of plan.zones.entries())
    for (const { layer, volume, underWater } of layerVolumes(zone, ground.patches[i]!, level))
      if (layer.kind === 'substrate' || layer.kind === 'litter') soilVolume += volume - underWater;
  return {
    level,
    waterVolume: geometry.volumeAt(level),
    openVolume: geometry.openVolumeAt(level),
    poreVolume: geometry.groundWaterVolumeAt(level),
    capacity: geometry.volumeAt(opening.height),
    surfaceArea: geometry.openAreaAt(level),
    landArea: geometry.landAreaAt(level),
    wallArea,
    marginArea: geometry.landAreaAt(level - MARGIN.below) - geometry.landAreaAt(level + MARGIN.above),
    submergedArea: geometry.submergedAreaAt(level),
    filmArea: geometry.filmSurfaceAt(level),
    groundVolume: geometry.groundVolume,
    soilVolume,
    displaced: displacedVolume(plan, geometry, level),
    airVolume: geometry.airVolumeAt(level),
    lowestOpening: opening,
    freeboard: opening.height - level,
    curve: curveOf(ground, opening.height),
    field: fieldFigures(ground, level, grid),
    escapes: escapeFigures(plan, grid),
    gaps: gapFigures(plan),
  };
}
