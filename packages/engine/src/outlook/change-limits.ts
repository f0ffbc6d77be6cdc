import type { ChangeLimit } from '../plan/change-limit.ts';
import type { WaterComposition } from '../plan/water-composition.ts';

/** Water with what decides how animals feel it. */
export interface HeldWater {
  readonly composition: WaterComposition;
  /** [degC] */
  readonly temperature: number;
}

/** Work that would move the water: replacing a share of it, or dissolving something in it. */
export type WaterProposal =
  | { readonly kind: 'water change'; readonly fraction: number; readonly water: HeldWater }
  | {
      readonly kind: 'dose';
      readonly name: string;
      /** Dry mass of the whole dose [kg]. */
      readonly mass: number;
      /** What the whole dose adds to the pool [mol/m3]. */
      readonly adds: Partial<WaterComposition>;
    };

/** The work spread over days. */
export interface SplitChange {
  readonly steps: readonly ChangeStep[];
  readonly limits: readonly ChangeLimit[];
  readonly before: FeltWater;
  /** The limit that decided the size of most steps, when more than one was needed. */
  readonly decidedBy?: ChangeLimit;
  readonly sentence: string;
}

export interface ChangeStep {
  /** Days after the first. */
  readonly day: number;
  /** Share of the water to replace [0..1], or mass of the dose [kg]. */
  readonly amount: number;
  readonly after: FeltWater;
}

/** As the animals feel it, in balance with the room's air. */
export interface FeltWater {
  readonly pH: number;
  /** [dKH] */
  readonly KH: number;
  /** [dGH] */
  readonly GH: number;
  /** At 25 degC [uS/cm]. */
  readonly conductivity: number;
  /** [degC] */
  readonly temperature: number;
}
