import { valueTicks } from '../marks/value-ticks.ts';
import type { Palette } from '../palette/palette.ts';
import { monthRules, type TimeAxis, timeAxis } from '../ribbon/time-axis.ts';
import { countScale, linearScale, type Scale } from '../scale/linear-scale.ts';
import { countTicks, roundTicks } from '../scale/ticks.ts';
import { areaBetween, type Point, polyline } from '../scene/path.ts';
import { element, group, type Scene, type SceneNode, sceneOf } from '../scene/scene.ts';
import { dateLabel } from '../time/calendar.ts';
import { numberText } from '../type/number-text.ts';
import { textAt } from '../type/text.ts';
import { textWidth } from '../type/text-width.ts';
import { countRing, countsLegend } from './counts-legend.ts';

/** A curve with how far it may lie to either side. */
export interface CurvePoint {
  readonly day: number;
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface CountsChartOptions {
  /** Who was counted. */
  readonly name: string;
  /** ISO date of day 0, the first count. */
  readonly startDate: string;
  readonly counts: readonly { readonly day: number; readonly number: number; readonly error?: number }[];
  /** The curve laid through them, with its 95 %; empty where there is none. */
  readonly course: readonly CurvePoint[];
  /** Computed numbers of the same days: median and nine runs in ten; days of the counts. */
  readonly computed?: readonly CurvePoint[];
  /** What is on the upright: animals, or animals in a unit of effort. */
  readonly unit: string;
  readonly width: number;
  readonly height: number;
  readonly palette: Palette;
}

const [TOP, AXIS, LEGEND_LINE] = [34, 44, 18];
const FIGURE = 12;

interface Plot {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly x: Scale;
  readonly y: Scale;
  readonly ticks: readonly number[];
}

/** Counts as open circles with their errors, the curve laid through them with its band, and what was computed. */
export function countsChartScene(options: CountsChartOptions): Scene {
  const { counts, course, computed = [], startDate, width, height, palette } = options;
  const legend = countsLegend({ ...options, width: width - 8 });
  const plot = plotOf(options, height - AXIS - 8 - LEGEND_LINE * legend.lines);
  const { left, right, x, y } = plot;
  const days = spanOf(options);
  const time: TimeAxis = { startDate, days, left, right, toX: x.toPixel, palette };
  const points = (of: readonly CurvePoint[], key: 'value' | 'low' | 'high'): Point[] =>
    of.map((point) => [x.toPixel(point.day), y.toPixel(clamped(point[key], y))]);
  const line = (path: readonly Point[], dash: string | undefined, ink: string, thick: number) =>
    element('path', {
      d: polyline(path),
      fill: 'none',
      stroke: ink,
      'stroke-width': thick,
      'stroke-dasharray': dash,
    });
  return sceneOf(
    { width, height },
    sentence(options, days),
    [
      heading(options, computed.length > 0),
      ...valueTicks(plot.ticks, { left, right, toY: y.toPixel, palette }),
      monthRules(time, plot),
      course.length > 0 &&
        element('path', {
          d: areaBetween(points(course, 'high'), points(course, 'low')),
          fill: palette.fanOuter,
        }),
      ...(computed.length > 1
        ? [
            line(points(computed, 'low'), '1 4', palette.softInk, 1.3),
            line(points(computed, 'high'), '1 4', palette.softInk, 1.3),
            line(points(computed, 'value'), '6 4', palette.softInk, 1.4),
          ]
        : []),
      course.length > 0 && line(points(course, 'value'), undefined, palette.ink, 1.7),
      group(
        { 'data-part': 'counts' },
        counts.map((count) => counted(count, plot, palette)),
      ),
      timeAxis(time, plot.bottom),
      legend.at(4, plot.bottom + AXIS + 14),
    ].filter((node) => node !== false),
  );
}

const clamped = (value: number, { domain }: Scale): number => Math.min(domain[1], Math.max(domain[0], value));

const spanOf = ({ counts }: CountsChartOptions): number => Math.max(1, Math.ceil(counts.at(-1)?.day ?? 1));

/** Room for the rings of the first and the last count [px]. */
const RING = 6;
/** Nothing taller than this many times the most counted is given room. */
const TALLEST = 3;

function plotOf(options: CountsChartOptions, bottom: number): Plot {
  const { counts, course, computed = [], width } = options;
  const most = Math.max(1, ...counts.map(({ number, error = 0 }) => number + error));
  const tallest = Math.max(most, ...course.map(({ high }) => Math.min(high, TALLEST * most)));
  const isLog = computed.length > 1;
  const top = isLog ? Math.max(tallest, ...computed.map(({ high }) => high)) * 1.15 : tallest * 1.06;
  const ticks = isLog ? countTicks([0, top]) : roundTicks([0, top], 4);
  const left = 12 + Math.max(...ticks.map((tick) => textWidth(numberText(tick), FIGURE)));
  const right = Math.max(left + 60, width - 10);
  const low = Math.max(TOP + 60, bottom);
  return {
    left,
    right,
    top: TOP,
    bottom: low,
    x: linearScale([0, spanOf(options)], [left + RING, right - RING]),
    y: (isLog ? countScale : linearScale)([0, top], [low, TOP]),
    ticks,
  };
}

function counted(
  { day, number, error }: CountsChartOptions['counts'][number],
  { x, y }: Plot,
  palette: Palette,
): SceneNode {
  const [cx, cy] = [x.toPixel(day), y.toPixel(number)];
  const reach = (value: number): string => y.toPixel(clamped(value, y)).toFixed(1);
  return group({}, [
    error === undefined
      ? undefined
      : element('path', {
          d: `M${cx.toFixed(1)} ${reach(number - error)}V${reach(number + error)}`,
          stroke: palette.ink,
          'stroke-width': 1.2,
        }),
    countRing(cx, cy, palette),
  ]);
}

function heading({ unit, palette }: CountsChartOptions, isLog: boolean): SceneNode {
  return textAt(0, 14, isLog ? `${unit}, log scale` : unit, { size: 13, fill: palette.softInk });
}

function sentence({ name, startDate, counts, course }: CountsChartOptions, days: number): string {
  const [first, last] = [counts[0], counts.at(-1)];
  const end = course.at(-1);
  const number = (value: number): string => numberText(Number(value.toPrecision(3)));
  const curve = end
    ? `; the curve ends at ${number(end.value)}, 95 % from ${number(end.low)} to ${number(end.high)}`
    : '';
  const many = counts.length === 1 ? '1 count' : `${counts.length} counts`;
  return `${name}, ${many} until ${dateLabel(startDate, days)}: ${number(first?.number ?? 0)} first, ${number(last?.number ?? 0)} last${curve}.`;
}
