import type { Side } from './bands.ts';

/** Days running outside a band before it counts as left. */
export const DAYS_TO_LEAVE = 3;

/** Returns the first day of the first stretch of at least three days beyond the day's limit, or -1. `derived`. */
export function firstLeaving(series: Float64Array, limits: Float64Array, side: Side): number {
  let outside = 0;
  for (let day = 0; day < series.length; day += 1) {
    const beyond = side === 'low' ? series[day]! < limits[day]! : series[day]! > limits[day]!;
    outside = beyond ? outside + 1 : 0;
    if (outside === DAYS_TO_LEAVE) return day - DAYS_TO_LEAVE + 1;
  }
  return outside > 0 && series.length < DAYS_TO_LEAVE ? 0 : -1;
}

/** Returns the first day a count is zero after having been more, or -1. `derived`. */
export function firstEmpty(count: Float64Array): number {
  let alive = false;
  for (let day = 0; day < count.length; day += 1) {
    if (count[day]! >= 0.5) alive = true;
    else if (alive) return day;
  }
  return -1;
}

/** Returns the first day on which a series is more than `threshold`, or -1. `derived`. */
export function firstAbove(series: Float64Array, threshold: number): number {
  return series.findIndex((value) => value > threshold);
}
