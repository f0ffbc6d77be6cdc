import type { DayState } from '../day/day-state.ts';
import type { Palette } from '../palette/palette.ts';
import type { LengthUnit } from '../scale/length-unit.ts';
import type { Point } from '../scene/path.ts';
import { remembered } from '../scene/remembered.ts';
import { cutPlan } from './cut-zones.ts';
import { type Ground, groundOf } from './ground.ts';
import { type SectionLayout, sectionLayout } from './layout.ts';
import type { SectionOptions, SectionPlan } from './section-plan.ts';

/** Everything a part of the section drawing needs: the numbers of the day and the map from metres to pixels. */
export interface SectionFrame {
  readonly plan: SectionPlan;
  readonly day: DayState;
  readonly palette: Palette;
  readonly labels: boolean;
  readonly layerNames: boolean;
  readonly unit: LengthUnit;
  readonly grid: boolean;
  readonly layout: SectionLayout;
  readonly pixelsPerMetre: number;
  /** Pixel of a length from the left pane [m] and of a height above the base [m]. */
  x(metres: number): number;
  y(metres: number): number;
  at(x: number, height: number): Point;
  readonly ground: Ground;
  /** Height of the water surface on the day [m]. */
  readonly level: number;
  /** Element id that is unique to this drawing, and a seed for its irregularities. */
  id(name: string): string;
  seed(name: string): string;
  /** What the drawing depends on besides plan and day. */
  readonly key: string;
  /** `url(#…)` of an id. */
  url(name: string): string;
}

const GROUND_SPACING_PIXELS = 5;

const groundOnce = remembered<SectionPlan, Ground>();

export function sectionFrame(options: SectionOptions): SectionFrame {
  const { day, size, palette, labels, layerNames = labels, unit = 'cm', grid = false } = options;
  const plan = cutPlan(options.plan);
  const layout = sectionLayout(plan, size, labels);
  const { inside, pixelsPerMetre } = layout;
  const x = (metres: number) => inside.left + metres * pixelsPerMetre;
  const y = (metres: number) => inside.bottom - metres * pixelsPerMetre;
  const prefix = `${plan.id}-${palette.name}-${Math.round(size.width)}${labels ? 'l' : ''}`.replaceAll(
    /[^A-Za-z0-9_-]/g,
    '_',
  );
  const key = `${prefix} ${size.width} ${size.height} ${unit} ${grid}`;
  const levelNow = day.waterLevel === undefined ? plan.water.level : day.waterLevel.median / 100;
  return {
    plan,
    day,
    palette,
    labels,
    layerNames,
    unit,
    grid,
    layout,
    pixelsPerMetre,
    x,
    y,
    at: (metres, height) => [x(metres), y(height)],
    ground: groundOnce(plan, key, () =>
      groundOf(plan.zones, plan.box.length, GROUND_SPACING_PIXELS / pixelsPerMetre),
    ),
    level: Math.min(plan.box.height, Math.max(0, levelNow)),
    key,
    id: (name) => `${prefix}-${name}`,
    seed: (name) => `${plan.id}/${name}`,
    url: (name) => `url(#${prefix}-${name})`,
  };
}
