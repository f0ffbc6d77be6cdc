import { rulerMarks } from '../../scale/length-unit.ts';
import { element, group, type SceneNode } from '../../scene/scene.ts';
import { textAt } from '../../type/text.ts';
import type { SectionFrame } from '../frame.ts';

/** Rulers along the left pane and under the base, and lines across at their marks where a grid is wanted. */
export function rulers(frame: SectionFrame): SceneNode {
  const { palette, layout, plan, labels, unit } = frame;
  const { left, bottom } = layout.inside;
  const size = labels ? 12 : 11;
  const least = (labels ? 46 : 30) / frame.pixelsPerMetre;
  const heights = rulerMarks(plan.box.height, least, unit).marks;
  const lengths = rulerMarks(plan.box.length, least, unit).marks;
  const tick = (d: string) => element('path', { d, stroke: palette.softInk, 'stroke-width': 0.8 });
  const figure = (x: number, y: number, content: string, anchor: 'middle' | 'end') =>
    textAt(x, y, content, { size, fill: palette.softInk, anchor });
  return group({ 'data-part': 'rulers' }, [
    frame.grid ? gridLines(frame, { heights, lengths }) : undefined,
    figure(left - 9, bottom + 9 + size, unit, 'end'),
    ...heights.slice(1).flatMap(({ at, text }) => {
      const y = frame.y(at);
      return [tick(`M${left - 8} ${y}H${left - 3}`), figure(left - 11, y + size * 0.34, text, 'end')];
    }),
    ...lengths.flatMap(({ at, text }) => {
      const x = frame.x(at);
      return [tick(`M${x} ${bottom + 3}V${bottom + 8}`), figure(x, bottom + 9 + size, text, 'middle')];
    }),
  ]);
}

type Marks = readonly { readonly at: number }[];

function gridLines(frame: SectionFrame, { heights, lengths }: { heights: Marks; lengths: Marks }): SceneNode {
  const { left, right, top, bottom } = frame.layout.inside;
  const d = [
    ...heights.map(({ at }) => `M${left} ${frame.y(at)}H${right}`),
    ...lengths.map(({ at }) => `M${frame.x(at)} ${top}V${bottom}`),
  ].join('');
  return element('path', {
    d,
    fill: 'none',
    stroke: frame.palette.ink,
    'stroke-width': 0.5,
    'stroke-opacity': 0.16,
  });
}
