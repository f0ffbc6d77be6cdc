import type { HardscapePiece } from '../plan/plan.ts';

/** What one piece of wood, litter or peat does to the water over the run, from runs with and without it. */
export interface PieceEffect {
  readonly piece: string;
  readonly name: string;
  readonly kind: HardscapePiece['kind'];
  /** Dry mass [kg]. */
  readonly mass: number;
  readonly courses: readonly EffectCourse[];
  readonly sentence: string;
}

/** A series with the piece less the same without it, day by day. */
export interface EffectCourse {
  readonly series: EffectSeries;
  readonly name: string;
  readonly unit: string;
  readonly expected: readonly number[];
  /** 5, 50 and 95 % over the members. */
  readonly q05: readonly number[];
  readonly q50: readonly number[];
  readonly q95: readonly number[];
  /** The day on which the median effect is largest, and the effect then. */
  readonly largest: {
    readonly day: number;
    readonly q05: number;
    readonly q50: number;
    readonly q95: number;
  };
  /** First day on which the median has come nine tenths of the way to its largest. */
  readonly mostlyBy: number;
}

export type EffectSeries = 'pH' | 'KH' | 'dissolvedOrganicCarbon';
