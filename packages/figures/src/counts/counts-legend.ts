import type { Palette } from '../palette/palette.ts';
import { element, group, type SceneNode } from '../scene/scene.ts';
import { textAt } from '../type/text.ts';
import { textWidth } from '../type/text-width.ts';

const SIZE = 12;
const SWATCH = 22;
const LINE = 18;

interface LegendOptions {
  readonly course: readonly unknown[];
  readonly computed?: readonly unknown[];
  readonly width: number;
  readonly palette: Palette;
}

/** What marks and lines mean, broken into lines where the width asks for it. */
export function countsLegend({ course, computed = [], width, palette }: LegendOptions) {
  const stroke = (dash: string | undefined, ink: string) => (x: number, y: number) =>
    element('path', {
      d: `M${x} ${y}h${SWATCH}`,
      stroke: ink,
      'stroke-width': 1.5,
      'stroke-dasharray': dash,
    });
  const ring = (x: number, y: number) =>
    element('circle', {
      cx: x + 6,
      cy: y,
      r: 3.6,
      fill: palette.paper,
      stroke: palette.ink,
      'stroke-width': 1.4,
    });
  const wash = (x: number, y: number) =>
    element('rect', { x, y: y - 5, width: SWATCH, height: 10, fill: palette.fanOuter });
  const entries = [
    { text: 'counted', swatch: ring, room: 12 },
    ...(course.length > 0
      ? [
          { text: 'curve through the counts', swatch: stroke(undefined, palette.ink), room: SWATCH },
          { text: '95 % of the curve', swatch: wash, room: SWATCH },
        ]
      : []),
    ...(computed.length > 1
      ? [
          { text: 'computed, median', swatch: stroke('6 4', palette.softInk), room: SWATCH },
          { text: 'nine runs in ten', swatch: stroke('1 4', palette.softInk), room: SWATCH },
        ]
      : []),
  ];
  let [x, line] = [0, 0];
  const places = entries.map(({ text, room }) => {
    const wide = room + 6 + textWidth(text, SIZE) + 16;
    if (x > 0 && x + wide > width) [x, line] = [0, line + 1];
    const place = { x, line };
    x += wide;
    return place;
  });
  return {
    lines: line + 1,
    at: (left: number, top: number): SceneNode =>
      group(
        { 'data-part': 'legend' },
        entries.flatMap(({ text, swatch, room }, i) => {
          const { x: away, line: row } = places[i]!;
          const y = top + LINE * row;
          return [
            swatch(left + away, y - 4),
            textAt(left + away + room + 6, y, text, { size: SIZE, fill: palette.softInk }),
          ];
        }),
      ),
  };
}
