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

/** The open circle of a count. */
export function countRing(cx: number, cy: number, palette: Palette): SceneNode {
  return element('circle', { cx, cy, r: 3.6, fill: palette.paper, stroke: palette.ink, 'stroke-width': 1.4 });
}

interface Entry {
  readonly text: string;
  readonly swatch: (x: number, y: number) => SceneNode;
  /** Width of the swatch [px]. */
  readonly room: number;
}

function entriesOf({ course, computed = [], palette }: LegendOptions): Entry[] {
  const line = (text: string, dash: string | undefined, ink: string): Entry => ({
    text,
    swatch: (x, y) =>
      element('path', {
        d: `M${x} ${y}h${SWATCH}`,
        stroke: ink,
        'stroke-width': 1.5,
        'stroke-dasharray': dash,
      }),
    room: SWATCH,
  });
  const wash: Entry = {
    text: '95 % of the curve',
    swatch: (x, y) => element('rect', { x, y: y - 5, width: SWATCH, height: 10, fill: palette.fanOuter }),
    room: SWATCH,
  };
  return [
    { text: 'counted', swatch: (x, y) => countRing(x + 6, y, palette), room: 12 },
    ...(course.length > 0 ? [line('curve through the counts', undefined, palette.ink), wash] : []),
    ...(computed.length > 1
      ? [line('computed, median', '6 4', palette.softInk), line('nine runs in ten', '1 4', palette.softInk)]
      : []),
  ];
}

/** What marks and lines mean, broken into lines where the width asks for it. */
export function countsLegend(options: LegendOptions) {
  const { width, palette } = options;
  const entries = entriesOf(options);
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
