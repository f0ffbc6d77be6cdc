import type { WaterComposition } from './water-composition.ts';

/** Contents of 1 kg of a feed as given [mol/kg]. */
export interface FeedComposition {
  readonly id: string;
  readonly name: string;
  readonly carbon: number;
  readonly nitrogen: number;
  readonly phosphorus: number;
  /** Breakdown of what is not eaten, over that of flakes [1]; 1 when left out. */
  readonly pace?: number;
  /** Part of it that is of animals [0..1]: 0 vegetables, 1 insects; a half when left out. */
  readonly meaty?: number;
}

/** Care that repeats every `everyDays`, first on `firstDay` of the run (0 is the first day) and not after `lastDay`. */
export type Routine = RepeatedCare & {
  readonly everyDays: number;
  readonly firstDay: number;
  readonly lastDay?: number;
};
/** Care done once, on `day` of the run. */
export type Action = SingleCare & { readonly day: number };

/** Animals taken out: of one stage, at most so many. */
export interface Removal {
  readonly stage: 'juvenile' | 'adult';
  readonly count: number;
  /** Part of those there that a bait or a trap finds [0..1]; left out: all, as far as `count` goes. */
  readonly finds?: number;
}

export type RepeatedCare =
  | {
      readonly kind: 'feed';
      readonly feed: FeedComposition;
      readonly mass: number;
      readonly onLand?: boolean;
      /** Of the day at which it is given [h], 0 to below 24; left out: as the day begins, for all alike. */
      readonly hour?: number;
    }
  | { readonly kind: 'top-off' }
  | { readonly kind: 'water change'; readonly fraction: number; readonly water: WaterComposition }
  /**
   * Plants of a group are cut back to a cover; the submerged ones when no group is named. 'land' are all that stand in
   * dry ground. On land one zone may be named.
   */
  | {
      readonly kind: 'trim';
      readonly keepCover: number;
      readonly group?: 'submerged' | 'floating' | 'emersed' | 'moss' | 'land';
      readonly zone?: string;
      /** Cuttings stay and rot instead of leaving the glass. */
      readonly left?: boolean;
    }
  /** As many are taken out as are found, up to `count`. */
  | ({ readonly kind: 'remove animals'; readonly population: string } & Removal);

export type SingleCare =
  | RepeatedCare
  | {
      readonly kind: 'add animals';
      readonly population: string;
      readonly stage: 'juvenile' | 'adult';
      readonly count: number;
    }
  | {
      readonly kind: 'add carbonate';
      readonly amount: number;
      readonly grain: number;
      readonly mineral?: 'calcite' | 'aragonite';
    }
  | {
      readonly kind: 'add litter';
      readonly onLand?: boolean;
      /** Soluble part that leaves within days [mol C], not contained in `carbon`. */
      readonly leachable?: number;
      /** Breakdown over that of oak [1]; 1 when left out. */
      readonly pace?: number;
      readonly carbon: number;
      readonly nitrogen: number;
      readonly phosphorus: number;
    };

/** Days of a run on which a routine is due, in order. `derived`. */
export function dueDays({ everyDays, firstDay, lastDay }: Routine, days: number): number[] {
  const due: number[] = [];
  const end = Math.min(days - 1, lastDay ?? days - 1);
  for (let day = firstDay; day <= end; day += everyDays) due.push(day);
  return due;
}
