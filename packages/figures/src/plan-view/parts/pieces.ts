import type { HardscapePiece } from '@shoreglass/engine';
import { type Point, smoothLine } from '../../scene/path.ts';
import { element, group, type SceneNode } from '../../scene/scene.ts';
import { strayed, washOf } from '../../section/shapes.ts';
import type { PlanFrame } from '../frame.ts';

/** Wood and stone from above, each as wide as it is thick. */
export function pieces(frame: PlanFrame): SceneNode {
  return group(
    { 'data-part': 'pieces', 'clip-path': frame.url('glass') },
    frame.plan.hardscape.filter(({ course }) => course.length > 0).map((piece) => pieceNode(frame, piece)),
  );
}

function pieceNode(frame: PlanFrame, piece: HardscapePiece): SceneNode {
  const { palette } = frame;
  const seed = frame.seed(piece.id);
  const outline = strayed(footprint(frame, piece.course), seed, 0.9);
  const body = smoothLine(outline, true);
  const isWood = piece.kind === 'wood';
  return group({ 'data-piece': piece.id }, [
    element('path', { d: body, fill: palette.paper }),
    washOf({ points: outline, fill: isWood ? palette.wood : palette.stone, opacity: 0.82, seed, bleed: 0.8 }),
    isWood ? grain(frame, piece.course) : undefined,
    element('path', { d: body, fill: 'none', stroke: palette.ink, 'stroke-width': 1.1 }),
  ]);
}

/** Distance of a point of a course from the front pane [m]: the middle of the width where the file says nothing. */
export function acrossOf(point: HardscapePiece['course'][number], width: number): number {
  return point[3] ?? width / 2;
}

const STEPS = 5;

function footprint(frame: PlanFrame, course: HardscapePiece['course']): Point[] {
  const spine = densified(frame, course);
  const [first, last] = [spine[0], spine[spine.length - 1]];
  if (!first || !last) return [];
  const headings = spine.map((_, index) => {
    const [before, after] = [spine[Math.max(0, index - 1)] ?? first, spine[index + 1] ?? last];
    const [dx, dy] = [after.x - before.x, after.y - before.y];
    const length = Math.hypot(dx, dy);
    return length > 1e-9 ? ([dx / length, dy / length] as const) : ([1, 0] as const);
  });
  const side = (hand: 1 | -1) =>
    spine.map(({ x, y, half }, index): Point => {
      const [ax, ay] = headings[index] ?? [1, 0];
      return frame.at(x - hand * half * ay, y + hand * half * ax);
    });
  const end = ({ x, y, half }: Knot, [ax, ay]: readonly [number, number], way: 1 | -1): Point =>
    frame.at(x + way * half * 0.7 * ax, y + way * half * 0.7 * ay);
  return [
    end(first, headings[0] ?? [1, 0], -1),
    ...side(1),
    end(last, headings[headings.length - 1] ?? [1, 0], 1),
    ...side(-1).reverse(),
  ];
}

interface Knot {
  readonly x: number;
  readonly y: number;
  readonly half: number;
}

function densified(frame: PlanFrame, course: HardscapePiece['course']): Knot[] {
  const { width } = frame.plan.box;
  const knots = course.map((point) => ({ x: point[0], y: acrossOf(point, width), half: point[2] / 2 }));
  return knots.flatMap((to, index) => {
    const from = knots[index - 1];
    if (!from) return [to];
    return Array.from({ length: STEPS }, (_, step) => {
      const share = (step + 1) / STEPS;
      return {
        x: from.x + (to.x - from.x) * share,
        y: from.y + (to.y - from.y) * share,
        half: from.half + (to.half - from.half) * share,
      };
    });
  });
}

function grain(frame: PlanFrame, course: HardscapePiece['course']): SceneNode {
  const spine = densified(frame, course);
  const line = (offset: number) => smoothLine(spine.map(({ x, y, half }) => frame.at(x, y + offset * half)));
  return element('path', {
    d: line(-0.35) + line(0.3),
    fill: 'none',
    stroke: frame.palette.soilDeep,
    'stroke-width': 0.7,
    'stroke-opacity': 0.7,
    'stroke-dasharray': '12 5',
  });
}
