import type { Prior } from '../plan/prior.ts';
import { type Habitat, type PreyKind, TRAIT_SPECS, type TraitId } from './traits.ts';

/** What of a species decides how nitrite, copper, salt and open water harm it, where its file does not say. */
export interface HarmedKind {
  readonly habitat: Habitat;
  /** As what others hunt it; left out: nobody knows, widest spread. */
  readonly preyKind?: PreyKind;
  /** Conductivity it survives, where that is told [µS/cm]. */
  readonly conductivity?: { readonly low?: number; readonly high?: number };
  readonly needsWayOut?: boolean;
  readonly climbsGlass?: boolean;
}

/** Medians of a kind: lethal in four days, and the factor one geometric standard deviation is. */
interface Lethal {
  readonly median: number;
  readonly spread: number;
}

interface KindRules {
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
const RULES: Readonly<Record<PreyKind | 'unknown', KindRules>> = {
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

/**
 * Part of the lethal concentration that kills nobody, and how far draws of either reach: the threshold never reaches what four
 * days at the lethal concentration put into the body. @source assumed
 */
const NO_EFFECT = { nitrite: 0.12, copper: 0.25 } as const;
const REACH = {
  nitrite: { noEffect: [0.05, 0.2], lethal: [0.3, 4] },
  copper: { noEffect: [0.1, 0.3], lethal: [0.42, 4] },
} as const;
/** Rate at which the body follows the water [1/d]: methaemoglobin is back within one to three days (memory). @source assumed */
const RECOVERY = { nitrite: 1, copper: 0.7 } as const;

const lognormal = (median: number, spread: number, min: number, max: number): Prior => ({
  kind: 'lognormal',
  median,
  spread,
  min,
  max,
});
const fixed = (value: number): Prior => ({ kind: 'fixed', median: value, spread: 0, min: value, max: value });

/** Lognormal about a value, bounded at two and a half spreads and by the trait's range. */
function about(id: TraitId, median: number, spread: number): Prior {
  if (median === 0) return fixed(0);
  const { min, max } = TRAIT_SPECS[id];
  const reach = spread * spread * Math.sqrt(spread);
  return lognormal(median, spread, Math.max(min, median / reach), Math.min(max, median * reach));
}

/** Threshold and lethal concentration of a poison by the median of the kind, or by that the file states. */
function response(
  poison: 'nitrite' | 'copper',
  { median: ruled, spread }: Lethal,
  stated: Prior | undefined,
): readonly [Prior, Prior] {
  const median = stated?.median ?? ruled;
  const { noEffect, lethal } = REACH[poison];
  const scaled = (part: number): number => part * median;
  return [
    lognormal(scaled(NO_EFFECT[poison]), 1.3, scaled(noEffect[0]), scaled(noEffect[1])),
    lognormal(median, spread, scaled(lethal[0]), scaled(lethal[1])),
  ];
}

type Traits = Partial<Record<TraitId, Prior>>;

function poisonTraits(rules: KindRules, stated: Traits): Traits {
  const [nitriteNoEffect, nitriteMedianLethal] = response(
    'nitrite',
    rules.nitrite,
    stated.nitriteMedianLethal,
  );
  const [copperNoEffect, copperMedianLethal] = response('copper', rules.copper, stated.copperMedianLethal);
  return {
    nitriteNoEffect,
    nitriteMedianLethal,
    nitriteRecovery: about('nitriteRecovery', RECOVERY.nitrite, 1.2),
    nitriteChloride: about('nitriteChloride', rules.chloride, 1.6),
    copperNoEffect,
    copperMedianLethal,
    copperRecovery: about('copperRecovery', RECOVERY.copper, 1.2),
  };
}

/** Milli- per microsiemens. */
const PER_MILLI = 1000;
/**
 * Shortfall of conductivity at which half die in four days over the lowest tolerated [1]: fresh water then kills half of
 * those always in it in nine days, of those in it for a quarter of their time in 36. @source common practice, no source: mangrove crabs last in fresh water for weeks and fade
 */
const LOW_MARGIN = 1.5;
/** Excess at which half die over the highest tolerated, where that is told [1]. @source assumed */
const HIGH_MARGIN = 0.5;

function saltTraits({ salt }: KindRules, told: NonNullable<HarmedKind['conductivity']> = {}): Traits {
  const low = (told.low ?? 0) / PER_MILLI;
  const high = told.high === undefined ? salt[0] : told.high / PER_MILLI;
  const margin = told.high === undefined ? salt[1] : HIGH_MARGIN * high;
  return {
    saltLow: fixed(low),
    saltLowMargin: low > 0 ? about('saltLowMargin', LOW_MARGIN * low, 1.3) : fixed(1),
    saltHigh: about('saltHigh', high, 1.15),
    saltHighMargin: about('saltHighMargin', margin, 1.3),
  };
}

/**
 * Strip along the shore from which animals get into the water a day [m/d]: those that live half in it go there by
 * themselves; climbers get out by the glass four times in five. Time afloat [d] by place of life. @source assumed
 */
const STRAY = { land: 0.002, amphibious: 0.01, water: 0 } as const;
const CLIMBERS = 0.2;
const AFLOAT = { land: 0.5, amphibious: 3, water: 100 } as const;
const FLOATERS = 10;

function drowningTraits(kind: HarmedKind): Traits {
  const { habitat, needsWayOut = false, climbsGlass = false } = kind;
  if (habitat === 'water') return {};
  const stray = needsWayOut ? STRAY[habitat] * (climbsGlass ? CLIMBERS : 1) : 0;
  return {
    strayIntoWater: about('strayIntoWater', stray, 2),
    timeAfloat: about('timeAfloat', needsWayOut ? AFLOAT[habitat] : FLOATERS, 1.6),
  };
}

/**
 * How nitrite, copper, salt and open water harm a species whose file does not say, by its kind; spreads are wide, as tests
 * within one kind scatter over a factor of ten and more. Land animals meet neither poison nor salt of the water.
 * @param stated priors the file states itself, which win; thresholds go with the lethal concentrations stated
 * @source derived from the tests named at the table; constants assumed where their own line says so
 */
export function harmTraits(
  kind: HarmedKind,
  stated: Readonly<Partial<Record<TraitId, Prior>>> = {},
): Partial<Record<TraitId, Prior>> {
  const rules = RULES[kind.preyKind ?? 'unknown'];
  return {
    ...(kind.habitat === 'land'
      ? {}
      : { ...poisonTraits(rules, stated), ...saltTraits(rules, kind.conductivity) }),
    ...drowningTraits(kind),
    ...stated,
  };
}
