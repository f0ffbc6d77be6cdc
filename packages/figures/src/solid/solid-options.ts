import type { Palette } from '../palette/palette.ts';
import type { GroundField, ShapePlan } from '../plan-view/plan-view-options.ts';
import type { Size } from '../scene/scene.ts';

export interface SolidOptions {
  readonly plan: ShapePlan;
  readonly field: GroundField;
  readonly size: Size;
  readonly palette: Palette;
  /** From where one looks: 0 from the front, 90 from the right pane, 180 from the back [degrees]. */
  readonly turn: number;
  /** How far from above: 0 level, 90 straight down [degrees]. */
  readonly tilt: number;
}
