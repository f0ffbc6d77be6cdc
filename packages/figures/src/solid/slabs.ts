import type { Zone } from '@shoreglass/engine';
import { element, type SceneNode } from '../scene/scene.ts';
import { clipped, type Spot } from './clip.ts';
import { pathOf } from './outline-path.ts';
import type { SolidFrame } from './solid-frame.ts';
import { mixed } from './tint.ts';

type Block = readonly [column: number, row: number];

/** Slabs over caves in one band of blocks, on one side of the level: sides first, the upper face over them. */
export function slabParts(frame: SolidFrame, band: readonly Block[], keep: 'above' | 'below'): SceneNode[] {
  return band.flatMap(([column, row]) => {
    const zone = frame.plan.zones[frame.blocks.zoneOf(column, row)];
    return zone?.roof ? blockOf(frame, [column, row], { zone, roof: zone.roof, keep }) : [];
  });
}

interface Slab {
  readonly zone: Zone;
  readonly roof: NonNullable<Zone['roof']>;
  readonly keep: 'above' | 'below';
}

function blockOf(frame: SolidFrame, [column, row]: Block, { zone, roof, keep }: Slab): SceneNode[] {
  const { blocks, palette, plan } = frame;
  const [x0, x1] = [blocks.x[column] ?? 0, blocks.x[column + 1] ?? 0];
  const [y0, y1] = [blocks.y[row] ?? 0, blocks.y[row + 1] ?? 0];
  const upright = (from: readonly [number, number], to: readonly [number, number]): Spot[] => [
    [...from, roof.top],
    [...to, roof.top],
    [...to, roof.bottom],
    [...from, roof.bottom],
  ];
  const shown = edgesOf(frame, [column, row]).map((side): Spot[] => {
    if (side === 'front') return upright([x0, y0], [x1, y0]);
    if (side === 'back') return upright([x1, y1], [x0, y1]);
    return side === 'left' ? upright([x0, y1], [x0, y0]) : upright([x1, y0], [x1, y1]);
  });
  const top: Spot[] = [
    [x0, y0, roof.top],
    [x1, y0, roof.top],
    [x1, y1, roof.top],
    [x0, y1, roof.top],
  ];
  const lit = mixed(palette.paper, palette.stone, 0.9);
  const shaded = mixed(lit, palette.name === 'day' ? palette.soilDeep : palette.paper, 0.35);
  return [...shown.map((spots) => ({ spots, fill: shaded })), { spots: top, fill: lit }]
    .map(({ spots, fill }) => ({ spots: clipped(spots, plan.water.level, keep), fill }))
    .filter(({ spots }) => spots.length >= 3)
    .map(({ spots, fill }) =>
      element('path', {
        'data-slab': zone.id,
        d: pathOf(frame, spots),
        fill,
        stroke: fill,
        'stroke-width': 0.7,
        'stroke-linejoin': 'round',
      }),
    );
}

type Edge = 'front' | 'back' | 'left' | 'right';

/** Near sides on which the next block lies outside the cave. */
function edgesOf({ blocks, projection }: SolidFrame, [column, row]: Block): Edge[] {
  const zone = blocks.zoneOf(column, row);
  const beside: Readonly<Record<Edge, Block>> = {
    back: [column, row + 1],
    left: [column - 1, row],
    right: [column + 1, row],
    front: [column, row - 1],
  };
  return (['back', 'left', 'right', 'front'] as const).filter((edge) => {
    if (!projection.sees[edge]) return false;
    const [c, r] = beside[edge];
    return c < 0 || r < 0 || c >= blocks.columns || r >= blocks.rows || blocks.zoneOf(c, r) !== zone;
  });
}
