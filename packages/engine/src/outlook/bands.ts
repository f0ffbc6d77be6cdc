import type { Band } from '../plan/plan.ts';
import type { SeriesId } from '../run/series.ts';

export type Side = 'low' | 'high';

/** One end of somebody's band. */
export interface Limit {
  readonly value: number;
  readonly owner: string;
  readonly source: string;
  /** First day on which the owner lives here. */
  readonly fromDay: number;
}

/** Everybody's limits of a series on one side, the narrowest first. */
export interface Limits {
  readonly series: SeriesId;
  readonly side: Side;
  readonly limits: readonly Limit[];
}

/** Whether `a` is narrower than `b` on a side: a higher low end, a lower high end. `derived`. */
function compare(side: Side, a: Limit, b: Limit): number {
  return side === 'low' ? b.value - a.value : a.value - b.value;
}

/** Returns the limits of each series and side that anybody has. `derived`. */
export function limitsOf(bands: readonly Band[]): Limits[] {
  const found = new Map<string, { series: SeriesId; side: Side; limits: Limit[] }>();
  for (const { series, owner, source, fromDay = 0, ...ends } of bands) {
    for (const side of ['low', 'high'] as const) {
      const value = ends[side];
      if (value === undefined) continue;
      const key = `${series} ${side}`;
      const entry = found.get(key) ?? { series, side, limits: [] };
      entry.limits.push({ value, owner, source, fromDay });
      found.set(key, entry);
    }
  }
  return [...found.values()].map(({ series, side, limits }) => ({
    series,
    side,
    limits: limits.sort((a, b) => compare(side, a, b)),
  }));
}

/** The narrowest limit among those who live here on a day, or undefined. `derived`. */
export function limitOn({ limits }: Limits, day: number): Limit | undefined {
  return limits.find(({ fromDay }) => fromDay <= day);
}

/** Day by day the narrowest limit; infinitely wide while nobody with a limit lives here. `derived`. */
export function dailyLimits(limits: Limits, days: number): Float64Array {
  const widest = limits.side === 'low' ? Number.NEGATIVE_INFINITY : Number.POSITIVE_INFINITY;
  return Float64Array.from({ length: days }, (_, day) => limitOn(limits, day)?.value ?? widest);
}
