import type { HardscapePiece } from '@shoreglass/engine';
import { noiseFrom } from '../../noise/noise.ts';
import { type Point, polyline, smoothLine } from '../../scene/path.ts';
import { element, group, type SceneNode } from '../../scene/scene.ts';
import type { SectionFrame } from '../frame.ts';
import { strayed, washOf } from '../shapes.ts';

interface Spine {
  readonly at: Point;
  /** Unit normal, to the left of the course. */
  readonly normal: Point;
  readonly half: number;
}

const STEPS_PER_SEGMENT = 7;

/** Branches along their courses: two washes, an ink outline of changing weight, grain, and a cut end. */
export function wood(frame: SectionFrame): SceneNode | undefined {
  const pieces = frame.plan.hardscape.filter((piece) => piece.kind === 'wood' && piece.course.length >= 2);
  if (pieces.length === 0) return undefined;
  const forks = pieces.filter((piece) => growsFrom(piece, pieces));
  const stems = pieces.filter((piece) => !forks.includes(piece));
  return group({ 'data-part': 'wood', 'clip-path': frame.url('above-ground') }, [
    ...forks.map((piece) => branch(frame, piece, false)),
    ...stems.map((piece) => branch(frame, piece, true)),
  ]);
}

/** Everything above the ground surface, so that what is sunk into the ground does not show. */
export function aboveGroundDefinition(frame: SectionFrame): SceneNode {
  const { left, right, top } = frame.layout.inside;
  const surface = frame.ground.samples.map((x) => frame.at(x, frame.ground.heightAt(x)));
  const outline: Point[] = [...surface, [right, top], [left, top]];
  return element(
    'clipPath',
    { id: frame.id('above-ground') },
    element('path', { d: polyline(outline, true) }),
  );
}

/** Whether the piece starts inside another one: a fork, drawn behind the stem it grows from. */
function growsFrom(piece: HardscapePiece, pieces: readonly HardscapePiece[]): boolean {
  const [start] = piece.course;
  if (!start) return false;
  return pieces.some(
    (other) =>
      other !== piece &&
      other.course.some((to, index) => {
        const from = other.course[index - 1];
        return from !== undefined && distanceToLine(start, from, to) < Math.max(from[2], to[2]) / 2;
      }),
  );
}

/** Distance of a point from the straight between two others [m]. */
function distanceToLine(point: CoursePoint, from: CoursePoint, to: CoursePoint): number {
  const [dx, dz] = [to[0] - from[0], to[1] - from[1]];
  const squared = dx * dx + dz * dz;
  const along = squared === 0 ? 0 : ((point[0] - from[0]) * dx + (point[1] - from[1]) * dz) / squared;
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(point[0] - from[0] - share * dx, point[1] - from[1] - share * dz);
}

function branch(frame: SectionFrame, piece: HardscapePiece, stem: boolean): SceneNode {
  const { palette } = frame;
  const seed = frame.seed(piece.id);
  const spine = stem ? spineOf(frame, piece.course) : slimBase(spineOf(frame, piece.course));
  const left = strayed(side(spine, 1), `${seed}/left`, 1.1);
  const right = strayed(side(spine, -1), `${seed}/right`, 1.1);
  const outline = [...left, ...[...right].reverse()];
  const shade = [...side(spine, -0.15), ...[...right].reverse()];
  const body = smoothLine(outline, true);
  const ink = { fill: 'none', stroke: palette.ink, 'stroke-linecap': 'round' };
  return group({ 'data-piece': piece.id }, [
    element('path', { d: body, fill: palette.paper }),
    washOf({ points: outline, fill: palette.wood, opacity: 0.85, seed, bleed: 0.9 }),
    element('path', { d: smoothLine(shade, true), fill: palette.soilDeep, 'fill-opacity': 0.24 }),
    ...grain(frame, spine, seed),
    element('path', { ...ink, d: smoothLine(left), 'stroke-width': 0.8 }),
    element('path', { ...ink, d: smoothLine(right), 'stroke-width': 1.3 }),
    stem ? cutEnd(frame, spine[0]) : undefined,
    tip(frame, left, right),
    element('path', {
      d: body,
      fill: palette.waterDeep,
      'fill-opacity': 0.42,
      'clip-path': frame.url('under-water'),
    }),
  ]);
}

/** Points along a course with their normals, smooth between the given ones. */
function spineOf(frame: SectionFrame, course: HardscapePiece['course']): Spine[] {
  const samples: { at: Point; half: number }[] = [];
  for (let segment = 0; segment < course.length - 1; segment++) {
    const last = segment === course.length - 2;
    for (let step = 0; step < STEPS_PER_SEGMENT + (last ? 1 : 0); step++) {
      const [x, z, thickness] = courseAt(course, segment, step / STEPS_PER_SEGMENT);
      samples.push({ at: frame.at(x, z), half: Math.max(0.8, (thickness * frame.pixelsPerMetre) / 2) });
    }
  }
  return samples.map(({ at, half }, index) => {
    const before = samples[Math.max(0, index - 1)]?.at ?? at;
    const after = samples[Math.min(samples.length - 1, index + 1)]?.at ?? at;
    const [dx, dy] = [after[0] - before[0], after[1] - before[1]];
    const length = Math.hypot(dx, dy) || 1;
    return { at, half, normal: [dy / length, -dx / length] };
  });
}

/** A fork starts slim, so that its end stays inside the stem. */
function slimBase(spine: readonly Spine[]): Spine[] {
  return spine.map((knot, index) => ({ ...knot, half: knot.half * Math.min(1, 0.35 + 0.11 * index) }));
}

type CoursePoint = readonly [x: number, z: number, thickness: number, y?: number];

function courseAt(course: readonly CoursePoint[], segment: number, t: number): [number, number, number] {
  const at = (index: number) => course[Math.min(course.length - 1, Math.max(0, index))] as CoursePoint;
  const [a, b, c, d] = [at(segment - 1), at(segment), at(segment + 1), at(segment + 2)];
  const spline = (k: 0 | 1) =>
    0.5 *
    (2 * b[k] +
      (c[k] - a[k]) * t +
      (2 * a[k] - 5 * b[k] + 4 * c[k] - d[k]) * t * t +
      (3 * b[k] - a[k] - 3 * c[k] + d[k]) * t * t * t);
  return [spline(0), spline(1), b[2] + (c[2] - b[2]) * t];
}

function side(spine: readonly Spine[], share: number): Point[] {
  return spine.map(({ at, normal, half }) => [
    at[0] + normal[0] * half * share,
    at[1] + normal[1] * half * share,
  ]);
}

/** Broken lines that follow the course; fewer on thin branches. */
function grain(frame: SectionFrame, spine: readonly Spine[], seed: string): SceneNode[] {
  const noise = noiseFrom(`${seed}/grain`);
  const widest = spine.reduce((most, { half }) => Math.max(most, half), 0);
  const lines = Math.min(5, Math.floor(widest / 2.6));
  return Array.from({ length: lines }, (_, index) => {
    const share = -0.72 + (1.44 * (index + 0.5)) / lines;
    const start = Math.floor(noise() * spine.length * 0.2);
    const end = Math.ceil(spine.length * (0.55 + 0.4 * noise()));
    const points = strayed(side(spine, share).slice(start, end), `${seed}/grain/${index}`, 1);
    return element('path', {
      d: smoothLine(points),
      fill: 'none',
      stroke: frame.palette.soilDeep,
      'stroke-width': 0.7,
      'stroke-opacity': 0.75,
      'stroke-dasharray': `${Math.round(10 + 16 * noise())} ${Math.round(3 + 5 * noise())} ${Math.round(4 + 6 * noise())} 4`,
    });
  });
}

function cutEnd(frame: SectionFrame, end: Spine | undefined): SceneNode | undefined {
  if (!end || end.half < 3) return undefined;
  const angle = (Math.atan2(end.normal[1], end.normal[0]) * 180) / Math.PI;
  const rings = [1, 0.55].map((share) =>
    element('ellipse', {
      cx: 0,
      cy: 0,
      rx: end.half * share,
      ry: end.half * 0.34 * share,
      fill: share === 1 ? frame.palette.litter : 'none',
      'fill-opacity': 0.55,
      stroke: frame.palette.ink,
      'stroke-width': share === 1 ? 0.9 : 0.5,
    }),
  );
  const place = `translate(${end.at[0].toFixed(2)} ${end.at[1].toFixed(2)}) rotate(${angle.toFixed(1)})`;
  return group({ transform: place }, rings);
}

function tip(frame: SectionFrame, left: readonly Point[], right: readonly Point[]): SceneNode | undefined {
  const [a, b] = [left[left.length - 1], right[right.length - 1]];
  if (!a || !b) return undefined;
  return element('path', { d: smoothLine([a, b]), stroke: frame.palette.ink, 'stroke-width': 0.9 });
}
