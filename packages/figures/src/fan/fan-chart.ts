import type { QuantileSeries, SeriesId } from '@shoreglass/engine';
import { valueOn } from '../day/day-state.ts';
import type { Palette } from '../palette/palette.ts';
import { monthRules, type TimeAxis, timeAxis } from '../ribbon/time-axis.ts';
import { band } from '../scale/band.ts';
import { fan, isSpread } from '../scale/fan.ts';
import { type ValueAxis, valueAxis } from '../scale/value-axis.ts';
import { element, group, type Scene, type SceneNode, sceneOf } from '../scene/scene.ts';
import { dateLabel } from '../time/calendar.ts';
import { numberText } from '../type/number-text.ts';
import { seriesDigits } from '../type/series-text.ts';
import { textAt } from '../type/text.ts';
import { fitText, textWidth } from '../type/text-width.ts';
import { fanLegend, LEGEND_ROW, legendRows } from './fan-legend.ts';

export interface FanChartOptions {
  readonly id: SeriesId;
  readonly series: QuantileSeries;
  readonly name: string;
  readonly startDate: string;
  readonly width: number;
  readonly height: number;
  readonly palette: Palette;
  /** Chosen day, and today; days of the run. */
  readonly day?: number;
  readonly today?: number;
  readonly readings?: readonly { readonly day: number; readonly value: number }[];
}

const NARROW = 520;
const TOP = 44;
const BOTTOM = 74;

interface Plot {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly narrow: boolean;
}

/** One quantity over the run: its fan, the band with the names of those who need it, axes with units. */
export function fanChartScene(options: FanChartOptions): Scene {
  const { series, name, startDate, width, height, palette, readings = [] } = options;
  const { plot, axis } = plotAndAxis(options);
  const [first, last] = [series.days[0] ?? 0, Math.max(1, series.days[series.days.length - 1] ?? 1)];
  const toX = (day: number) =>
    plot.left + ((day - first) / Math.max(1, last - first)) * (plot.right - plot.left);
  const toY = axis.scale.toPixel;
  const time: TimeAxis = { startDate, days: last, left: plot.left, right: plot.right, toX, palette };
  return sceneOf({ width, height }, sentence(options, last), [
    heading(options, plot),
    band(series.band, { ...plot, toY, palette }),
    monthRules(time, plot),
    fan(series, { toX, toY, width: plot.right - plot.left, palette }),
    ...readings.map(({ day, value }) => reading(palette, toX(day), toY(value))),
    bandOwners(options, plot, axis),
    valueFigures(palette, plot, axis),
    timeAxis(time, plot.bottom),
    markedDays(options, plot, toX),
    fanLegend({ ...legendPlace(options), y: height - 12, palette }),
    name === '' ? undefined : element('title', {}, name),
  ]);
}

/** Space for the words of a limit that lies off the scale, so that the fan does not run through them. */
const WORDS_ROOM = 20;

function roomyAxis({ id, series, readings = [] }: FanChartOptions, plot: Plot): ValueAxis {
  const also = readings.map(({ value }) => value);
  const request = { id, series, tickSpacing: 26, also };
  const plain = valueAxis({ ...request, range: [plot.bottom - 4, plot.top + 4] });
  const [lowest, highest] = plain.scale.domain;
  const { low = lowest, high = highest, lowOwner, highOwner } = series.band ?? {};
  const below = low < lowest && lowOwner !== undefined ? WORDS_ROOM : 4;
  const above = high > highest && highOwner !== undefined ? WORDS_ROOM : 4;
  if (below === 4 && above === 4) return plain;
  return valueAxis({ ...request, range: [plot.bottom - below, plot.top + above] });
}

const FIGURE_SIZE = 12;
const FIGURE_GAP = 8;

/** The plot begins where its widest figure ends: 100 000 animals need more room than pH 7. */
function plotAndAxis(options: FanChartOptions): { readonly plot: Plot; readonly axis: ValueAxis } {
  const plot = plotOf(options);
  const axis = roomyAxis(options, plot);
  const widest = Math.max(0, ...axis.ticks.map(({ text }) => textWidth(text, FIGURE_SIZE)));
  return { plot: { ...plot, left: Math.max(plot.left, Math.ceil(widest) + FIGURE_GAP + 2) }, axis };
}

/** Where the legend begins, how wide it may be, and whether it explains a spread. */
function legendPlace({ series, width }: FanChartOptions) {
  const x = width < NARROW ? 0 : 56;
  return { x, width: Math.max(80, width - 12 - x), spread: isSpread(series) };
}

function plotOf(options: FanChartOptions): Plot {
  const { width, height } = options;
  const narrow = width < NARROW;
  const under = BOTTOM + (legendRows(legendPlace(options)).length - 1) * LEGEND_ROW;
  return {
    left: narrow ? 40 : 56,
    right: Math.max(narrow ? 80 : 96, width - 12),
    top: TOP,
    bottom: Math.max(TOP + 40, height - under),
    narrow,
  };
}

function heading({ id, series, name, palette }: FanChartOptions, plot: Plot): SceneNode {
  const size = plot.narrow ? 16 : 18;
  const unit = id.startsWith('population:') ? 'animals, log scale' : series.unit;
  const shown = fitText(name, plot.right - 4, size, 'serif');
  const unitX = textWidth(shown, size, 'serif') + 8;
  const fits = unit !== '' && unitX + textWidth(unit, 13) <= plot.right;
  return group({}, [
    textAt(0, 20, shown, { size, face: 'serif', fill: palette.ink }),
    fits ? textAt(unitX, 20, unit, { size: 13, fill: palette.softInk }) : undefined,
  ]);
}

/** Who needs each edge of the band, written inside the plot along that edge. */
function bandOwners({ series, palette }: FanChartOptions, plot: Plot, axis: ValueAxis): SceneNode {
  const { low, high, lowOwner, highOwner } = series.band ?? {};
  const size = 12;
  const lineOf = (value: number, below: number) =>
    Math.min(plot.bottom - 8, Math.max(plot.top + 14, axis.scale.toPixel(value) + below));
  const most = high === undefined || highOwner === undefined ? undefined : lineOf(high, 14);
  const least = low === undefined || lowOwner === undefined ? undefined : lineOf(low, -5);
  // Where nothing suits both, or the edges lie close, the words would lie on one another.
  const isTight = most !== undefined && least !== undefined && Math.abs(most - least) < size + 2;
  const line = (value: number | undefined, owner: string | undefined, side: 'least' | 'most') => {
    if (value === undefined || owner === undefined) return undefined;
    const own = side === 'least' ? least : most;
    const y = isTight && side === 'least' ? (most ?? 0) - size - 2 : (own ?? 0);
    const [lowest, highest] = axis.scale.domain;
    const away = value < lowest || value > highest ? ', off this scale' : '';
    const wording = `at ${side} ${Number(value.toPrecision(4))} for ${owner}${away}`;
    const text = fitText(wording, plot.right - plot.left - 16, size);
    return textAt(plot.left + 8, y, text, { size, fill: palette.softInk, halo: palette.band, haloWidth: 3 });
  };
  return group({ 'data-part': 'band-owners' }, [line(low, lowOwner, 'least'), line(high, highOwner, 'most')]);
}

function valueFigures(palette: Palette, plot: Plot, axis: ValueAxis): SceneNode {
  const size = FIGURE_SIZE;
  return group(
    { 'data-part': 'value-axis' },
    axis.ticks.flatMap((tick) => {
      const y = axis.scale.toPixel(tick.value);
      const fill = tick.limit ? palette.ink : palette.softInk;
      return [
        element('path', { d: `M${plot.left - 5} ${y.toFixed(1)}h5`, stroke: fill, 'stroke-width': 0.9 }),
        textAt(plot.left - FIGURE_GAP, y + size * 0.34, tick.text, { size, fill, anchor: 'end' }),
      ];
    }),
  );
}

function reading(palette: Palette, x: number, y: number): SceneNode {
  return element('circle', {
    cx: x,
    cy: y,
    r: 3,
    fill: palette.paper,
    stroke: palette.ink,
    'stroke-width': 1.1,
  });
}

function markedDays(options: FanChartOptions, plot: Plot, toX: (day: number) => number): SceneNode {
  const { palette, startDate, day, today } = options;
  const mark = (at: number | undefined, text: string, ink: string) => {
    if (at === undefined) return undefined;
    const x = toX(at);
    const half = textWidth(text, 12) / 2;
    const middle = Math.min(plot.right - half, Math.max(plot.left + half, x));
    return group({}, [
      element('path', { d: `M${x.toFixed(1)} ${plot.top}V${plot.bottom}`, stroke: ink, 'stroke-width': 1.4 }),
      textAt(middle, plot.top - 6, text, { size: 12, fill: ink, anchor: 'middle', halo: palette.paper }),
    ]);
  };
  const near = day !== undefined && today !== undefined && Math.abs(toX(day) - toX(today)) < 90;
  return group({ 'data-part': 'days' }, [
    mark(today, near ? '' : 'today', palette.ink),
    mark(day, day === undefined ? '' : dateLabel(startDate, day), palette.vermilion),
  ]);
}

function sentence({ id, series, name, startDate }: FanChartOptions, last: number): string {
  const digits = seriesDigits(id);
  const at = (key: ShownKey) => numberText(valueOr(series, key, last), digits);
  const unit = series.unit === '' ? '' : ` ${series.unit}`;
  if (!isSpread(series))
    return `${name} until ${dateLabel(startDate, last)}, expected run: ${at('expected')}${unit}.`;
  return `${name} until ${dateLabel(startDate, last)}: median ${at('q50')}${unit}, nine runs in ten between ${at('q05')} and ${at('q95')}${unit}.`;
}

type ShownKey = 'q05' | 'q50' | 'q95' | 'expected';

function valueOr(series: QuantileSeries, key: ShownKey, day: number): number {
  const value = series.days.length === 0 ? 0 : valueOn(series, key, day);
  return Number.isFinite(value) ? value : 0;
}
