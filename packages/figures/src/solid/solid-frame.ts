import type { Palette } from '../palette/palette.ts';
import type { ShapePlan } from '../plan-view/plan-view-options.ts';
import { type Blocks, blocksOf } from './blocks.ts';
import { type Projection, projectionOf } from './projection.ts';
import type { SolidOptions } from './solid-options.ts';

export interface SolidFrame {
  readonly plan: ShapePlan;
  readonly palette: Palette;
  readonly projection: Projection;
  readonly blocks: Blocks;
  /** Order in which blocks are drawn, far ones first. */
  readonly columnsFarFirst: readonly number[];
  readonly rowsFarFirst: readonly number[];
  /** Whether one looks more along the width than along the length: rows are then drawn one after the other. */
  readonly alongWidth: boolean;
  id(name: string): string;
  url(name: string): string;
}

export function solidFrame(options: SolidOptions): SolidFrame {
  const { plan, palette, field, turn } = options;
  const projection = projectionOf(options);
  const blocks = blocksOf(field);
  const prefix = `solid-${plan.id}-${palette.name}`.replaceAll(/[^A-Za-z0-9_-]/g, '_');
  const { sees } = projection;
  const upwards = (count: number) => Array.from({ length: count }, (_, index) => index);
  const angle = (turn * Math.PI) / 180;
  return {
    plan,
    palette,
    projection,
    blocks,
    columnsFarFirst: sees.right ? upwards(blocks.columns) : upwards(blocks.columns).reverse(),
    rowsFarFirst: sees.front ? upwards(blocks.rows).reverse() : upwards(blocks.rows),
    alongWidth: Math.abs(Math.cos(angle)) >= Math.abs(Math.sin(angle)),
    id: (name) => `${prefix}-${name}`,
    url: (name) => `url(#${prefix}-${name})`,
  };
}
