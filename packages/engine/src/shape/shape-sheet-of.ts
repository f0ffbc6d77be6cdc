import type { Plan } from '../plan/plan.ts';
import { shapeCautions } from './cautions.ts';
import { flowFigures } from './flow-figures.ts';
import { geometryFigures } from './geometry-figures.ts';
import { lightFigures } from './light-figures.ts';
import { massFigures } from './mass-figures.ts';
import { shapeGround } from './shape-ground.ts';
import { shapeRemarks } from './shape-remarks.ts';
import type { ShapeSheet } from './shape-sheet.ts';
import { structureFigures } from './structure-figures.ts';
import { allZoneFigures } from './zone-figures.ts';

/**
 * Returns everything a plan's shape tells before anything is bought: volumes, masses, glass, flow, light, cautions
 * (`ShapeSheet`, SI units).
 * @param plan that can be drawn, see `checkGeometry`
 * @throws RangeError when it cannot be drawn; the message names the place.
 * @source derived; docs/science
 */
export function shapeSheet(plan: Plan): ShapeSheet {
  const ground = shapeGround(plan);
  const geometry = geometryFigures(ground);
  const flow = flowFigures(ground);
  const figures = {
    geometry,
    zones: allZoneFigures(ground),
    masses: massFigures(ground),
    structure: structureFigures(ground),
    ...(flow ? { flow } : {}),
    light: lightFigures(ground, geometry.field),
  };
  return { ...figures, remarks: shapeRemarks(plan, figures), cautions: shapeCautions(plan) };
}
