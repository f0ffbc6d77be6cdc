import type { FieldFigures, Plan } from '@shoreglass/engine';
import type { Palette } from '../palette/palette.ts';
import type { LengthUnit } from '../scale/length-unit.ts';
import type { Size } from '../scene/scene.ts';

/** Heights of the ground on a grid in plan, row by row from the front pane, and the zone each cell belongs to. */
export type GroundField = Pick<
  FieldFigures,
  'columns' | 'rows' | 'cellLength' | 'cellWidth' | 'ground' | 'zone'
>;

/** What a drawing of the whole shape needs of a plan; a whole Plan fits. */
export interface ShapePlan extends Pick<Plan, 'id' | 'name' | 'box' | 'zones' | 'devices' | 'hardscape'> {
  readonly water: Pick<Plan['water'], 'level'>;
}

export interface PlanViewOptions {
  readonly plan: ShapePlan;
  readonly field: GroundField;
  readonly size: Size;
  readonly palette: Palette;
  readonly unit: LengthUnit;
  /** Lines across the drawing at the marks of the rulers. */
  readonly grid?: boolean;
}
