import { type Point, polyline } from '../../scene/path.ts';
import { element, group, hundredth, type SceneNode } from '../../scene/scene.ts';
import { textAt } from '../../type/text.ts';
import { anchorsOf } from '../anchors.ts';
import type { SectionFrame } from '../frame.ts';
import { subjectsOf } from '../subjects.ts';
import { arrangeLabels, type PlacedLabel } from './arrange.ts';
import { drawLabel } from './label-block.ts';

/** Labels in the right margin with their leaders, or plate letters where the drawing stands alone. */
export function naming(frame: SectionFrame): SceneNode {
  return frame.labels ? labelsWithLeaders(frame) : plateLetters(frame);
}

function labelsWithLeaders(frame: SectionFrame): SceneNode {
  const { palette, layout, plan, day } = frame;
  const { labels, left } = arrangeLabels(frame, anchorsOf(frame, subjectsOf(plan, day)));
  const lowest = labels.reduce((bottom, { top, block }) => Math.max(bottom, top + block.height), 0);
  const more = `and ${left} more`;
  return group({ 'data-part': 'labels' }, [
    group(
      { fill: 'none' },
      labels.map((label) => leader(frame, label)),
    ),
    ...labels.map((label) => drawLabel(label.block, { x: label.left, top: label.top }, palette)),
    left > 0
      ? textAt(layout.labelColumn.left, lowest + 14, more, {
          size: 12,
          fill: palette.softInk,
          face: 'italic',
        })
      : undefined,
  ]);
}

function leader({ palette }: SectionFrame, { leader: corners, block }: PlacedLabel): SceneNode {
  const d = chamfered(corners, 3);
  const [start] = corners;
  const stroke = block.subject.alarm ? palette.vermilion : palette.ink;
  return group({ 'data-leader': block.subject.key }, [
    element('path', { d, stroke: palette.paper, 'stroke-width': 3, 'stroke-opacity': 0.6 }),
    element('path', { d, stroke, 'stroke-width': 0.75, 'stroke-opacity': 0.85 }),
    start
      ? element('circle', {
          cx: start[0],
          cy: start[1],
          r: 2,
          fill: stroke,
          stroke: palette.paper,
          'stroke-width': 0.8,
        })
      : undefined,
  ]);
}

/** A line with its corners cut off at `cut` pixels. */
function chamfered(corners: readonly Point[], cut: number): string {
  const points = corners.flatMap((corner, index): Point[] => {
    const [before, after] = [corners[index - 1], corners[index + 1]];
    if (!before || !after) return [corner];
    return [towards(corner, before, cut), towards(corner, after, cut)];
  });
  return polyline(points);
}

function towards(from: Point, to: Point, distance: number): Point {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const share = length === 0 ? 0 : Math.min(0.5, distance / length);
  return [hundredth(from[0] + (to[0] - from[0]) * share), hundredth(from[1] + (to[1] - from[1]) * share)];
}

/** Italic letters beside what they stand for, explained by the legend. */
function plateLetters(frame: SectionFrame): SceneNode {
  const { palette, plan, day, layout } = frame;
  const letters = anchorsOf(frame, subjectsOf(plan, day)).map(({ subject, x, height, way }) => {
    const [px, py] = frame.at(x, height);
    const ink = subject.alarm ? palette.vermilion : palette.ink;
    const left = Math.min(layout.inside.right - 7, Math.max(layout.inside.left + 6, px));
    const y = way === 'base' ? py - 8 : py - 13;
    return group({ 'data-subject': subject.key }, [
      element('circle', { cx: px, cy: py, r: 1.5, fill: ink }),
      textAt(left, y + 3, subject.letter, {
        size: 14,
        face: 'italic',
        fill: ink,
        anchor: 'middle',
        halo: palette.paper,
        haloWidth: 3.4,
      }),
    ]);
  });
  return group({ 'data-part': 'letters' }, letters);
}
