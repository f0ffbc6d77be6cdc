import type { SeriesId } from '../run/series.ts';
import type { Budget } from './budget.ts';

/** The outlook as one document: what `ahead --json` prints and the app draws. Days count from the run's start. */
export interface AheadDocument {
  readonly enclosure: { readonly id: string; readonly name: string; readonly startDate: string };
  readonly run: {
    readonly days: number;
    readonly members: number;
    readonly seed: number;
    readonly engineVersion: string;
  };
  readonly series: Readonly<Record<string, QuantileSeries>>;
  readonly turningPoints: readonly TurningPoint[];
  readonly handsOffHorizon: HandsOffHorizon;
  /** Who adds and who removes, over the expected run. */
  readonly budgets: readonly Budget[];
  /** Relative closure error of each balance over the expected run, events included. */
  readonly closure: Readonly<
    Record<'nitrogen' | 'phosphorus' | 'carbon' | 'oxygen' | 'calcium' | 'alkalinity' | 'water', number>
  >;
  readonly notModelled: readonly string[];
}

export interface QuantileSeries {
  readonly name: string;
  readonly unit: string;
  readonly band?: {
    readonly low?: number;
    readonly high?: number;
    readonly lowOwner?: string;
    readonly highOwner?: string;
  };
  /** Day of the run of each value; the arrays below have the same length. */
  readonly days: readonly number[];
  readonly expected: readonly number[];
  readonly q05: readonly number[];
  readonly q25: readonly number[];
  readonly q50: readonly number[];
  readonly q75: readonly number[];
  readonly q95: readonly number[];
}

export type TurningPointKind = 'falls below' | 'rises above' | 'returns' | 'first young' | 'dies out';

export interface TurningPoint {
  readonly id: string;
  readonly subject: SeriesId;
  readonly kind: TurningPointKind;
  /** Share of members in which it happens within the run [0..1]. */
  readonly probability: number;
  /** 10, 50 and 90 % of the day on which it happens, among those members. */
  readonly window: { readonly early: number; readonly median: number; readonly late: number };
  readonly band: {
    readonly low?: number;
    readonly high?: number;
    readonly unit: string;
    readonly owner: string;
    readonly source: string;
  };
  /** Largest terms of the budget behind it over the 30 days before, share of what pushes that way [0..1]. */
  readonly because: readonly { readonly term: string; readonly share: number }[];
  /** What slowed the animals it is about in those days, as a sentence; left out where nothing did much. */
  readonly slowed?: string;
  /** All of it in sentences for people. */
  readonly sentence: string;
}

export interface HandsOffHorizon {
  /** Days until the first band is left for 3 days running; the run's length where it is not left. */
  readonly q10: number;
  readonly q50: number;
  readonly q90: number;
  /** Share of members that stay within all bands to the end. */
  readonly unbroken: number;
  readonly limitedBy: readonly {
    readonly subject: SeriesId;
    readonly kind: TurningPointKind;
    readonly owner: string;
    readonly share: number;
  }[];
}
