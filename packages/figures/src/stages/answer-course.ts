import { valueTicks } from '../marks/value-ticks.ts';
import type { Palette } from '../palette/palette.ts';
import { type TimeAxis, timeAxis } from '../ribbon/time-axis.ts';
import { linearScale } from '../scale/linear-scale.ts';
import { roundTicks } from '../scale/ticks.ts';
import { areaBetween, type Point, polyline } from '../scene/path.ts';
import { element, type Scene, sceneOf } from '../scene/scene.ts';
import { dateLabel } from '../time/calendar.ts';
import { countText, numberText } from '../type/number-text.ts';
import { textWidth } from '../type/text-width.ts';

/** Numbers of animals under one answer beside those when nothing is done, one value a day. */
export interface AnswerCourseOptions {
  /** Who is counted. */
  readonly name: string;
  /** 10, 50 and 90 % of the runs. */
  readonly low: readonly number[];
  readonly middle: readonly number[];
  readonly high: readonly number[];
  /** Median when nothing is done; left out where this is what is drawn. */
  readonly beside?: readonly number[];
  /** Top of the scale, alike for all that are compared [animals]. */
  readonly most: number;
  readonly startDate: string;
  readonly width: number;
  readonly height: number;
  readonly palette: Palette;
}

const [TOP, FOOT] = [8, 42];

/** One answer as a fan, and as a dashed line what becomes of them when nothing is done. */
export function answerCourseScene(options: AnswerCourseOptions): Scene {
  const { low, middle, high, beside, startDate, width, height, palette } = options;
  const most = Math.max(1, options.most) * 1.06;
  const days = Math.max(1, middle.length - 1);
  const ticks = roundTicks([0, most], 3);
  const left = 12 + Math.max(...ticks.map((tick) => textWidth(numberText(tick), 12)));
  const [right, bottom] = [Math.max(left + 60, width - 8), Math.max(TOP + 40, height - FOOT)];
  const x = linearScale([0, days], [left, right]);
  const y = linearScale([0, most], [bottom, TOP]);
  const time: TimeAxis = { startDate, days, left, right, toX: x.toPixel, palette };
  const course = (values: readonly number[]): Point[] =>
    values.map((value, at) => [x.toPixel(at), y.toPixel(value)]);
  return sceneOf({ width, height }, sentence(options, days), [
    ...valueTicks(ticks, { left, right, toY: y.toPixel, palette }),
    element('path', { d: areaBetween(course(high), course(low)), fill: palette.fanOuter }),
    beside &&
      element('path', {
        d: polyline(course(beside)),
        fill: 'none',
        stroke: palette.softInk,
        'stroke-width': 1.4,
        'stroke-dasharray': '5 4',
      }),
    element('path', { d: polyline(course(middle)), fill: 'none', stroke: palette.ink, 'stroke-width': 1.7 }),
    timeAxis(time, bottom),
  ]);
}

function sentence({ name, middle, beside, startDate }: AnswerCourseOptions, days: number): string {
  const end = (values: readonly number[]) => countText(values[days] ?? 0);
  const without = beside ? `; ${end(beside)} when nothing is done` : '';
  return `${name} until ${dateLabel(startDate, days)}, median of the runs: ${end(middle)} at the end${without}.`;
}
