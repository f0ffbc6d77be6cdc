import { type QuantileSeries, SERIES, type SeriesId, seriesSpec } from '@shoreglass/engine';
import type { Estimate } from '../day/day-state.ts';
import { countText, numberText } from './number-text.ts';

/** A series' value of one day in words: number, unit, and which edge of its band it has passed. */
export interface SeriesText {
  readonly value: string;
  readonly unit: string;
  readonly alarm?: string;
}

export function seriesText(id: SeriesId, series: QuantileSeries, estimate: Estimate | undefined): SeriesText {
  const counts = id.startsWith('population:');
  const unit = counts ? '' : series.unit;
  if (!estimate) return { value: '–', unit };
  const digits = seriesDigits(id);
  const value = counts ? countText(estimate.median) : numberText(estimate.median, digits);
  const { beyond } = estimate;
  return {
    value,
    unit,
    ...(beyond ? { alarm: `${beyond.side} ${Number(beyond.limit.toPrecision(4))}` } : {}),
  };
}

/** Digits a series is shown with; the engine's list decides. */
export function seriesDigits(id: SeriesId): number {
  return id in SERIES || id.startsWith('population:') || id.startsWith('planting:')
    ? seriesSpec(id).digits
    : 2;
}
