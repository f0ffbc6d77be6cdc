import type { Band } from '../plan/plan.ts';
import type { SeriesId } from '../run/series.ts';

export interface Limit {
  readonly value: number;
  readonly owner: string;
  readonly source: string;
}

/** The narrowest range that suits everybody, with the owner of each end. */
export interface CommonBand {
  readonly series: SeriesId;
  readonly low?: Limit;
  readonly high?: Limit;
}

/** Returns one common band per series: highest low end and lowest high end. `derived`. */
export function commonBands(bands: readonly Band[]): CommonBand[] {
  const bySeries = new Map<SeriesId, { low?: Limit; high?: Limit }>();
  for (const { series, low, high, owner, source } of bands) {
    const common = bySeries.get(series) ?? {};
    if (low !== undefined && (common.low === undefined || low > common.low.value)) {
      common.low = { value: low, owner, source };
    }
    if (high !== undefined && (common.high === undefined || high < common.high.value)) {
      common.high = { value: high, owner, source };
    }
    bySeries.set(series, common);
  }
  return [...bySeries].map(([series, ends]) => ({ series, ...ends }));
}
