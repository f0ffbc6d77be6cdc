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
    { 'data-part': 'stones' },
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

/** Upper and lower edge of the course, half its thickness away; a single point becomes a round pebble. */
function stoneOutline(frame: SectionFrame, course: HardscapePiece['course']): Point[] {
  const [first] = course;
  if (!first) return [];
  if (course.length === 1) return pebble(frame, first);
  const last = course[course.length - 1] ?? first;
  const upper = course.map(([x, z, thickness]) => frame.at(x, z + thickness / 2));
  const lower = course.map(([x, z, thickness]) => frame.at(x, z - thickness / 2)).reverse();
  return [
    frame.at(first[0] - first[2] * 0.3, first[1]),
    ...upper,
    frame.at(last[0] + last[2] * 0.3, last[1]),
    ...lower,
  ];
}

function pebble(frame: SectionFrame, [x, z, thickness]: readonly [number, number, number]): Point[] {
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
