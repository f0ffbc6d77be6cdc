import type { ActiveTime } from './awake.ts';
import { type BroodTrain, broodCarbon, emptyBroods } from './brood-train.ts';
import { type Burden, createBurden } from './burden.ts';
import { type PoisonByStage, poisonByStage } from './by-stage.ts';
import { type CohortTrain, emptyTrain, trainCarbon } from './cohort-train.ts';
import { type Energetics, energeticsOf } from './energetics.ts';
import { FOOD_COUNT } from './foods.ts';
import { type Diet, dietOf, findingOf } from './foraging.ts';
import { mouthfulPerLength } from './mouthful.ts';
import { POISONS } from './poisons.ts';
import { SLOWING_CAUSES, type Slowing, unslowed } from './sublethal.ts';
import { type AnimalTraits, checkTraits, type PreyKind, type TraitValues } from './traits.ts';

/** What of the water kills every animal in it alike: tolerances in their order, then poisons. */
export const WATER_CAUSES = [
  'water too cold or warm',
  'wrong pH',
  'wrong hardness',
  'lack of oxygen',
  'wrong salt',
  'ammonia',
  'copper',
] as const;

/** Why an animal died, in the order of every array over causes. */
export const DEATH_CAUSES = [
  'starvation',
  'age',
  ...WATER_CAUSES,
  'nitrite',
  'air',
  'drowned',
  'left dry',
  'moulting',
  'crowding',
  'eaten',
  'eaten by own kind',
  'left',
  'background',
] as const;
export type DeathCause = (typeof DEATH_CAUSES)[number];

/** What one population did on the last day; refilled every day. */
export interface PopulationDay {
  /** Young released, eggs laid, eggs lost [1]. */
  born: number;
  laid: number;
  eggsLost: number;
  /** Free-living animals that died, by cause in the order of DEATH_CAUSES. */
  readonly deaths: Float64Array;
  /** Eaten of each food [mol C], in the order of FOODS. */
  readonly eatenByFood: Float64Array;
  /** Food eaten and what became of it [mol]. */
  eatenCarbon: number;
  assimilatedCarbon: number;
  assimilatedNitrogen: number;
  assimilatedPhosphorus: number;
  respiredCarbon: number;
  excretedNitrogen: number;
  excretedPhosphorus: number;
  /** Assimilation at ample food, and how much the water kept them from eating of it and making into eggs, by cause [mol C]. */
  ampleCarbon: number;
  readonly slowed: Float64Array;
  /** Carbon of bodies and eggs that died and lie about, that others ate, and that left the glass [mol]. */
  deadCarbon: number;
  huntedCarbon: number;
  leftCarbon: number;
}

/** The sexes of a population's adults; in a member whole animals that keep theirs. */
export interface Sexes {
  adults: number;
  females: number;
}

/** One population and everything that changes about it. */
export interface LivingPopulation {
  readonly id: string;
  readonly traits: TraitValues;
  readonly energetics: Energetics;
  readonly diet: Diet;
  readonly isSelfFertile: boolean;
  readonly active: ActiveTime;
  /** Young that need salt die in fresh water. */
  readonly hasBrackishLarvae: boolean;
  readonly preyKind: PreyKind | undefined;
  /** Part of its life on land that it lies within the ground [0..1]. */
  readonly inGround: number;
  /** Length it counts as in another's mouth, over its own [1]. */
  readonly mouthful: number;
  /** Choice among kinds of prey, the favourite 1. */
  readonly hunts: ReadonlyMap<PreyKind, number>;
  /** How much more readily it finds prey than its weight among foods says [1]. */
  readonly finding: number;
  readonly carriesBrood: boolean;
  readonly train: CohortTrain;
  readonly broods: BroodTrain;
  /** Carbon of bodies and eggs at the end of the last day or care [mol]. */
  body: number;
  /** Part of its feeding that happens in the water [0..1]. */
  inWater: number;
  /** Share of adults eaten today, before the other deaths [0..1]. */
  adultsHunted: number;
  /** Prey within reach, weighted [mol/m2], on the coming day. */
  preyDensity: number;
  /** How much more than ample it eats today to make up for hunger [0..2]. */
  appetite: number;
  /** The same to fill its stores, at meals that sate [0..2]. */
  greed: number;
  /** Of its adults, followed day by day. */
  readonly sexes: Sexes;
  /** Part of its adults that is female, and the chance that mates meet [0..1]. */
  femalePart: number;
  mated: number;
  /** Part of the adults that have ground of their own to breed on [0..1]. */
  placed: number;
  /** Full-grown equivalents over those at which crowding begins to kill [1]. */
  crowded: number;
  /** Assimilation over that at ample food on the last day, at most 1 [0..1]. */
  fullness: number;
  /** Poisons in the body, in the order of POISONS. */
  readonly burdens: readonly Burden[];
  readonly poisonByStage: PoisonByStage;
  /** What the water of the last day leaves of its appetite. */
  readonly slowing: Slowing;
  /** Wanted of each food for the coming day [mol C/d], in the order of FOODS. */
  readonly wanted: Float64Array;
  readonly day: PopulationDay;
}

function emptyDay(): PopulationDay {
  return {
    born: 0,
    laid: 0,
    eggsLost: 0,
    deaths: new Float64Array(DEATH_CAUSES.length),
    eatenCarbon: 0,
    assimilatedCarbon: 0,
    assimilatedNitrogen: 0,
    assimilatedPhosphorus: 0,
    respiredCarbon: 0,
    excretedNitrogen: 0,
    excretedPhosphorus: 0,
    ampleCarbon: 0,
    slowed: new Float64Array(SLOWING_CAUSES.length),
    deadCarbon: 0,
    huntedCarbon: 0,
    leftCarbon: 0,
    eatenByFood: new Float64Array(FOOD_COUNT),
  };
}

/** Sets all figures of the day to zero. */
export function clearDay(day: PopulationDay): void {
  day.born = 0;
  day.laid = 0;
  day.eggsLost = 0;
  day.deaths.fill(0);
  day.eatenCarbon = 0;
  day.assimilatedCarbon = 0;
  day.assimilatedNitrogen = 0;
  day.assimilatedPhosphorus = 0;
  day.respiredCarbon = 0;
  day.excretedNitrogen = 0;
  day.excretedPhosphorus = 0;
  day.ampleCarbon = 0;
  day.slowed.fill(0);
  day.deadCarbon = 0;
  day.huntedCarbon = 0;
  day.leftCarbon = 0;
  day.eatenByFood.fill(0);
}

/** A population's name and the ways of its species. */
export interface NamedSpecies {
  readonly id: string;
  readonly traits: Pick<
    AnimalTraits,
    'mating' | 'brood' | 'development' | 'active' | 'hunts' | 'preyKind' | 'inGround'
  >;
}

/**
 * A population without animals.
 * @param values one value of every trait, by trait id
 * @throws RangeError when a trait is missing, outside its range or contradicts another
 */
export function createLivingPopulation(
  { id, traits: { mating, brood, development, active, hunts, preyKind, inGround } }: NamedSpecies,
  values: Readonly<Record<string, number>>,
): LivingPopulation {
  const traits = checkTraits(id, values);
  const energetics = energeticsOf(traits);
  return {
    id,
    traits,
    energetics,
    diet: dietOf(traits),
    isSelfFertile: mating !== 'two sexes',
    active: active ?? 'always',
    hasBrackishLarvae: development === 'brackish larvae',
    preyKind,
    inGround: inGround ?? 0,
    mouthful: mouthfulPerLength(preyKind, traits.dryMassPerCube),
    hunts: choiceOf(hunts ?? {}),
    finding: findingOf(traits, energetics),
    carriesBrood: brood === 'carried',
    train: emptyTrain(),
    broods: emptyBroods(),
    body: 0,
    inWater: traits.shareInWater,
    adultsHunted: 0,
    preyDensity: 0,
    appetite: 0,
    greed: 0,
    sexes: { adults: 0, females: 0 },
    femalePart: traits.femaleShare,
    mated: 1,
    placed: 1,
    crowded: 0,
    fullness: 1,
    burdens: POISONS.map(({ noEffect, medianLethal, recovery }) =>
      createBurden({
        noEffect: traits[noEffect],
        medianLethal: traits[medianLethal],
        recovery: traits[recovery],
      }),
    ),
    poisonByStage: poisonByStage(traits),
    slowing: unslowed(preyKind),
    wanted: new Float64Array(FOOD_COUNT),
    day: emptyDay(),
  };
}

/** Weights of kinds of prey over the greatest. */
function choiceOf(hunts: NonNullable<AnimalTraits['hunts']>): ReadonlyMap<PreyKind, number> {
  const most = Math.max(0, ...Object.values(hunts));
  if (most === 0) return new Map();
  return new Map(Object.entries(hunts).map(([kind, weight]) => [kind as PreyKind, weight / most]));
}

/** Carbon in bodies and eggs [mol], >= 0. @source derived: sum over cohorts and broods. */
export function populationCarbon(population: LivingPopulation): number {
  return (
    trainCarbon(population.train, population.energetics) +
    broodCarbon(population.broods, population.energetics)
  );
}
