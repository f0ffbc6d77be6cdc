import type { HardscapePiece } from '@shoreglass/engine';
import { noiseFrom } from '../../noise/noise.ts';
import { type Point, smoothLine } from '../../scene/path.ts';
import { element, group, type SceneNode } from '../../scene/scene.ts';
import type { SectionFrame } from '../frame.ts';
import { strayed, washOf } from '../shapes.ts';

/** Stones that have a course: a rounded body with an ink outline and a few strokes on the shaded side. */
export function stones(frame: SectionFrame): SceneNode | undefined {
  const pieces = frame.plan.hardscape.filter((piece) => piece.kind === 'stone' && piece.course.length > 0);
  if (pieces.length === 0) return undefined;
  return group(
    { 'data-part': 'stones', 'clip-path': frame.url('above-ground') },
    pieces.map((piece) => stone(frame, piece)),
  );
}

function stone(frame: SectionFrame, piece: HardscapePiece): SceneNode {
  const { palette } = frame;
  const seed = frame.seed(piece.id);
  const outline = strayed(stoneOutline(frame, piece.course), seed, 1.4);
  const body = smoothLine(outline, true);
  return group({ 'data-piece': piece.id }, [
    element('path', { d: body, fill: palette.paper }),
    washOf({ points: outline, fill: palette.stone, opacity: 0.8, seed, bleed: 0.8 }),
    ...shading(frame, outline, seed),
    element('path', {
      d: body,
      fill: palette.waterDeep,
      'fill-opacity': 0.3,
      'clip-path': frame.url('under-water'),
    }),
    element('path', { d: body, fill: 'none', stroke: palette.ink, 'stroke-width': 1.1 }),
  ]);
}

/** Both sides of the course, half its thickness away, with blunt ends; a single point becomes a round pebble. */
function stoneOutline(frame: SectionFrame, course: HardscapePiece['course']): Point[] {
  const [first] = course;
  if (!first) return [];
  if (course.length === 1) return pebble(frame, first);
  const dense = densified(course);
  const knots = dense.map(([x, z, thickness], index) => {
    const [before, after] = [dense[index - 1] ?? first, dense[index + 1] ?? dense[index] ?? first];
    const [dx, dz] = [after[0] - before[0], after[1] - before[1]];
    const length = Math.hypot(dx, dz) || 1;
    return { x, z, half: thickness / 2, along: [dx / length, dz / length] as const };
  });
  const side = (hand: 1 | -1) =>
    knots.map(({ x, z, half, along }) => frame.at(x - hand * half * along[1], z + hand * half * along[0]));
  const end = (index: number, way: 1 | -1) =>
    knots
      .slice(index, index === -1 ? undefined : index + 1)
      .map(({ x, z, half, along }) =>
        frame.at(x + way * half * 0.5 * along[0], z + way * half * 0.5 * along[1]),
      );
  return [...end(0, -1), ...side(1), ...end(-1, 1), ...side(-1).reverse()];
}

type CoursePoint = readonly [x: number, z: number, thickness: number, y?: number];

/** The course with points between the given ones, so that its sides stay straight when they are smoothed. */
function densified(course: readonly CoursePoint[]): CoursePoint[] {
  const steps = 5;
  return course.flatMap((to, index): CoursePoint[] => {
    const from = course[index - 1];
    if (!from) return [to];
    return Array.from({ length: steps }, (_, step) => {
      const share = (step + 1) / steps;
      const between = (axis: 0 | 1 | 2) => from[axis] + (to[axis] - from[axis]) * share;
      return [between(0), between(1), between(2)];
    });
  });
}

function pebble(frame: SectionFrame, [x, z, thickness]: CoursePoint): Point[] {
  return Array.from({ length: 8 }, (_, index) => {
    const angle = (index * Math.PI) / 4;
    return frame.at(x + thickness * 0.65 * Math.cos(angle), z + (thickness / 2) * Math.sin(angle));
  });
}

function shading(frame: SectionFrame, outline: readonly Point[], seed: string): SceneNode[] {
  const noise = noiseFrom(`${seed}/shade`);
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const length = Math.min(9, (right - left) * 0.2);
  return Array.from({ length: 6 }, () => {
    const x = left + (right - left) * (0.45 + 0.35 * noise());
    const y = top + (bottom - top) * (0.4 + 0.35 * noise());
    return element('path', {
      d: smoothLine([
        [x, y],
        [x + length, y - length * 0.35],
      ]),
      fill: 'none',
      stroke: frame.palette.ink,
      'stroke-width': 0.6,
      'stroke-opacity': 0.5,
    });
  });
}
