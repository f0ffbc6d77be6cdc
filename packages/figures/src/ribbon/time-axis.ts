import type { Palette } from '../palette/palette.ts';
import { element, group, type SceneNode } from '../scene/scene.ts';
import { monthStarts, shortMonth } from '../time/calendar.ts';
import { textAt } from '../type/text.ts';
import { textWidth } from '../type/text-width.ts';

export interface TimeAxis {
  readonly startDate: string;
  readonly days: number;
  readonly left: number;
  readonly right: number;
  toX(day: number): number;
  readonly palette: Palette;
}

/** Upright rules at the beginning of each month, over the height of the figure. */
export function monthRules(axis: TimeAxis, span: { top: number; bottom: number }): SceneNode {
  const lines = monthStarts(axis.startDate, axis.days).map(
    ({ day }) => `M${axis.toX(day).toFixed(1)} ${span.top}V${span.bottom}`,
  );
  return element('path', {
    d: lines.length > 0 ? lines.join('') : 'M0 0',
    stroke: axis.palette.rule,
    'stroke-width': 0.8,
    'stroke-opacity': 0.7,
    fill: 'none',
  });
}

/** Month names between the rules, and days of the run beneath them. */
export function timeAxis(axis: TimeAxis, top: number): SceneNode {
  const { palette, left, right } = axis;
  return group({ 'data-part': 'time-axis' }, [
    element('path', {
      d: `M${left} ${top}H${right}`,
      stroke: palette.ink,
      'stroke-width': 0.9,
      fill: 'none',
    }),
    ...monthNames(axis, top + 17),
    ...dayFigures(axis, top + 35),
  ]);
}

function monthNames({ startDate, days, toX, palette }: TimeAxis, y: number): SceneNode[] {
  const starts = monthStarts(startDate, days);
  const size = 12.5;
  return starts.flatMap(({ day, date }, index) => {
    const from = toX(day);
    const to = toX(starts[index + 1]?.day ?? days);
    const name = shortMonth(date.month);
    const withYear = `${name} ${date.year}`;
    const text = date.month === 1 && textWidth(withYear, size) + 6 <= to - from ? withYear : name;
    if (textWidth(text, size) + 3 > to - from) return [];
    return [textAt((from + to) / 2, y, text, { size, fill: palette.ink, anchor: 'middle' })];
  });
}

function dayFigures({ days, left, toX, palette }: TimeAxis, y: number): SceneNode[] {
  const size = 11.5;
  const perDay = toX(1) - toX(0);
  const step = [10, 30, 60, 100, 200, 500, 1000].find((candidate) => candidate * perDay >= 46) ?? 1000;
  const style = { size, fill: palette.softInk } as const;
  return Array.from({ length: Math.floor(days / step) + 1 }, (_, index) => {
    const day = index * step;
    if (day === 0) return textAt(left, y, 'day 0', style);
    return textAt(toX(day), y, String(day), { ...style, anchor: 'middle' });
  });
}
