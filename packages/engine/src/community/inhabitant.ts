import type { DayLight } from '../life/awake.ts';
import type { Shore } from '../life/drowning.ts';
import type { AnimalTraits, PreyKind } from '../life/traits.ts';
import type { SeriesId } from '../run/series.ts';

/** A statement with where it comes from. */
export interface Sourced {
  readonly value: number;
  readonly source: string;
}

export type RiskKind =
  | 'law'
  | 'invasive'
  | 'welfare'
  | 'toxin'
  | 'zoonosis'
  | 'disease'
  | 'escape'
  | 'handling';

/** What must be known of a species, and of how many are planned, to tell who can live with whom. */
export interface Inhabitant {
  readonly id: string;
  readonly name: string;
  readonly scientificName: string;
  readonly traits: AnimalTraits;
  /** Ranges in which it is fine, in the unit of the series. */
  readonly ranges: readonly {
    readonly series: SeriesId;
    readonly low?: Sourced;
    readonly high?: Sourced;
  }[];
  /** Planned, adults and young; left out when only species are compared. */
  readonly count?: number;
  /** Day of the run on which the first of them move in. */
  readonly firstDay?: number;
  /** Whether they only come along by accident. */
  readonly isGuest?: boolean;
  readonly leastFounders: Sourced;
  readonly ways: {
    readonly climbsGlass?: boolean | undefined;
    readonly jumps?: boolean | undefined;
    readonly flies?: boolean | undefined;
    readonly needsTightLid?: boolean | undefined;
    readonly needsWayOut?: boolean | undefined;
  };
  /** Needed by the smallest group: floor [cm2], water [L], height [cm]; claimed by each adult [cm2]. */
  readonly space: {
    readonly floor?: Sourced;
    readonly water?: Sourced;
    readonly height?: Sourced;
    readonly groundPerAdult?: Sourced;
  };
  readonly risks: readonly { readonly kind: RiskKind; readonly text: string; readonly source: string }[];
}

/** What can be told of a quantity before any run: its lowest and highest course, in the unit of the series. */
export interface Expected {
  readonly series: SeriesId;
  readonly low: number;
  readonly high: number;
  readonly from: 'the room' | 'the fill water';
}

/** What matters of the place: areas [cm2], water [L], height [cm], ways out, and what is fed where. */
export interface PlaceFacts {
  readonly floor: number;
  readonly landFloor: number;
  readonly water: number;
  readonly height: number;
  /** Part of the cover that is open and not meshed [0..1]. */
  readonly openCover: number;
  /** Vents, mesh, slits and the overflow: what it is called, and the width of a body that passes [mm]. */
  readonly gaps: readonly { readonly name: string; readonly width: number }[];
  /** Where water and land meet. */
  readonly shore?: Shore;
  /** What it is filled with: conductivity [mS/cm], general hardness [degrees dGH], copper [µg/L]. */
  readonly fill?: { readonly conductivity: number; readonly hardness: number; readonly copper: number };
  /** What room and fill water give. */
  readonly expected?: readonly Expected[];
  /** Whether the filter is run in on the first day. */
  readonly isRunIn?: boolean;
  /** Whether water plants are bought, and guests listed with a chance to come along with them. */
  readonly guests?: { readonly waterPlants: boolean; readonly areListed: boolean };
  readonly feedsWater: boolean;
  readonly feedsLand: boolean;
  /** Feedings at an hour: where, when ('21:00') and in which light. */
  /** Names of feeds of plants that are given into the water. */
  readonly vegetables?: readonly string[];
  readonly feedings?: readonly {
    readonly onLand: boolean;
    readonly time: string;
    readonly light: DayLight;
  }[];
}

export const CONFLICT_KINDS = [
  'range',
  'eaten',
  'mouth',
  'leftovers',
  'few',
  'space',
  'way out',
  'drowning',
  'calcium',
  'salt',
  'copper',
  'too soon',
  'never breeds',
  'guests',
  'toxin',
  'disease',
  'law',
  'welfare',
] as const;
export type ConflictKind = (typeof CONFLICT_KINDS)[number];

/** Something that does not go together, as a sentence with its reason and its mend. */
export interface Conflict {
  readonly kind: ConflictKind;
  /** Ids of those concerned, the one to blame or to suffer first. */
  readonly who: readonly string[];
  readonly severity: 'warning' | 'note';
  /** One sentence that says what and why. */
  readonly sentence: string;
  readonly source: string;
  /** What would resolve it. */
  readonly mend: string;
}

export const median = ({ traits }: Inhabitant, id: keyof AnimalTraits['priors']): number =>
  traits.priors[id].median;

/** Prey kinds in the words of a sentence. */
export const PREY_WORDS: Readonly<Record<PreyKind, string>> = {
  plankton: 'water fleas and the like',
  'small arthropods': 'springtails, woodlice and insects',
  crustaceans: 'shrimps and other crustaceans',
  snails: 'snails',
  worms: 'worms',
  fish: 'fish',
  amphibians: 'frogs and newts',
  reptiles: 'small reptiles',
};

/** A number with no more digits than it is worth. */
export function shown(value: number): string {
  const size = Math.abs(value);
  if (size >= 100) return value.toFixed(0);
  if (size >= 10) return String(Number(value.toFixed(1)));
  return String(Number(value.toPrecision(2)));
}
