import type { Palette } from '../palette/palette.ts';
import { EXPECTED_DASH } from '../scale/fan.ts';
import { element, group, type SceneNode } from '../scene/scene.ts';
import { textAt } from '../type/text.ts';
import { textWidth } from '../type/text-width.ts';

const SIZE = 11.5;
const SWATCH = 20;

interface Place {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly palette: Palette;
  /** Whether runs are drawn beside the expected one. */
  readonly spread: boolean;
}

/** What the tones and lines that are drawn mean, in one row; entries that find no room are left out from the end. */
export function fanLegend(place: Place): SceneNode {
  const { palette, y } = place;
  const middle = y - 4;
  const box = (fill: string) => (x: number) =>
    element('rect', { x, y: middle - 5, width: SWATCH, height: 10, fill });
  const stroke = (dash: string | undefined, width: number) => (x: number) =>
    element('path', {
      d: `M${x} ${middle}h${SWATCH}`,
      stroke: palette.ink,
      'stroke-width': width,
      'stroke-dasharray': dash,
    });
  const runs = [
    { text: 'median', swatch: stroke(undefined, 1.4) },
    { text: 'half of the runs', swatch: box(palette.fanInner) },
    { text: 'nine in ten', swatch: box(palette.fanOuter) },
  ];
  const entries = [
    ...(place.spread ? runs : []),
    { text: 'expected run', swatch: stroke(EXPECTED_DASH, place.spread ? 1 : 1.4) },
  ];
  const nodes: SceneNode[] = [];
  let x = place.x;
  for (const { text, swatch } of entries) {
    const end = x + SWATCH + 6 + textWidth(text, SIZE);
    if (end > place.x + place.width) break;
    nodes.push(swatch(x), textAt(x + SWATCH + 6, y, text, { size: SIZE, fill: palette.softInk }));
    x = end + 16;
  }
  return group({ 'data-part': 'legend' }, nodes);
}
