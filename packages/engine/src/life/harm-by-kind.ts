import type { PreyKind } from './traits.ts';

/** Medians of a kind: lethal in four days, and the factor one geometric standard deviation is. */
export interface Lethal {
  readonly median: number;
  readonly spread: number;
}

/** How harmful what is to a kind of animal. */
export interface KindRules {
  /** [mg N/L] at 20 mg/L chloride. */
  readonly nitrite: Lethal;
  /** Chloride that doubles the nitrite borne [mg/L]. */
  readonly chloride: number;
  /** [µg/L] at 50 mg/L hardness. */
  readonly copper: Lethal;
  /** Highest conductivity tolerated, and excess at which half die in four days [mS/cm]. */
  readonly salt: readonly [high: number, margin: number];
}

/** Chloride that doubles the nitrite borne by gills that take chloride up, and by animals without such [mg/L]. */
const GILLS = 20;
const NO_GILLS = 1000;

/**
 * By kind of animal, from the tests named; every median is the middle of a wide scatter.
 * nitrite: amphipods 2.1 and planarians 60 mg N/L (alonso-camargo-2006, recalled); insects below crustaceans below
 * molluscs, over two orders (soucek-dickinson-2012); guppy 9.2 and zebrafish 74 mg N/L at about 19 mg/L chloride (Doleželová et
 * al. 2011, Voslářová et al. 2006); newly hatched amphibians of five species all below 2 mg N/L in 15 days (marco-1999).
 * Doubling chloride: trout below 1 mg/L, largemouth bass none (lewis-morris-1986 recalled, tomasso-1986); 20 is judgement.
 * copper: arthur-leonard-1970 for amphipods and snails; us-epa-copper-1985 (recalled) for water fleas, worms and guppies.
 * salt: 72 h lethal 9 to 14 mS/cm of gastropods, worms and planarians, 38 to 76 of decapods, isopods and amphipods
 * (kefford-2003); fish and water fleas from memory.
 */
export const HARM_BY_KIND: Readonly<Record<PreyKind | 'unknown', KindRules>> = {
  plankton: {
    nitrite: { median: 10, spread: 2 },
    chloride: GILLS,
    copper: { median: 21, spread: 1.8 },
    salt: [4, 5],
  },
  'small arthropods': {
    nitrite: { median: 6, spread: 2 },
    chloride: GILLS,
    copper: { median: 60, spread: 2 },
    salt: [6, 8],
  },
  crustaceans: {
    nitrite: { median: 6, spread: 2 },
    chloride: GILLS,
    copper: { median: 30, spread: 1.8 },
    salt: [10, 20],
  },
  snails: {
    nitrite: { median: 100, spread: 2 },
    chloride: NO_GILLS,
    copper: { median: 60, spread: 2 },
    salt: [5, 6],
  },
  worms: {
    nitrite: { median: 40, spread: 2 },
    chloride: NO_GILLS,
    copper: { median: 70, spread: 1.8 },
    salt: [5, 6],
  },
  fish: {
    nitrite: { median: 12, spread: 2.2 },
    chloride: GILLS,
    copper: { median: 100, spread: 1.8 },
    salt: [6, 8],
  },
  amphibians: {
    nitrite: { median: 3, spread: 1.8 },
    chloride: GILLS,
    copper: { median: 60, spread: 2 },
    salt: [3, 5],
  },
  reptiles: {
    nitrite: { median: 100, spread: 2 },
    chloride: NO_GILLS,
    copper: { median: 1000, spread: 2 },
    salt: [20, 20],
  },
  unknown: {
    nitrite: { median: 15, spread: 2.5 },
    chloride: NO_GILLS,
    copper: { median: 40, spread: 2.2 },
    salt: [3, 4],
  },
};
