import type { AheadDocument, QuantileSeries, SeriesId } from '@shoreglass/engine';

/** What a series says of one day: median and the middle half of the runs, and where it stands to its band. */
export interface Estimate {
  readonly median: number;
  readonly low: number;
  readonly high: number;
  readonly beyond?: BeyondBand;
  /** Of a population that nobody has seen yet: the day of the run on which it comes, or that it comes in some runs only. */
  readonly coming?: number | 'in some runs';
}

/** The median lies outside what somebody needs. */
export interface BeyondBand {
  readonly side: 'below' | 'above';
  readonly limit: number;
  readonly owner?: string;
}

export const DAY_SERIES = [
  'waterLevel',
  'waterVolume',
  'waterTemperature',
  'airTemperature',
  'relativeHumidity',
  'glassFog',
  'plantCover',
  'floatingCover',
  'emersedCover',
  'attachedAlgae',
  'litter',
  'detritus',
  'carbonateSolid',
] as const satisfies readonly SeriesId[];

export type DaySeries = (typeof DAY_SERIES)[number];

/** What the section drawing shows of one day; a series the document lacks is absent. */
export type DayState = { readonly day: number } & Readonly<Partial<Record<DaySeries, Estimate>>> & {
    /** By population id. */
    readonly populations: Readonly<Record<string, Estimate>>;
    /** Covers of plantings on land [%], by planting id. */
    readonly plantings?: Readonly<Record<string, Estimate>>;
  };

/** The state of a day, between recorded days straight in between, before the first and after the last held. */
export function dayStateOf(document: AheadDocument, day: number): DayState {
  const estimates: Partial<Record<DaySeries, Estimate>> = {};
  for (const id of DAY_SERIES) {
    const estimate = estimateOf(document.series[id], day);
    if (estimate) estimates[id] = estimate;
  }
  const populations: Record<string, Estimate> = {};
  const plantings: Record<string, Estimate> = {};
  for (const [id, series] of Object.entries(document.series)) {
    const [kind, population, stage] = id.split(':');
    if (population === undefined || stage !== undefined) continue;
    const estimate = estimateOf(series, day);
    if (!estimate) continue;
    if (kind === 'population') populations[population] = withComing(estimate, series, day);
    if (kind === 'planting') plantings[population] = estimate;
  }
  return { day, ...estimates, populations, plantings };
}

/** From so many animals on one is there. */
const SOMEBODY = 0.5;

/** The same, told apart from one that has died out: here nobody has been there up to the day. */
function withComing(estimate: Estimate, series: QuantileSeries, day: number): Estimate {
  if (estimate.median >= SOMEBODY) return estimate;
  const { days, q50, q95 } = series;
  const come = days[q95.findIndex((count) => count >= SOMEBODY)];
  if (come !== undefined && day < come) return { ...estimate, coming: come };
  const wasThere = days.some((recorded, at) => recorded <= day && (q50[at] ?? 0) >= SOMEBODY);
  return come === undefined || wasThere ? estimate : { ...estimate, coming: 'in some runs' };
}

/** Median, middle half and band position of one series on a day; undefined when it holds nothing finite there. */
export function estimateOf(series: QuantileSeries | undefined, day: number): Estimate | undefined {
  if (!series || series.days.length === 0) return undefined;
  const median = valueOn(series, 'q50', day);
  const [low, high] = [valueOn(series, 'q25', day), valueOn(series, 'q75', day)];
  if (![median, low, high].every(Number.isFinite)) return undefined;
  const beyond = beyondBand(series.band, median);
  return { median, low, high, ...(beyond ? { beyond } : {}) };
}

export type QuantileKey = 'expected' | 'q05' | 'q25' | 'q50' | 'q75' | 'q95';

/** A quantile on a day, straight between recorded days. */
export function valueOn(series: QuantileSeries, key: QuantileKey, day: number): number {
  const { days } = series;
  const values = series[key];
  let after = days.findIndex((recorded) => recorded >= day);
  if (after < 0) after = days.length - 1;
  const before = Math.max(0, after - 1);
  const [start, end] = [days[before] ?? 0, days[after] ?? 0];
  const share = end > start ? Math.min(1, Math.max(0, (day - start) / (end - start))) : 1;
  return (values[before] ?? Number.NaN) * (1 - share) + (values[after] ?? Number.NaN) * share;
}

function beyondBand(band: QuantileSeries['band'], value: number): BeyondBand | undefined {
  if (band?.low !== undefined && value < band.low)
    return { side: 'below', limit: band.low, ...(band.lowOwner ? { owner: band.lowOwner } : {}) };
  if (band?.high !== undefined && value > band.high)
    return { side: 'above', limit: band.high, ...(band.highOwner ? { owner: band.highOwner } : {}) };
  return undefined;
}
