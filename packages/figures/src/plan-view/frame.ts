import type { Palette } from '../palette/palette.ts';
import type { LengthUnit } from '../scale/length-unit.ts';
import type { Point } from '../scene/path.ts';
import { type PlanViewLayout, planViewLayout } from './plan-view-layout.ts';
import type { GroundField, PlanViewOptions, ShapePlan } from './plan-view-options.ts';

/** Everything a part of the plan view needs, and the map from metres to pixels. */
export interface PlanFrame {
  readonly plan: ShapePlan;
  readonly field: GroundField;
  readonly palette: Palette;
  readonly unit: LengthUnit;
  readonly grid: boolean;
  readonly layout: PlanViewLayout;
  readonly pixelsPerMetre: number;
  /** Pixel of a length from the left pane, and of one from the front pane [m]. */
  x(metres: number): number;
  y(metres: number): number;
  at(x: number, y: number): Point;
  id(name: string): string;
  seed(name: string): string;
  url(name: string): string;
}

export function planFrame({ plan, field, size, palette, unit, grid = false }: PlanViewOptions): PlanFrame {
  const layout = planViewLayout(plan, size);
  const { inside, pixelsPerMetre } = layout;
  const x = (metres: number) => inside.left + metres * pixelsPerMetre;
  const y = (metres: number) => inside.bottom - metres * pixelsPerMetre;
  const prefix = `plan-${plan.id}-${palette.name}-${Math.round(size.width)}`.replaceAll(
    /[^A-Za-z0-9_-]/g,
    '_',
  );
  return {
    plan,
    field,
    palette,
    unit,
    grid,
    layout,
    pixelsPerMetre,
    x,
    y,
    at: (along, across) => [x(along), y(across)],
    id: (name) => `${prefix}-${name}`,
    seed: (name) => `${plan.id}/plan/${name}`,
    url: (name) => `url(#${prefix}-${name})`,
  };
}
