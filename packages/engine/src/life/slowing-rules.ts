import type { Prior } from '../plan/prior.ts';
import { around, fixed } from './rule-priors.ts';
import type { PreyKind, TraitId } from './traits.ts';

/** Median of a kind, and the factor one geometric standard deviation is. */
type Dose = readonly [median: number, spread: number];

/** Doses that take a fifth, by kind of animal. */
interface SlowingRules {
  /** Oxygen at which a fifth less is eaten [mg/L]. */
  readonly oxygen: Dose;
  /** Ammonia and ammonium at pH 7 and 20 °C [mg N/L]. */
  readonly ammonia: Dose;
  /** [mg N/L] */
  readonly nitrate: Dose;
  /** Lethal copper of the grown over that of the young [1], and whether tests were done with the young. */
  readonly copperYoung: Dose;
  readonly testedYoung: boolean;
}

const ALIKE: Dose = [1, 1];

/**
 * By kind of animal, from the works named; every median is the middle of a wide scatter.
 * oxygen: guppies that cannot reach the surface grow less below 2 to 3 mg/L (weber-kramer-1983), catfish eat and grow less
 * from 3.5, perch from 2 (carlson-1980); Gammarus uses a tenth less oxygen at 5.7 and half at 1.3 mg/L
 * (hoback-barnhart-1996), shrimp of the sea eat and grow less at 4 than at 6; Daphnia pulex has fewer young at 1.6 and as
 * many at 2.1, D. magna at 0.6 and 0.9 (nebeker-1992); snails, worms and amphibians are judged by their air breathing.
 * ammonia: genus means of us-epa-ammonia-2013, recalled: 7 to 21 mg N/L for fish, 29 Hyalella, 41 Daphnia, 2 for spring
 * snails, those with lungs bear more (besser-2016); amphibians as fish and worms are judged.
 * nitrate: a mud snail has fewer young at 21 to 156 mg N/L (alonso-camargo-2013); amphipods and Ceriodaphnia are the most
 * sensitive of five (baker-2017); 10 mg N/L harms some amphipods, fish and amphibians (camargo-2005); fish grew less at 20
 * to 400: rare minnow above 20 (luo-2016), greenling at 157, zebrafish at 400 and not at 200 (learmonth-carvalho-2015).
 * young: fish that are grown bear more than juveniles of 92 in 100 substances, invertebrates of 54 (hutchinson-1998, ratio
 * above two); of Daphnia 80 in 100 of the newborn die of copper that kills 10 of those of a week (muyssen-janssen-2007);
 * young of Hyalella, Gammarus and Asellus bear as much ammonia as the grown, or more (borgmann-1994, maltby-1995).
 */
const SLOWING_BY_KIND: Readonly<Record<PreyKind | 'unknown', SlowingRules>> = {
  plankton: {
    oxygen: [1.5, 1.5],
    ammonia: [35, 1.7],
    nitrate: [60, 2.5],
    copperYoung: [1.6, 1.3],
    testedYoung: true,
  },
  'small arthropods': {
    oxygen: [2.5, 1.6],
    ammonia: [20, 2],
    nitrate: [40, 2.5],
    copperYoung: [1.3, 1.4],
    testedYoung: false,
  },
  crustaceans: {
    oxygen: [3, 1.4],
    ammonia: [20, 1.8],
    nitrate: [30, 2.2],
    copperYoung: [1.3, 1.4],
    testedYoung: false,
  },
  snails: {
    oxygen: [2, 1.5],
    ammonia: [8, 2],
    nitrate: [30, 2],
    copperYoung: [1.3, 1.4],
    testedYoung: false,
  },
  worms: {
    oxygen: [1.5, 1.6],
    ammonia: [12, 2],
    nitrate: [60, 2.5],
    copperYoung: ALIKE,
    testedYoung: false,
  },
  fish: {
    oxygen: [3, 1.4],
    ammonia: [11, 1.6],
    nitrate: [100, 2.2],
    copperYoung: [2, 1.3],
    testedYoung: true,
  },
  amphibians: {
    oxygen: [1, 1.6],
    ammonia: [10, 1.8],
    nitrate: [30, 2.2],
    copperYoung: [2, 1.3],
    testedYoung: true,
  },
  reptiles: {
    oxygen: [0, 1],
    ammonia: [100, 2],
    nitrate: [300, 2.5],
    copperYoung: ALIKE,
    testedYoung: false,
  },
  unknown: {
    oxygen: [2.5, 1.7],
    ammonia: [12, 2.2],
    nitrate: [40, 2.5],
    copperYoung: ALIKE,
    testedYoung: false,
  },
};

/**
 * Lethal concentration over that which takes a fifth in weeks (acute to chronic ratio) [1], and its spread.
 * nitrite: zebrafish grow less from 22 mg N/L, a third of the 74 lethal to them in the same laboratory (voslarova-2008);
 * one pair only. copper: middle of 1.8 for Gammarus and 3.6 for Physa (arthur-leonard-1970, no effect against lethal), 1.9
 * for four Daphnia (winner-farrell-1976) and the 3.2 of us-epa-copper-2007 (recalled). Over all substances and animals
 * ratios have a median near 8 and run from 1 to over 1000 (raimondo-2007, recalled).
 */
const ACUTE_TO_CHRONIC = { nitrite: [3.5, 2], copper: [2.5, 1.6] } as const satisfies Record<string, Dose>;

/**
 * Oxygen at which a fifth less is eaten, over the least survived, for those that survive on less than their kind [1].
 * @source assumed
 */
const ABOVE_LEAST = 1.5;

/** What kills a species: least oxygen survived, where that is told [mg/L], and medians lethal in four days, by poison. */
interface Lethal {
  readonly oxygen: number | undefined;
  readonly nitrite: number;
  readonly copper: number;
}

function byRatio(id: TraitId, lethal: number, [ratio, spread]: Dose): Prior {
  return around(id, lethal / ratio, spread);
}

/**
 * Doses that slow a species down, by its kind and by what kills it, and how much more copper harms its young; spreads are
 * wide. Land animals never get here.
 * @param lethal what kills it, as the file states it or by kind
 * @source derived from the works named at SLOWING_BY_KIND and ACUTE_TO_CHRONIC; constants assumed where their line says so
 */
export function slowingTraits(
  preyKind: PreyKind | undefined,
  lethal: Lethal,
): Partial<Record<TraitId, Prior>> {
  const { oxygen, ammonia, nitrate, copperYoung, testedYoung } = SLOWING_BY_KIND[preyKind ?? 'unknown'];
  const survived = lethal.oxygen === undefined ? Number.POSITIVE_INFINITY : ABOVE_LEAST * lethal.oxygen;
  return {
    oxygenSlowing: around('oxygenSlowing', Math.min(oxygen[0], survived), oxygen[1]),
    ammoniaSlowing: around('ammoniaSlowing', ...ammonia),
    nitriteSlowing: byRatio('nitriteSlowing', lethal.nitrite, ACUTE_TO_CHRONIC.nitrite),
    nitrateSlowing: around('nitrateSlowing', ...nitrate),
    copperSlowing: byRatio('copperSlowing', lethal.copper, ACUTE_TO_CHRONIC.copper),
    copperYoung: copperYoung === ALIKE ? fixed(1) : around('copperYoung', ...copperYoung),
    testedYoung: fixed(testedYoung ? 1 : 0),
  };
}
