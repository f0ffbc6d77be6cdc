import type { Prior } from '../plan/prior.ts';
import { HARM_BY_KIND, type KindRules, type Lethal } from './harm-by-kind.ts';
import { around, fixed } from './rule-priors.ts';
import { slowingTraits } from './slowing-rules.ts';
import type { Habitat, PreyKind, TraitId } from './traits.ts';

/** What of a species decides how nitrite, copper, salt and open water harm it, where its file does not say. */
export interface HarmedKind {
  readonly habitat: Habitat;
  /** As what others hunt it; left out: nobody knows, widest spread. */
  readonly preyKind?: PreyKind;
  /** Least oxygen it survives, where that is told [mg/L]. */
  readonly oxygen?: { readonly low?: number };
  /** Conductivity it survives, where that is told [µS/cm]. */
  readonly conductivity?: { readonly low?: number; readonly high?: number };
  readonly needsWayOut?: boolean;
  readonly climbsGlass?: boolean;
}

/**
 * Part of the lethal concentration that kills nobody, and how far draws of either reach: the threshold never reaches what four
 * days at the lethal concentration put into the body. Of four Daphnia 0.47 to 0.59 of what kills half of the newborn in three
 * days kill no more than usual over their lives; a little less is taken, so that draws never contradict each other.
 * @source winner-farrell-1976 for copper; nitrite assumed
 */
const NO_EFFECT = { nitrite: 0.12, copper: 0.35 } as const;
const REACH = {
  nitrite: { noEffect: [0.05, 0.2], lethal: [0.3, 4] },
  copper: { noEffect: [0.2, 0.38], lethal: [0.42, 4] },
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
    nitriteRecovery: around('nitriteRecovery', RECOVERY.nitrite, 1.2),
    nitriteChloride: around('nitriteChloride', rules.chloride, 1.6),
    copperNoEffect,
    copperMedianLethal,
    copperRecovery: around('copperRecovery', RECOVERY.copper, 1.2),
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
    saltLowMargin: low > 0 ? around('saltLowMargin', LOW_MARGIN * low, 1.3) : fixed(1),
    saltHigh: around('saltHigh', high, 1.15),
    saltHighMargin: around('saltHighMargin', margin, 1.3),
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

/**
 * Time in which half die where the water is gone, by kind [d]; those of both places live on, by the air. Physella acuta on
 * drying sand: half in 8 days (gulanicz-2018); all others judged by whether they close up, burrow or lie bare.
 * @source gulanicz-2018 for snails; the rest assumed
 */
const TIME_DRY: Readonly<Record<PreyKind | 'unknown', number>> = {
  plankton: 0.1,
  'small arthropods': 1,
  crustaceans: 0.3,
  snails: 8,
  worms: 3,
  fish: 0.05,
  amphibians: 2,
  reptiles: 1000,
  unknown: 0.3,
};

function dryingTraits({ habitat, preyKind }: HarmedKind): Traits {
  return habitat === 'water'
    ? { timeDry: around('timeDry', TIME_DRY[preyKind ?? 'unknown'], 1.8) }
    : { timeDry: fixed(1000) };
}

function drowningTraits(kind: HarmedKind): Traits {
  const { habitat, needsWayOut = false, climbsGlass = false } = kind;
  if (habitat === 'water') return {};
  const stray = needsWayOut ? STRAY[habitat] * (climbsGlass ? CLIMBERS : 1) : 0;
  return {
    strayIntoWater: around('strayIntoWater', stray, 2),
    timeAfloat: around('timeAfloat', needsWayOut ? AFLOAT[habitat] : FLOATERS, 1.6),
  };
}

/**
 * How nitrite, copper, salt and open water harm a species whose file does not say, and how the water slows it down, by
 * its kind; spreads are wide, as tests within one kind scatter over a factor of ten and more. Land animals meet neither poison nor salt of the water.
 * @param stated priors the file states itself, which win; thresholds go with the lethal concentrations stated
 * @source derived from the tests named in `harm-by-kind.ts`; constants assumed where their own line says so
 */
export function harmTraits(
  kind: HarmedKind,
  stated: Readonly<Partial<Record<TraitId, Prior>>> = {},
): Partial<Record<TraitId, Prior>> {
  const rules = HARM_BY_KIND[kind.preyKind ?? 'unknown'];
  return {
    ...(kind.habitat === 'land'
      ? {}
      : {
          ...poisonTraits(rules, stated),
          ...slowingTraits(kind.preyKind, {
            oxygen: kind.oxygen?.low ?? stated.oxygenNeeded?.median,
            nitrite: stated.nitriteMedianLethal?.median ?? rules.nitrite.median,
            copper: stated.copperMedianLethal?.median ?? rules.copper.median,
          }),
          ...saltTraits(rules, kind.conductivity),
        }),
    ...drowningTraits(kind),
    ...dryingTraits(kind),
    ...stated,
  };
}
