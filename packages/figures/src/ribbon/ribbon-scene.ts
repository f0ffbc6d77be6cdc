import { turningMark } from '../marks/turning-mark.ts';
import type { Palette } from '../palette/palette.ts';
import { element, group, type Scene, type SceneNode, sceneOf } from '../scene/scene.ts';
import { dateLabel } from '../time/calendar.ts';
import { textAt } from '../type/text.ts';
import { textWidth } from '../type/text-width.ts';
import { LANE_HEIGHT, type RibbonLayout, ribbonLayout } from './ribbon-layout.ts';
import type { RibbonOptions } from './ribbon-options.ts';
import { strip } from './strip.ts';
import { monthRules, type TimeAxis, timeAxis } from './time-axis.ts';

/** Journal behind today and outlook ahead of it on one time axis, a strip for each quantity. */
export function ribbonScene(options: RibbonOptions): Scene {
  const { document, width, palette, day } = options;
  const layout = ribbonLayout(options);
  const { left, right, toX } = layout.scale;
  const { startDate } = document.enclosure;
  const axis: TimeAxis = { startDate, days: document.run.days, left, right, toX, palette };
  const label = `Outlook of ${document.enclosure.name}, ${document.run.days} days; chosen day ${Math.round(day)}, ${dateLabel(startDate, day)}.`;
  return sceneOf({ width, height: layout.height }, label, [
    monthRules(axis, { top: 32, bottom: layout.axisTop }),
    ...layout.rows.map((row) => strip(options, layout, row)),
    turningPoints(options, layout),
    timeAxis(axis, layout.axisTop),
    dayLines(options, layout),
  ]);
}

function turningPoints({ palette }: RibbonOptions, layout: RibbonLayout): SceneNode | undefined {
  if (layout.lanes.length === 0) return undefined;
  const marks = layout.lanes.flatMap((lane, index) =>
    lane.map((point) =>
      turningMark(point, {
        toX: layout.scale.toX,
        y: layout.lanesTop + LANE_HEIGHT * (index + 0.5),
        palette,
      }),
    ),
  );
  const style = { size: 13, face: 'italic', fill: palette.softInk, anchor: 'end' } as const;
  const name = layout.narrow
    ? undefined
    : textAt(layout.scale.left - 16, layout.lanesTop + LANE_HEIGHT * 0.5 + 4, 'what turns', style);
  return group({ 'data-part': 'turning-points' }, [name, ...marks]);
}

interface HeadLabel {
  readonly text: string;
  readonly x: number;
  readonly left: number;
  readonly right: number;
}

const LABEL_SIZE = 13;

/** Today as an ink line, the chosen day as a vermilion one with its handle on the axis. */
function dayLines({ document, day, today, palette, width }: RibbonOptions, layout: RibbonLayout): SceneNode {
  const { toX } = layout.scale;
  const { startDate } = document.enclosure;
  const chosen = headLabel(`${dateLabel(startDate, day)}, day ${Math.round(day)}`, toX(day), width);
  const now = headLabel(`today, day ${Math.round(today)}`, toX(today), width);
  const apart = now.right + 8 < chosen.left || chosen.right + 8 < now.left;
  const nowY = apart ? 15 : 31;
  const style = { size: LABEL_SIZE, anchor: 'middle', halo: palette.paper, haloWidth: 4 } as const;
  return group({ 'data-part': 'days' }, [
    upright(toX(today), { from: nowY + 5, to: layout.axisTop }, { stroke: palette.ink, width: 1.4 }),
    textAt(now.x, nowY, now.text, { ...style, fill: palette.ink }),
    group({ 'data-part': 'chosen-day' }, [
      upright(toX(day), { from: 20, to: layout.axisTop }, { stroke: palette.vermilion, width: 1.6 }),
      textAt(chosen.x, 15, chosen.text, { ...style, fill: palette.vermilion }),
      handle(toX(day), layout.axisTop, palette),
    ]),
  ]);
}

function headLabel(text: string, x: number, width: number): HeadLabel {
  const half = textWidth(text, LABEL_SIZE) / 2;
  const middle = Math.min(width - half - 2, Math.max(half + 2, x));
  return { text, x: middle, left: middle - half, right: middle + half };
}

function upright(
  x: number,
  span: { from: number; to: number },
  pen: { stroke: string; width: number },
): SceneNode {
  return element('path', {
    d: `M${x.toFixed(1)} ${span.from}V${span.to}`,
    stroke: pen.stroke,
    'stroke-width': pen.width,
    fill: 'none',
  });
}

function handle(x: number, y: number, palette: Palette): SceneNode {
  return group({ 'data-part': 'handle', transform: `translate(${x.toFixed(1)} ${y})` }, [
    element('circle', {
      cx: 0,
      cy: 0,
      r: 8,
      fill: palette.raised,
      stroke: palette.vermilion,
      'stroke-width': 1.6,
    }),
    element('path', {
      d: 'M-2.2 -3.4L-4.8 0L-2.2 3.4M2.2 -3.4L4.8 0L2.2 3.4',
      fill: 'none',
      stroke: palette.vermilion,
      'stroke-width': 1.4,
      'stroke-linecap': 'round',
      'stroke-linejoin': 'round',
    }),
  ]);
}
