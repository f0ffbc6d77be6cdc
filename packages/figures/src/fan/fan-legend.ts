import type { Palette } from '../palette/palette.ts';
import { EXPECTED_DASH } from '../scale/fan.ts';
import { element, group, type SceneNode } from '../scene/scene.ts';
import { textAt } from '../type/text.ts';
import { textWidth } from '../type/text-width.ts';

const SIZE = 11.5;
const SWATCH = 20;

const GAP = 16;
/** From one row to the next [px]. */
export const LEGEND_ROW = 16;

interface Place {
  readonly x: number;
  /** Of the last row. */
  readonly y: number;
  readonly width: number;
  readonly palette: Palette;
  /** Whether runs are drawn beside the expected one. */
  readonly spread: boolean;
}

type Mark = 'median' | 'half' | 'nine' | 'expected';
interface Entry {
  readonly mark: Mark;
  readonly text: string;
}

const RUNS: readonly Entry[] = [
  { mark: 'median', text: 'median' },
  { mark: 'half', text: 'half of the runs' },
  { mark: 'nine', text: 'nine in ten' },
];
const EXPECTED: Entry = { mark: 'expected', text: 'expected run' };

const widthOf = ({ text }: Entry): number => SWATCH + 6 + textWidth(text, SIZE);

/** What is drawn, in as many rows as it takes. */
export function legendRows({ width, spread }: Pick<Place, 'width' | 'spread'>): Entry[][] {
  const rows: Entry[][] = [[]];
  let used = 0;
  for (const entry of [...(spread ? RUNS : []), EXPECTED]) {
    if (used > 0 && used + widthOf(entry) > width) {
      rows.push([]);
      used = 0;
    }
    rows[rows.length - 1]?.push(entry);
    used += widthOf(entry) + GAP;
  }
  return rows;
}

/** What the tones and lines that are drawn mean. */
export function fanLegend(place: Place): SceneNode {
  const rows = legendRows(place);
  return group(
    { 'data-part': 'legend' },
    rows.flatMap((row, at) => {
      let x = place.x;
      const y = place.y - (rows.length - 1 - at) * LEGEND_ROW;
      return row.flatMap((entry) => {
        const left = x;
        x += widthOf(entry) + GAP;
        const words = textAt(left + SWATCH + 6, y, entry.text, { size: SIZE, fill: place.palette.softInk });
        return [swatch(entry.mark, { left, middle: y - 4 }, place), words];
      });
    }),
  );
}

function swatch(
  mark: Mark,
  { left, middle }: { readonly left: number; readonly middle: number },
  { palette, spread }: Place,
): SceneNode {
  if (mark === 'half' || mark === 'nine') {
    const fill = mark === 'half' ? palette.fanInner : palette.fanOuter;
    return element('rect', { x: left, y: middle - 5, width: SWATCH, height: 10, fill });
  }
  const isThin = mark === 'expected' && spread;
  return element('path', {
    d: `M${left} ${middle}h${SWATCH}`,
    stroke: palette.ink,
    'stroke-width': isThin ? 1 : 1.4,
    ...(mark === 'expected' ? { 'stroke-dasharray': EXPECTED_DASH } : {}),
  });
}
