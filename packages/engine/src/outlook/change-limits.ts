import type { WaterComposition } from '../plan/water-composition.ts';

/** The fastest change somebody who lives there is to be put through. */
export interface ChangeLimit {
  readonly quantity: ChangeQuantity;
  /** Most in a day: pH units, °dKH, share of the conductivity before, K. */
  readonly perDay: number;
  readonly unit: string;
  readonly owner: string;
  readonly basis: string;
  readonly source: string;
}

export type ChangeQuantity = 'pH' | 'KH' | 'conductivity' | 'waterTemperature';

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
  readonly before: WaterState;
  /** The limit that decided the number of days, when more than one was needed. */
  readonly decidedBy?: ChangeLimit;
  readonly sentence: string;
}

export interface ChangeStep {
  /** Days after the first. */
  readonly day: number;
  /** Share of the water to replace [0..1], or mass of the dose [kg]. */
  readonly amount: number;
  readonly after: WaterState;
}

/** As the animals feel it, in balance with the room's air. */
export interface WaterState {
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
