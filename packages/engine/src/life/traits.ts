import type { Prior } from '../plan/prior.ts';
import type { ActiveTime } from './awake.ts';
import { TRAIT_IDS, TRAIT_SPECS, type TraitId } from './trait-specs.ts';

export { TRAIT_IDS, TRAIT_SPECS, type TraitId };

/**
 * Values of the traits a species file may leave out: they switch the behaviour off. What a land or amphibious
 * animal needs of them comes from its life history (`life-history.ts`).
 * @source assumed: growthYield from jager-2013 Table 1; store: fat, glycogen and a full gut of small invertebrates make
 * up 10 to 40 % of dry mass (memory); the rest means 'none'
 */
export const TRAIT_DEFAULTS = {
  nitriteNoEffect: 1e4,
  nitriteMedianLethal: 1e5,
  nitriteRecovery: 1,
  nitriteChloride: 1e5,
  copperNoEffect: 1e5,
  copperMedianLethal: 1e6,
  copperRecovery: 0.7,
  oxygenSlowing: 0,
  ammoniaSlowing: 1e5,
  nitriteSlowing: 1e5,
  nitrateSlowing: 1e6,
  copperSlowing: 1e6,
  eggSensitivity: 1,
  ammoniaYoung: 1,
  nitriteYoung: 1,
  copperYoung: 1,
  testedYoung: 0,
  saltLow: 0,
  saltLowMargin: 1,
  saltHigh: 100,
  saltHighMargin: 10,
  growthYield: 0.8,
  upkeep: 0,
  lengthAccelerated: 0,
  variation: 0,
  lateMaturing: 0,
  crowdedEggs: 0,
  store: 0.3,
  gorge: 0,
  growsOn: 1,
  coldLimit: -30,
  filtering: 0,
  preferenceForSuspended: 0,
  preferenceForBiofilm: 0,
  preferenceForCarrion: 0,
  preferenceForFloating: 0,
  preferenceForLandLitter: 0,
  preferenceForFungi: 0,
  preferenceForSoil: 0,
  preferenceForRemains: 0,
  preferenceForDeadPlants: 0,
  preferenceForMoss: 0,
  preferenceForLandPlants: 0,
  preferenceForPrey: 0,
  efficiencyOnSuspended: 0.6,
  efficiencyOnBiofilm: 0.6,
  efficiencyOnCarrion: 0.7,
  efficiencyOnFloating: 0.3,
  efficiencyOnLandLitter: 0.2,
  efficiencyOnFungi: 0.5,
  efficiencyOnSoil: 0.1,
  efficiencyOnRemains: 0.7,
  efficiencyOnDeadPlants: 0.25,
  efficiencyOnMoss: 0.2,
  efficiencyOnLandPlants: 0.3,
  efficiencyOnPrey: 0.75,
  preySmallest: 0,
  preyLargest: 0,
  search: 0,
  cannibalism: 0,
  hiding: 0.8,
  shareInWater: 1,
  larvalPace: 1,
  larvalLoss: 0,
  lengthAtChange: 0,
  pupaTime: 0,
  eggsOfBody: 0,
  wetGround: 0,
  groundPerAdult: 0,
  leaving: 0,
  timeDry: 0.3,
  strayIntoWater: 0,
  timeAfloat: 100,
  airTemperatureLow: -20,
  airTemperatureHigh: 50,
  airTemperatureMargin: 3,
  humidityLow: 0,
  humidityMargin: 15,
  moistShelter: 0.7,
  moultInterval: 0,
  moultDeath: 0.01,
  moultHardness: 0,
  moultPH: 2,
} as const satisfies Partial<Record<TraitId, number>>;

/** A trait a file may leave out. */
export type SparedTraitId = keyof typeof TRAIT_DEFAULTS;
export const isSpared = (id: TraitId): id is SparedTraitId => id in TRAIT_DEFAULTS;

/** One value of every trait, in the units of TRAIT_SPECS. */
export type TraitValues = Readonly<Record<TraitId, number>>;

/** Kinds of animals that others hunt, by which a hunter chooses. */
export const PREY_KINDS = [
  'plankton',
  'small arthropods',
  'crustaceans',
  'snails',
  'worms',
  'fish',
  'amphibians',
  'reptiles',
] as const;
export type PreyKind = (typeof PREY_KINDS)[number];

export const HABITATS = ['water', 'amphibious', 'land'] as const;
export type Habitat = (typeof HABITATS)[number];

/**
 * two sexes: both must be there; self-fertile: hermaphrodites and clones need no partner; division: splits or buds,
 * its 'eggs' are grown pieces.
 */
export const MATINGS = ['two sexes', 'self-fertile', 'division'] as const;
export type Mating = (typeof MATINGS)[number];

/**
 * direct: young like their parents; water larvae: larvae in fresh water that change to life on land or both;
 * brackish larvae: larvae that need salt and die in fresh water; pupa: larvae that rest as pupae and become insects that
 * neither eat nor grow.
 */
export const DEVELOPMENTS = ['direct', 'water larvae', 'brackish larvae', 'pupa'] as const;
export type Development = (typeof DEVELOPMENTS)[number];

/** What the life module needs to know of a species; filled by the library. */
export interface AnimalTraits {
  /** What is believed of each trait, in the units of TRAIT_SPECS. */
  readonly priors: Readonly<Record<TraitId, Prior>>;
  readonly mating: Mating;
  /** Carried eggs share the fate of their mother; laid eggs do not. */
  readonly brood: 'carried' | 'laid';
  /** Left out: direct development, water. */
  readonly development?: Development;
  readonly habitat?: Habitat;
  /** When it is up and eats; left out: at all hours alike. */
  readonly active?: ActiveTime;
  /** As what others hunt it; left out: nobody does. */
  readonly preyKind?: PreyKind;
  /** Part of its life on land that it lies within the ground [0..1]; left out: none. */
  readonly inGround?: number;
  /** How it spreads its hunting over kinds of prey, any weights; left out: it hunts nobody. */
  readonly hunts?: Readonly<Partial<Record<PreyKind, number>>>;
}

/** The stages in which a population's animals are counted, youngest first; 'brooded' are eggs. */
export const STAGES = ['brooded', 'juvenile', 'adult'] as const;
export type Stage = (typeof STAGES)[number];

/** @throws RangeError when a trait is missing, outside its range or contradicts another; names it. */
export function checkTraits(owner: string, values: Readonly<Record<string, number>>): TraitValues {
  const checked: Record<string, number> = {};
  for (const id of TRAIT_IDS) {
    const spec = TRAIT_SPECS[id];
    const value = values[id] ?? (isSpared(id) ? TRAIT_DEFAULTS[id] : undefined);
    if (value === undefined) throw new RangeError(`${owner}: trait ${id} [${spec.unit}] is missing`);
    if (!(value >= spec.min && value <= spec.max)) {
      throw new RangeError(
        `${owner}: trait ${id} = ${value} ${spec.unit} is outside ${spec.min} to ${spec.max}`,
      );
    }
    checked[id] = value;
  }
  for (const [smaller, larger] of ORDERED) {
    if (!(checked[smaller]! < checked[larger]!)) {
      throw new RangeError(`${owner}: ${smaller} must be less than ${larger}`);
    }
  }
  return checked as TraitValues;
}

/** Pairs of which the first must be the smaller one. */
const ORDERED: readonly (readonly [TraitId, TraitId])[] = [
  ['lengthAtBirth', 'lengthAtPuberty'],
  ['lengthAtPuberty', 'lengthAtEnd'],
  ['lengthAccelerated', 'lengthAtEnd'],
  ['temperatureLow', 'temperatureHigh'],
  ['airTemperatureLow', 'airTemperatureHigh'],
  ['breedingCoolest', 'breedingWarmest'],
  ['pHLow', 'pHHigh'],
  ['hardnessLow', 'hardnessHigh'],
  ['ammoniaNoEffect', 'ammoniaMedianLethal'],
  ['nitriteNoEffect', 'nitriteMedianLethal'],
  ['copperNoEffect', 'copperMedianLethal'],
  ['saltLow', 'saltHigh'],
];
