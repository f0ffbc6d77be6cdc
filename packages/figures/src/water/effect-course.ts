import type { Palette } from '../palette/palette.ts';
import { linearScale, type Scale } from '../scale/linear-scale.ts';
import { roundStep, roundTicks, stepDigits } from '../scale/ticks.ts';
import { areaBetween, type Point, polyline } from '../scene/path.ts';
import { element, group, type Scene, type SceneNode, sceneOf } from '../scene/scene.ts';
import { calendarDay, dateLabel, monthStarts, shortMonth } from '../time/calendar.ts';
import { numberText } from '../type/number-text.ts';
import { textAt } from '../type/text.ts';
import { fitText, textWidth } from '../type/text-width.ts';

export interface EffectOptions {
  readonly name: string;
  readonly unit: string;
  readonly digits: number;
  /** With less without, one value a day from the first: 5, 50 and 95 % of the runs. */
  readonly low: readonly number[];
  readonly middle: readonly number[];
  readonly high: readonly number[];
  readonly startDate: string;
  readonly day?: number;
  readonly width: number;
  readonly height: number;
  readonly palette: Palette;
}

interface Plot {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  toX(day: number): number;
  readonly value: Scale;
}

/** What one thing changes in a quantity over the run, on a scale with zero in it. */
export function effectScene(options: EffectOptions): Scene {
  const { name, unit, palette, width, height, low, middle, high, day } = options;
  const plot = plotOf(options);
  const course = (values: readonly number[]): Point[] =>
    values.map((value, at) => [plot.toX(at), plot.value.toPixel(value)]);
  const zero = plot.value.toPixel(0);
  const shown = fitText(name, width - 60, 14, 'strong');
  return sceneOf({ width, height }, sentence(options), [
    textAt(0, 14, shown, { size: 14, face: 'strong', fill: palette.ink }),
    textAt(textWidth(shown, 14, 'strong') + 7, 14, unit, { size: 13, fill: palette.softInk }),
    figures(plot, palette),
    element('path', { d: areaBetween(course(high), course(low)), fill: palette.fanOuter }),
    element('path', {
      d: `M${plot.left} ${zero.toFixed(1)}H${plot.right}`,
      stroke: palette.ink,
      'stroke-width': 1,
    }),
    element('path', {
      d: polyline(course(middle)) || 'M0 0',
      fill: 'none',
      stroke: palette.ink,
      'stroke-width': 1.6,
    }),
    day === undefined ? undefined : chosenDay(plot, day, palette),
    months(options, plot),
  ]);
}

function plotOf({ low, middle, high, digits, width, height }: EffectOptions): Plot {
  const values = [...low, ...middle, ...high].filter(Number.isFinite);
  const least = 6 * 10 ** -digits;
  const [from, to] = [Math.min(0, ...values), Math.max(0, ...values)];
  const air = Math.max((to - from) * 0.1, least / 2 - (to - from) / 2, 1e-9);
  const [left, right, top, bottom] = [44, Math.max(100, width - 6), 26, Math.max(70, height - 22)];
  const time = linearScale([0, Math.max(1, middle.length - 1)], [left, right]);
  return {
    left,
    right,
    top,
    bottom,
    toX: time.toPixel,
    value: linearScale([from - air, to + air], [bottom, top]),
  };
}

function figures({ left, right, top, bottom, value }: Plot, palette: Palette): SceneNode {
  const room = Math.max(2, Math.floor((bottom - top) / 20));
  const step = roundStep((value.domain[1] - value.domain[0]) / room);
  return group(
    { 'data-part': 'value-axis' },
    roundTicks(value.domain, room).flatMap((tick) => {
      const y = value.toPixel(tick);
      const text = numberText(tick, stepDigits(step));
      return [
        element('path', {
          d: `M${left} ${y.toFixed(1)}H${right}`,
          stroke: palette.rule,
          'stroke-width': 0.7,
        }),
        textAt(left - 6, y + 4, tick > 0 ? `+${text}` : text, {
          size: 12,
          fill: palette.softInk,
          anchor: 'end',
        }),
      ];
    }),
  );
}

function chosenDay({ toX, top, bottom, left, right }: Plot, day: number, palette: Palette): SceneNode {
  const x = Math.min(right, Math.max(left, toX(day)));
  return element('path', {
    d: `M${x.toFixed(1)} ${top}V${bottom}`,
    stroke: palette.vermilion,
    'stroke-width': 1.3,
  });
}

/** Month names where they find room. */
function months({ startDate, middle, palette }: EffectOptions, { toX, right, bottom }: Plot): SceneNode {
  const size = 12;
  let free = Number.NEGATIVE_INFINITY;
  const names = monthStarts(startDate, Math.max(1, middle.length - 1)).flatMap(({ day }) => {
    const name = shortMonth(calendarDay(startDate, day).month);
    const [x, half] = [toX(day), textWidth(name, size) / 2];
    if (x - half < free || x + half > right + 4) return [];
    free = x + half + 12;
    return [
      element('path', { d: `M${x.toFixed(1)} ${bottom}v4`, stroke: palette.softInk, 'stroke-width': 0.8 }),
      textAt(x, bottom + 17, name, { size, fill: palette.softInk, anchor: 'middle' }),
    ];
  });
  return group({ 'data-part': 'months' }, names);
}

function sentence({ name, unit, digits, middle, startDate }: EffectOptions): string {
  const last = middle.length - 1;
  const end = middle[last];
  if (end === undefined) return `${name}: nothing to show.`;
  const text = `${end > 0 ? '+' : ''}${numberText(end, digits)}${unit === '' ? '' : ` ${unit}`}`;
  return `${name}, with less without, until ${dateLabel(startDate, last)}: ${text} at the end.`;
}
