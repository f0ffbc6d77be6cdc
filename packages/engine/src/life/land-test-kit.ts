import type { Founders, Population } from '../plan/plan.ts';
import { type LifeHistory, traitsOfLifeHistory } from './life-history.ts';
import { populationOf } from './life-test-kit.ts';
import { type AnimalTraits, TRAIT_IDS, type TraitValues } from './traits.ts';

/** An invented land crab of direct development, sized and aged as keepers tell of such crabs. */
export const LAND_CRAB: LifeHistory = {
  habitat: 'amphibious',
  temperature: 25,
  lengthAtBirth: 2,
  lengthAtPuberty: 8,
  adultLength: 12.5,
  adultMass: 1200,
  maturityAge: 160,
  youngPerBrood: 35,
  broodInterval: 45,
  broodTime: 32,
  lifespan: 750,
  diet: { litter: 0.2, detritus: 0.1, fungi: 0.05, carrion: 0.15, feed: 0.2, prey: 0.3 },
  preySmallest: 0.5,
  preyLargest: 8,
  survives: {
    waterTemperature: { low: 20, high: 30 },
    airTemperature: { low: 20, high: 30 },
    pH: { low: 6.5, high: 8.5 },
    hardness: { low: 5, high: 25 },
    humidity: { low: 65 },
  },
  timeInWater: 0.05,
  timeAtMargin: 0.35,
  groundPerAdult: 150,
  eatsOwnKind: 'when hungry',
  moults: true,
};

/** An invented woodlouse of round numbers. */
export const WOODLOUSE: LifeHistory = {
  habitat: 'land',
  temperature: 20,
  lengthAtBirth: 1.8,
  adultLength: 10,
  adultMass: 30,
  maturityAge: 90,
  youngPerBrood: 25,
  broodInterval: 45,
  broodTime: 28,
  lifespan: 600,
  diet: { litter: 0.6, fungi: 0.3, carrion: 0.1 },
  survives: { airTemperature: { low: 2, high: 33 }, humidity: { low: 60 } },
  moults: true,
};

const { priors: _, ...CRAB_KIND } = {
  priors: undefined,
  mating: 'two sexes',
  brood: 'carried',
  habitat: 'amphibious',
  preyKind: 'crustaceans',
  hunts: { 'small arthropods': 1, crustaceans: 0.2 },
} as const;

export const KINDS: Readonly<Record<'crab' | 'woodlouse', Omit<AnimalTraits, 'priors'>>> = {
  crab: CRAB_KIND,
  woodlouse: { mating: 'two sexes', brood: 'carried', habitat: 'land', preyKind: 'small arthropods' },
};

/** Medians of the rules for a life history. */
export function valuesOf(owner: string, history: LifeHistory): TraitValues {
  const { priors } = traitsOfLifeHistory(owner, history);
  return Object.fromEntries(TRAIT_IDS.map((id) => [id, priors[id].median])) as TraitValues;
}

/** A population by life history, with changes to its traits. */
export function populationBy(
  kind: keyof typeof KINDS,
  founders: readonly Founders[],
  changes: Partial<TraitValues> = {},
): Population {
  const history = kind === 'crab' ? LAND_CRAB : WOODLOUSE;
  return populationOf(kind, founders, { ...valuesOf(kind, history), ...changes }, KINDS[kind]);
}
