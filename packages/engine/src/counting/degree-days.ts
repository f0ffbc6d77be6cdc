import { atan, cos } from '../numerics/elementary.ts';

/** A day's coldest and warmest [°C], and from where on warmth counts. */
export interface WarmDay {
  readonly coldest: number;
  readonly warmest: number;
  /** Below this nothing develops [°C]. */
  readonly threshold: number;
}

/**
 * Degree-days of a day [°C d], >= 0, its temperature a sine between the coldest and the warmest:
 *   ((M - T)(pi/2 - theta) + A cos theta)/pi,  theta = asin((T - M)/A),  M the mean, A half the range
 * @param day coldest, warmest and threshold; coldest <= warmest
 * @throws RangeError when they are not numbers or the coldest is above the warmest
 * @source baskerville-emin-1969
 */
export function degreeDays({ coldest, warmest, threshold }: WarmDay): number {
  const mean = (coldest + warmest) / 2;
  const reach = (warmest - coldest) / 2;
  if (!(reach >= 0 && Number.isFinite(mean + threshold)))
    throw new RangeError(`a day from ${coldest} to ${warmest} °C above ${threshold} °C`);
  if (threshold <= coldest) return mean - threshold;
  if (threshold >= warmest) return 0;
  const part = (threshold - mean) / reach;
  const theta = atan(part / Math.sqrt((1 - part) * (1 + part)));
  return ((mean - threshold) * (Math.PI / 2 - theta) + reach * cos(theta)) / Math.PI;
}
