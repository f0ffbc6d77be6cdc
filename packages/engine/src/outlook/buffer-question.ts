import type { Band, HardscapePiece } from '../plan/plan.ts';

/** A carbonate on offer: what one kilogram is as a piece, and the grains it is to be had in. */
export interface BufferOffer {
  readonly material: string;
  readonly name: string;
  /** The piece that 1 kg of it makes, lying loose in the water. */
  readonly perKilogram: HardscapePiece;
  /** Grain diameters [m]. */
  readonly grains: readonly number[];
}

export interface BufferQuestion {
  readonly offers: readonly BufferOffer[];
  /** Days for which pH and KH are to stay in band. */
  readonly days: number;
  /** Share of members that must stay in band all days [0.5..0.99]. */
  readonly probability: number;
  readonly seed: number;
  /** Bands of pH and KH to hold instead of those of who lives there. */
  readonly bands?: readonly Band[];
  /** Runs per mass while searching, and when confirming and then judging; 20 and 100 when left out. */
  readonly members?: { readonly search: number; readonly confirm: number };
}

/** A share of runs with its 90 % interval. */
export interface ShareOfRuns {
  readonly share: number;
  readonly low: number;
  readonly high: number;
  readonly runs: number;
}

export interface BufferAnswer {
  readonly verdict: 'not needed' | 'found' | 'cannot';
  readonly days: number;
  readonly probability: number;
  /** What is to be held, narrowest limits first. */
  readonly limits: readonly BufferLimit[];
  /** In band without any buffer. */
  readonly without: ShareOfRuns;
  /** One per material and grain, in the order asked. */
  readonly options: readonly BufferOption[];
  /** Position of the option to take: of those that hold, the one of least mass. */
  readonly best?: number;
  /** The answer for people. */
  readonly sentences: readonly string[];
  readonly runs: number;
}

export interface BufferLimit {
  readonly series: 'pH' | 'KH';
  readonly side: 'low' | 'high';
  readonly value: number;
  readonly owner: string;
}

export interface BufferOption {
  readonly material: string;
  readonly name: string;
  /** [m] */
  readonly grain: number;
  readonly verdict: 'found' | 'cannot';
  /** Found mass, rounded up to what can be weighed; else the mass that came closest [kg]. */
  readonly mass: number;
  readonly inBand: ShareOfRuns;
  /** Whether that is counted in runs without part in the choice; else in those that chose, which flatter. */
  readonly fresh: boolean;
  /** Undissolved at the end, share of the mass, median over members. */
  readonly left: number;
  /** Masses tried [kg] and the shares of runs in band. */
  readonly tried: readonly { readonly mass: number; readonly inBand: ShareOfRuns }[];
  /** Whether a larger mass never lowered a member's least KH, in all that was tried. */
  readonly monotone: boolean;
  /** Portions by day of the run, so that no day's change is too fast for the animals; one on day 0 when it may go in whole. */
  readonly portions: readonly { readonly day: number; readonly mass: number }[];
  /** Whether in these portions no day's change exceeds the animals' limits; true of what was not portioned yet. */
  readonly gentle: boolean;
  /** Why it cannot be done, from what was computed. */
  readonly because?: BufferObstacle;
  readonly sentence: string;
}

export type BufferObstacle =
  /** A lower limit is left in the first fortnight, before carbonate can be felt. */
  | 'too late'
  /** More of it helps, but even the most tried gives too little surface for what is used up. */
  | 'dissolves too slowly'
  /** Even the most tried is used up. */
  | 'acid too strong'
  /** Much is left and more of it no longer helps: the water is in balance with the carbonate. */
  | 'saturated'
  /** KH or pH passes an upper limit before the lower ones are held. */
  | 'rises too high';
