import { type Point, polyline } from '../scene/path.ts';
import { element, group, type SceneNode } from '../scene/scene.ts';
import { textAt } from '../type/text.ts';
import type { Side } from './projection.ts';
import type { SolidFrame } from './solid-frame.ts';

const SIDES: readonly Side[] = ['front', 'right', 'back', 'left'];

/** Corners of a side from left to right as seen from outside, at a height. */
function cornersOf(frame: SolidFrame, side: Side, z: number): [Point, Point] {
  const { length, width } = frame.plan.box;
  const { at } = frame.projection;
  const corners: Record<Side, [Point, Point]> = {
    front: [at(0, 0, z), at(length, 0, z)],
    right: [at(length, 0, z), at(length, width, z)],
    back: [at(length, width, z), at(0, width, z)],
    left: [at(0, width, z), at(0, 0, z)],
  };
  return corners[side];
}

function sidePath(frame: SolidFrame, side: Side): string {
  const [lowLeft, lowRight] = cornersOf(frame, side, 0);
  const [topLeft, topRight] = cornersOf(frame, side, frame.plan.box.height);
  return polyline([lowLeft, lowRight, topRight, topLeft], true);
}

/** The far panes and the base, behind everything. */
export function farBox(frame: SolidFrame): SceneNode {
  const { at } = frame.projection;
  const { length, width } = frame.plan.box;
  const base = polyline([at(0, 0, 0), at(length, 0, 0), at(length, width, 0), at(0, width, 0)], true);
  const far = SIDES.filter((side) => !frame.projection.sees[side]);
  return group(
    { 'data-part': 'far', stroke: frame.palette.ink, 'stroke-width': 0.8, 'stroke-opacity': 0.55 },
    [
      element('path', { d: base, fill: frame.palette.raised }),
      ...far.map((side) =>
        element('path', { d: sidePath(frame, side), fill: frame.palette.water, 'fill-opacity': 0.1 }),
      ),
    ],
  );
}

/** The near panes, the cover with its open part, and what hangs over it, in front of everything. */
export function nearBox(frame: SolidFrame): SceneNode {
  const { palette, projection } = frame;
  const { length, width, height, coverOpenFraction } = frame.plan.box;
  const near = SIDES.filter((side) => projection.sees[side]);
  const hinge = length * (1 - coverOpenFraction);
  const top = (from: number, to: number) =>
    polyline(
      [
        projection.at(from, 0, height),
        projection.at(to, 0, height),
        projection.at(to, width, height),
        projection.at(from, width, height),
      ],
      true,
    );
  return group({ 'data-part': 'near', fill: 'none', stroke: palette.ink, 'stroke-linejoin': 'round' }, [
    ...near.map((side) => element('path', { d: sidePath(frame, side), 'stroke-width': 1.5 })),
    hinge > 0
      ? element('path', { d: top(0, hinge), fill: palette.water, 'fill-opacity': 0.14, 'stroke-width': 1.1 })
      : undefined,
    coverOpenFraction > 0
      ? element('path', { d: top(hinge, length), 'stroke-width': 1, 'stroke-dasharray': '2 3' })
      : undefined,
    ...lamps(frame),
    ...near.filter((side) => side === 'front' || side === 'back').map((side) => sideName(frame, side)),
  ]);
}

const ABOVE_COVER = 0.05;

function lamps(frame: SolidFrame): SceneNode[] {
  const { box, devices } = frame.plan;
  const { at } = frame.projection;
  return devices.lamps.map(({ panel }, index) => {
    const {
      x = (box.length * (index + 0.5)) / devices.lamps.length,
      y = box.width / 2,
      z = box.height + ABOVE_COVER,
      length = (box.length * 0.6) / devices.lamps.length,
      breadth = 0.06,
    } = panel ?? {};
    const [left, right, front, back] = [x - length / 2, x + length / 2, y - breadth / 2, y + breadth / 2];
    const d = polyline(
      [at(left, front, z), at(right, front, z), at(right, back, z), at(left, back, z)],
      true,
    );
    return element('path', { d, fill: frame.palette.raised, 'stroke-width': 1.1 });
  });
}

function sideName(frame: SolidFrame, side: Side): SceneNode {
  const [[x1, y1], [x2, y2]] = cornersOf(frame, side, 0);
  return textAt((x1 + x2) / 2, (y1 + y2) / 2 + 15, side, {
    size: 12,
    face: 'italic',
    fill: frame.palette.softInk,
    anchor: 'middle',
    halo: frame.palette.paper,
  });
}
