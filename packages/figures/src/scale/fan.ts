import type { QuantileSeries } from '@shoreglass/engine';
import { area, line } from 'd3-shape';
import type { Palette } from '../palette/palette.ts';
import { element, group, type SceneNode } from '../scene/scene.ts';

interface Sample {
  readonly day: number;
  readonly q05: number;
  readonly q25: number;
  readonly q50: number;
  readonly q75: number;
  readonly q95: number;
  readonly expected: number;
}

/** Dashes of the expected run, in the chart and in its legend. */
export const EXPECTED_DASH = '2 3';

export interface FanFrame {
  toX(day: number): number;
  toY(value: number): number;
  readonly width: number;
  readonly palette: Palette;
}

/** Whether runs differ in a series; while only the expected run is in, all its quantiles are that run. `derived`. */
export function isSpread({ q05, q95 }: Pick<QuantileSeries, 'q05' | 'q95'>): boolean {
  return q05.some((low, at) => low !== q95[at] && Number.isFinite(low));
}

/** The outlook of a series: nine tenths of the runs, half of them, the median, and the expected run dashed; that alone where no runs differ. */
export function fan(series: QuantileSeries, { toX, toY, width, palette }: FanFrame): SceneNode {
  const samples = thinned(series, Math.max(24, Math.round(width / 1.5)));
  const between = (low: keyof Sample, high: keyof Sample) =>
    area<Sample>()
      .x((sample) => toX(sample.day))
      .y0((sample) => toY(sample[low]))
      .y1((sample) => toY(sample[high]))
      .digits(1)([...samples]) ?? '';
  const course = (key: keyof Sample) =>
    line<Sample>()
      .x((sample) => toX(sample.day))
      .y((sample) => toY(sample[key]))
      .digits(1)([...samples]) ?? '';
  const pen = { fill: 'none', stroke: palette.ink, 'stroke-linejoin': 'round' };
  const dashed = (width: number, opacity: number): SceneNode =>
    element('path', {
      ...pen,
      d: course('expected'),
      'stroke-width': width,
      'stroke-dasharray': EXPECTED_DASH,
      'stroke-opacity': opacity,
    });
  if (!isSpread(series)) return group({ 'data-part': 'fan' }, [dashed(1.4, 1)]);
  return group({ 'data-part': 'fan' }, [
    element('path', { d: between('q05', 'q95'), fill: palette.fanOuter, 'fill-opacity': 0.8 }),
    element('path', { d: between('q25', 'q75'), fill: palette.fanInner, 'fill-opacity': 0.85 }),
    dashed(0.8, 0.8),
    element('path', { ...pen, d: course('q50'), 'stroke-width': 1.4 }),
  ]);
}

/** At most `most` samples, first and last kept; days at which a value is not finite are left out. */
function thinned(series: QuantileSeries, most: number): Sample[] {
  const step = Math.max(1, Math.ceil(series.days.length / most));
  const last = series.days.length - 1;
  const samples = series.days.map((day, index) => sampleAt(series, day, index));
  return samples.filter(
    (sample, index) =>
      (index % step === 0 || index === last) &&
      Object.values(sample).every((value) => Number.isFinite(value)),
  );
}

function sampleAt(series: QuantileSeries, day: number, index: number): Sample {
  const at = (values: readonly number[]) => values[index] ?? Number.NaN;
  return {
    day,
    q05: at(series.q05),
    q25: at(series.q25),
    q50: at(series.q50),
    q75: at(series.q75),
    q95: at(series.q95),
    expected: at(series.expected),
  };
}
