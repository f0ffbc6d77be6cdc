import { type QuantileSeries, SERIES, type SeriesId, seriesSpec } from '@shoreglass/engine';
import { numberText } from '../type/number-text.ts';
import { countScale, linearScale, type Scale } from './linear-scale.ts';
import { countTicks, roundStep, roundTicks, stepDigits } from './ticks.ts';

/** The upright axis of one quantity: zoomed to what it does and to the edges of its band that lie near. */
export interface ValueAxis {
  readonly scale: Scale;
  readonly ticks: readonly Tick[];
  readonly counts: boolean;
}
interface Tick {
  readonly value: number;
  readonly text: string;
  /** The tick is an edge of the band. */
  readonly limit?: 'low' | 'high';
}

export interface AxisRequest {
  readonly id: SeriesId;
  readonly series: QuantileSeries;
  /** Bottom and top [px]. */
  readonly range: readonly [bottom: number, top: number];
  readonly tickSpacing: number;
  /** Further values that must be visible, such as readings. */
  readonly also?: readonly number[];
}

/** A band edge is shown when it lies within this many times the data's extent. */
const REACH = 0.4;

export function valueAxis({ id, series, range, tickSpacing, also = [] }: AxisRequest): ValueAxis {
  const counts = id.startsWith('population:');
  const data = extent([...series.q05, ...series.q95, ...series.expected, ...also]);
  const domain = counts ? countDomain(data, series.band) : plainDomain(data, series.band, leastExtent(id));
  const scale = counts ? countScale(domain, range) : linearScale(domain, range);
  return { scale, counts, ticks: ticksOf({ id, series, scale, counts, tickSpacing }) };
}

function extent(values: readonly number[]): [number, number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const value of values) {
    if (!Number.isFinite(value)) continue;
    low = Math.min(low, value);
    high = Math.max(high, value);
  }
  return low <= high ? [low, high] : [0, 1];
}

/** So that noise in the last digit does not fill the strip: eight steps of the digit shown. */
function leastExtent(id: SeriesId): number {
  const digits = id in SERIES ? seriesSpec(id).digits : 2;
  return 8 * 10 ** -digits;
}

function plainDomain(data: [number, number], band: QuantileSeries['band'], least: number): [number, number] {
  const span = Math.max(data[1] - data[0], least);
  const centre = (data[0] + data[1]) / 2;
  let [low, high] = [Math.min(data[0], centre - least / 2), Math.max(data[1], centre + least / 2)];
  if (band?.low !== undefined && band.low > low - REACH * span) low = Math.min(low, band.low);
  if (band?.high !== undefined && band.high < high + REACH * span) high = Math.max(high, band.high);
  if (band?.low !== undefined && band.low > high) high = band.low;
  if (band?.high !== undefined && band.high < low) low = band.high;
  const air = (high - low) * 0.08;
  return [data[0] >= 0 ? Math.max(0, low - air) : low - air, high + air];
}

function countDomain(data: [number, number], band: QuantileSeries['band']): [number, number] {
  const low = Math.max(0, data[0]);
  const high = Math.max(data[1], 3);
  const floor = low < 3 ? 0 : low / 1.5;
  const near = band?.high !== undefined && band.high < high * 6 ? band.high : high;
  const nearLow = band?.low !== undefined && band.low > floor / 6 ? band.low : floor;
  return [Math.min(floor, nearLow), Math.max(high, near) * 1.3];
}

interface TickRequest {
  readonly id: SeriesId;
  readonly series: QuantileSeries;
  readonly scale: Scale;
  readonly counts: boolean;
  readonly tickSpacing: number;
}

/** Band edges first, then round values that keep their distance from them and from one another. */
function ticksOf({ series, scale, counts, tickSpacing }: TickRequest): Tick[] {
  const [bottom, top] = scale.range;
  const room = Math.max(2, Math.floor(Math.abs(bottom - top) / tickSpacing));
  const step = roundStep((scale.domain[1] - scale.domain[0]) / room);
  const digits = counts ? 0 : stepDigits(step);
  const limits = (['low', 'high'] as const).flatMap((limit): Tick[] => {
    const value = series.band?.[limit];
    if (value === undefined || value < scale.domain[0] || value > scale.domain[1]) return [];
    return [{ value, text: `${limit === 'low' ? '≥' : '≤'} ${limitText(value, digits)}`, limit }];
  });
  const kept: Tick[] = [];
  const clear = (value: number) =>
    kept.every((tick) => Math.abs(scale.toPixel(tick.value) - scale.toPixel(value)) >= tickSpacing);
  for (const tick of limits) if (clear(tick.value)) kept.push(tick);
  const round = counts ? countTicks(scale.domain) : roundTicks(scale.domain, room);
  for (const value of counts ? decadesFirst(round) : endsFirst(round))
    if (clear(value)) kept.push({ value, text: tickText(value, digits) });
  return kept.sort((a, b) => a.value - b.value);
}

/** Ends before the middle, so that a short axis shows its extent. */
function endsFirst(values: readonly number[]): number[] {
  const ends = [values[0], values[values.length - 1]].filter((value) => value !== undefined);
  return [...new Set([...ends, ...values])];
}

/** Zero, then the powers of ten, then what lies between them. */
function decadesFirst(values: readonly number[]): number[] {
  const isDecade = (value: number) => value === 0 || Number.isInteger(Math.log10(value));
  return [...values.filter(isDecade), ...values.filter((value) => !isDecade(value))];
}

function limitText(value: number, digits: number): string {
  const short = value.toFixed(digits);
  return Number(short) === value ? tickText(value, digits) : String(Number(value.toPrecision(4)));
}

function tickText(value: number, digits: number): string {
  return numberText(value, digits);
}
