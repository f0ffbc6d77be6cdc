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

export interface FanFrame {
  toX(day: number): number;
  toY(value: number): number;
  readonly width: number;
  readonly palette: Palette;
}

/** The outlook of a series: nine tenths of the runs, half of them, the median, and the expected run dashed. */
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
  return group({ 'data-part': 'fan' }, [
    element('path', { d: between('q05', 'q95'), fill: palette.fanOuter, 'fill-opacity': 0.8 }),
    element('path', { d: between('q25', 'q75'), fill: palette.fanInner, 'fill-opacity': 0.85 }),
    element('path', {
      ...pen,
      d: course('expected'),
      'stroke-width': 0.8,
      'stroke-dasharray': '2 3',
      'stroke-opacity': 0.8,
    }),
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
