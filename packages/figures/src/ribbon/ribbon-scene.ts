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
  readonly y: number;
  readonly left: number;
  readonly right: number;
}

const LABEL_SIZE = 13;
const FIRST_LINE = 15;
const SECOND_LINE = 31;

/** Today as an ink line, the chosen day as a vermilion one with its handle on the axis. */
function dayLines({ document, day, today, palette, width }: RibbonOptions, layout: RibbonLayout): SceneNode {
  const { toX } = layout.scale;
  const { startDate } = document.enclosure;
  const chosenText = `${dateLabel(startDate, day)}, day ${Math.round(day)}`;
  const chosen = headLabel({ text: chosenText, x: toX(day), width });
  const label = ({ left, y, text }: HeadLabel, fill: string) =>
    textAt(left, y, text, { size: LABEL_SIZE, fill, halo: palette.paper, haloWidth: 4 });
  const todayLine = (at: number) => {
    const text = `today, day ${Math.round(at)}`;
    const now = todayLabel({ text, x: toX(at), width }, { chosen, x: toX(day) });
    return [
      upright(toX(at), { from: now.y + 5, layout }, { stroke: palette.ink, width: 1.4 }),
      label(now, palette.ink),
    ];
  };
  return group({ 'data-part': 'days' }, [
    ...(today === undefined ? [] : todayLine(today)),
    group({ 'data-part': 'chosen-day' }, [
      upright(toX(day), { from: FIRST_LINE + 5, layout }, { stroke: palette.vermilion, width: 1.6 }),
      label(chosen, palette.vermilion),
      handle(toX(day), layout.axisTop, palette),
    ]),
  ]);
}

interface LabelRequest {
  readonly text: string;
  readonly x: number;
  readonly width: number;
}

/** A label centred over its line, held within the drawing. */
function headLabel({ text, x, width }: LabelRequest): HeadLabel {
  const length = textWidth(text, LABEL_SIZE);
  const left = Math.max(2, Math.min(width - length - 2, x - length / 2));
  return { text, y: FIRST_LINE, left, right: left + length };
}

/** Beside the chosen day's label where there is room; else a line lower, on the side away from the chosen line. */
function todayLabel(request: LabelRequest, other: { chosen: HeadLabel; x: number }): HeadLabel {
  const label = headLabel(request);
  if (label.right + 8 < other.chosen.left || other.chosen.right + 8 < label.left) return label;
  const length = label.right - label.left;
  const leftSide = request.x - 6 - length;
  const rightSide = request.x + 6;
  const wishesLeft = other.x >= request.x ? leftSide >= 2 : rightSide + length > request.width - 2;
  const left = wishesLeft ? leftSide : rightSide;
  return { ...label, y: SECOND_LINE, left, right: left + length };
}

/** A line over the height of the ribbon that leaves out the names and values above narrow strips. */
function upright(
  x: number,
  { from, layout }: { from: number; layout: RibbonLayout },
  pen: { stroke: string; width: number },
): SceneNode {
  const at = x.toFixed(1);
  const gaps = layout.narrow ? layout.rows : [];
  const broken = gaps.map(({ top, stripTop }) => `V${top}M${at} ${stripTop}`).join('');
  return element('path', {
    d: `M${at} ${from}${broken}V${layout.axisTop}`,
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
