import type { QuantileSeries, SeriesId } from '@shoreglass/engine';
import { valueAxis } from '../scale/value-axis.ts';
import { condensed } from './sparkline.ts';

export interface TextFanOptions {
  readonly id: SeriesId;
  readonly series: QuantileSeries;
  /** Characters across, axis figures included, and rows. */
  readonly width: number;
  readonly height: number;
  readonly ascii?: boolean;
}

interface Marks {
  readonly median: string;
  readonly inner: string;
  readonly outer: string;
  readonly limit: string;
  readonly axis: string;
}

const UNICODE: Marks = { median: '█', inner: '▒', outer: '░', limit: '·', axis: '│' };
const ASCII: Marks = { median: '#', inner: '+', outer: '.', limit: '-', axis: '|' };

/** A fan chart as lines of text: median, half and nine tenths of the runs, dots along the edges of the band. */
export function textFan({ id, series, width, height, ascii = false }: TextFanOptions): string[] {
  const marks = ascii ? ASCII : UNICODE;
  const axis = valueAxis({ id, series, range: [height - 1, 0], tickSpacing: 2 });
  const figures = axis.ticks.map(({ text, value }) => ({
    text: ascii ? plainText(text) : text,
    row: Math.round(axis.scale.toPixel(value)),
  }));
  const margin = figures.reduce((most, { text }) => Math.max(most, text.length), 0);
  const columns = Math.max(1, width - margin - 2);
  const course = (values: readonly number[]) =>
    condensed(values, columns).map((value) => Math.round(axis.scale.toPixel(value)));
  const rows = {
    q05: course(series.q05),
    q25: course(series.q25),
    q50: course(series.q50),
    q75: course(series.q75),
    q95: course(series.q95),
  };
  const limits = axis.ticks
    .filter((tick) => tick.limit)
    .map((tick) => Math.round(axis.scale.toPixel(tick.value)));
  return Array.from({ length: height }, (_, row) => {
    const figure = figures.find((candidate) => candidate.row === row)?.text ?? '';
    const cells = rows.q50.map((median, column) => {
      const within = (low: number | undefined, high: number | undefined) =>
        row <= (low ?? -1) && row >= (high ?? height);
      if (median === row) return marks.median;
      if (within(rows.q25[column], rows.q75[column])) return marks.inner;
      if (within(rows.q05[column], rows.q95[column])) return marks.outer;
      return limits.includes(row) ? marks.limit : ' ';
    });
    return `${figure.padStart(margin)} ${marks.axis}${cells.join('')}`.trimEnd();
  });
}

function plainText(text: string): string {
  return text.replace('≥', '>=').replace('≤', '<=').replace('−', '-');
}
