import type { HardscapePiece } from '@shoreglass/engine';
import { acrossOf } from '../plan-view/parts/pieces.ts';
import { type Point, polyline } from '../scene/path.ts';
import { element, group, type SceneNode } from '../scene/scene.ts';
import type { SolidFrame } from './solid-frame.ts';

interface Knot {
  readonly x: number;
  readonly y: number;
  readonly z: number;
  readonly thick: number;
}

/** Steps of a course between two given points. */
const STEPS = 12;

/** What lies of the pieces over one band of blocks, on one side of the level. */
export function pieceParts(
  frame: SolidFrame,
  [column, row]: readonly [column: number, row: number],
  keep: 'above' | 'below',
): SceneNode[] {
  const { blocks, plan, alongWidth } = frame;
  const [edges, index] = alongWidth ? [blocks.y, row] : [blocks.x, column];
  const [from, to] = [edges[index] ?? 0, edges[index + 1] ?? 0];
  const within = (knot: Knot) => {
    const at = alongWidth ? knot.y : knot.x;
    return (
      at >= from - 1e-9 &&
      at < to &&
      (keep === 'above' ? knot.z >= plan.water.level : knot.z < plan.water.level)
    );
  };
  return plan.hardscape
    .filter(({ course }) => course.length > 0)
    .flatMap((piece) => runsOf(knotsOf(piece, plan.box.width), within).map((run) => limb(frame, piece, run)));
}

function knotsOf({ course }: HardscapePiece, width: number): Knot[] {
  const given = course.map((point) => ({
    x: point[0],
    y: acrossOf(point, width),
    z: point[1],
    thick: point[2],
  }));
  return given.flatMap((to, index) => {
    const from = given[index - 1];
    if (!from) return [to];
    return Array.from({ length: STEPS }, (_, step): Knot => {
      const share = (step + 1) / STEPS;
      const between = (key: keyof Knot) => from[key] + (to[key] - from[key]) * share;
      return { x: between('x'), y: between('y'), z: between('z'), thick: between('thick') };
    });
  });
}

/** Stretches whose knots all satisfy the test, each with one knot more at its ends, so that they meet. */
function runsOf(knots: readonly Knot[], test: (knot: Knot) => boolean): Knot[][] {
  const runs: Knot[][] = [];
  let open = false;
  knots.forEach((knot, index) => {
    if (test(knot)) {
      if (!open) runs.push(index > 0 ? [knots[index - 1] as Knot] : []);
      runs.at(-1)?.push(knot);
      open = true;
    } else open = false;
  });
  return runs;
}

function limb(frame: SolidFrame, piece: HardscapePiece, knots: readonly Knot[]): SceneNode {
  const { palette, projection } = frame;
  const isWood = piece.kind === 'wood';
  const middle = knots.map(({ x, y, z }) => projection.at(x, y, z));
  const mean = knots.reduce((sum, { thick }) => sum + thick, 0) / Math.max(1, knots.length);
  const wide = Math.max(2, mean * projection.pixelsPerMetre);
  if (middle.length < 2) {
    const [x, y] = middle[0] ?? [0, 0];
    return element('circle', {
      cx: x,
      cy: y,
      r: wide / 2,
      fill: palette.stone,
      stroke: palette.ink,
      'stroke-width': 1,
    });
  }
  const d = polyline(middle);
  const line = { fill: 'none', 'stroke-linecap': 'round', 'stroke-linejoin': 'round' };
  return group({ 'data-piece': piece.id }, [
    element('path', { ...line, d, stroke: isWood ? palette.wood : palette.stone, 'stroke-width': wide }),
    element('path', {
      ...line,
      d: polyline(aside(middle, wide / 2)) + polyline(aside(middle, -wide / 2)),
      stroke: palette.ink,
      'stroke-width': 0.9,
    }),
    isWood
      ? element('path', {
          ...line,
          d: polyline(aside(middle, wide * 0.16)),
          stroke: palette.soilDeep,
          'stroke-width': 0.6,
          'stroke-opacity': 0.7,
        })
      : undefined,
  ]);
}

/** A course shifted sideways in the drawing [px]. */
function aside(points: readonly Point[], by: number): Point[] {
  return points.map(([x, y], index) => {
    const [before, after] = [points[Math.max(0, index - 1)] ?? [x, y], points[index + 1] ?? [x, y]];
    const [dx, dy] = [after[0] - before[0], after[1] - before[1]];
    const length = Math.hypot(dx, dy) || 1;
    return [x - (by * dy) / length, y + (by * dx) / length];
  });
}
