import { element, group, type SceneNode } from '../scene/scene.ts';
import { groundBuildUp } from '../section/layer-bodies.ts';
import { materialLook } from '../section/materials.ts';
import type { Spot } from './clip.ts';
import { pathOf } from './outline-path.ts';
import type { Side } from './projection.ts';
import type { SolidFrame } from './solid-frame.ts';
import { mixed } from './tint.ts';

/** Layers and water as they show through the panes on the near sides. */
export function nearSides(frame: SolidFrame): SceneNode {
  const sides = (['back', 'left', 'right', 'front'] as const).filter((side) => frame.projection.sees[side]);
  return group(
    { 'data-part': 'sides' },
    sides.flatMap((side) => sideNodes(frame, side)),
  );
}

/** A corner of the ground on a pane, and the zone it belongs to. */
interface Foot {
  readonly x: number;
  readonly y: number;
  readonly ground: number;
  readonly zone: number;
}

function sideNodes(frame: SolidFrame, side: Side): SceneNode[] {
  const feet = feetOf(frame, side);
  return [...zoneRuns(feet).flatMap((run) => layerNodes(frame, run)), waterNode(frame, feet)];
}

function feetOf({ blocks }: SolidFrame, side: Side): Foot[] {
  const { columns, rows, x, y } = blocks;
  if (side === 'front' || side === 'back') {
    const row = side === 'front' ? 0 : rows - 1;
    const back = side === 'front' ? 0 : 1;
    return Array.from({ length: columns }).flatMap((_, column): Foot[] =>
      ([0, 1] as const).map((right) => ({
        x: x[column + right] ?? 0,
        y: y[row + back] ?? 0,
        ground: blocks.cornerOf(column, row, right, back),
        zone: blocks.zoneOf(column, row),
      })),
    );
  }
  const column = side === 'left' ? 0 : columns - 1;
  const right = side === 'left' ? 0 : 1;
  return Array.from({ length: rows }).flatMap((_, row): Foot[] =>
    ([0, 1] as const).map((back) => ({
      x: x[column + right] ?? 0,
      y: y[row + back] ?? 0,
      ground: blocks.cornerOf(column, row, right, back),
      zone: blocks.zoneOf(column, row),
    })),
  );
}

function zoneRuns(feet: readonly Foot[]): Foot[][] {
  const runs: Foot[][] = [];
  for (const foot of feet) {
    const last = runs.at(-1);
    if (last?.[0]?.zone === foot.zone) last.push(foot);
    else runs.push([foot]);
  }
  return runs;
}

function layerNodes(frame: SolidFrame, feet: readonly Foot[]): SceneNode[] {
  const zone = frame.plan.zones[feet[0]?.zone ?? -1];
  if (!zone) return [];
  const layers = groundBuildUp(zone);
  let base = 0;
  return layers.flatMap((layer, index) => {
    const [low, high] = [
      base,
      index === layers.length - 1 ? Number.POSITIVE_INFINITY : base + layer.thickness,
    ];
    base = high;
    const upper = feet.map(({ x, y, ground }): Spot => [x, y, Math.min(high, ground)]);
    const lower = feet.map(({ x, y, ground }): Spot => [x, y, Math.min(low, ground)]);
    if (upper.every((spot, at) => spot[2] - (lower[at]?.[2] ?? 0) < 1e-4)) return [];
    const { palette } = frame;
    const look = materialLook(layer);
    const d = pathOf(frame, [...upper, ...lower.reverse()]);
    const fill = mixed(palette.paper, palette[look.wash], Math.min(1, look.opacity));
    return [
      element('path', { d, fill, stroke: palette.ink, 'stroke-width': 0.6, 'stroke-opacity': 0.6 }),
      ...(look.pattern === 'void'
        ? []
        : [element('path', { d, fill: frame.url(`pattern-${look.pattern}`) })]),
    ];
  });
}

/** Open water and the water in the pores behind one pane. */
function waterNode(frame: SolidFrame, feet: readonly Foot[]): SceneNode {
  const { level } = frame.plan.water;
  const { palette } = frame;
  const open = feet.map(({ x, y, ground }): Spot => [x, y, Math.min(level, ground)]);
  const surface = feet.map(({ x, y }): Spot => [x, y, level]);
  const floor = feet.map(({ x, y }): Spot => [x, y, 0]);
  return group({}, [
    element('path', {
      d: pathOf(frame, [...open, ...[...floor].reverse()]),
      fill: palette.waterDeep,
      'fill-opacity': 0.2,
    }),
    element('path', {
      d: pathOf(frame, [...surface, ...[...open].reverse()]),
      fill: palette.waterDeep,
      'fill-opacity': 0.5,
    }),
  ]);
}
