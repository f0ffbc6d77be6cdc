import { addCohort } from '../../packages/engine/src/life/cohort-train.ts';
import { EXPECTED } from '../../packages/engine/src/life/demography.ts';
import { setWanted } from '../../packages/engine/src/life/feeding.ts';
import { FOOD_COUNT, nothingEaten } from '../../packages/engine/src/life/foods.ts';
import { type HuntingGround, hunt, setPreyDensity } from '../../packages/engine/src/life/hunting.ts';
import { GRAZER } from '../../packages/engine/src/life/life-test-kit.ts';
import {
  createLivingPopulation,
  type LivingPopulation,
} from '../../packages/engine/src/life/living-population.ts';
import type { PreyKind, TraitId } from '../../packages/engine/src/life/traits.ts';
import type { Calculation } from '../harness/check.ts';
import { figuresOf } from './answers.ts';

/**
 * Prey so small beside their hunters that these never come near to being sated, so that each hunter takes its share
 * whatever the others take: the case of the published equations.
 */
const HUNGRY: Partial<Record<TraitId, number>> = {
  lengthAtBirth: 0.05,
  lengthAtPuberty: 100,
  lengthAtEnd: 500,
  store: 0,
  halfSaturation: 10,
  preferenceForPrey: 1,
  preyLargest: 0.5,
  cannibalism: 1,
  hiding: 0,
};
/** On this much ground [m2] the coefficients of hunting are measured first. */
const TRIAL_GROUND = 1;

interface Kind {
  readonly preyKind?: PreyKind;
  readonly hunts?: Readonly<Partial<Record<PreyKind, number>>>;
  readonly traits?: Partial<Record<TraitId, number>>;
}

function animals({ preyKind, hunts = {}, traits = {} }: Kind): LivingPopulation {
  const population = createLivingPopulation(
    {
      id: 'cannibals',
      traits: { mating: 'self-fertile', brood: 'laid', hunts, ...(preyKind ? { preyKind } : {}) },
    },
    { ...GRAZER, ...HUNGRY, ...traits },
  );
  population.fullness = 0;
  return population;
}

function put({ train, energetics }: LivingPopulation, count: number, length: number): void {
  if (count > 0)
    addCohort(train, energetics, { count, length, age: length, isAdult: length >= energetics.puberty });
}

/** A day of hunting. */
function huntOn(living: readonly LivingPopulation[], area: number): void {
  const ground: HuntingGround = { area, landArea: 0, cover: { inWater: 0, onLand: 0, besideLeaves: 0 } };
  setPreyDensity(living, ground);
  const nothing = { amounts: new Float64Array(FOOD_COUNT), area, landArea: 0 };
  for (const population of living) setWanted(population, nothing, 1);
  // Appetite and lengths are set; prey is reckoned once more with them.
  setPreyDensity(living, ground);
  for (const population of living) setWanted(population, nothing, 1);
  hunt(living, ground, living.map(nothingEaten), {
    caught: living.map(() => new Float64Array(living.length)),
    demography: EXPECTED,
  });
}

/** Lengths [mm]. */
const GROWN = 400;
const NEWBORN = 0.05;

function survivors({ train }: LivingPopulation, length: number): number {
  for (let i = 0; i < train.size; i += 1) if (train.peak[i] === length) return train.count[i]!;
  return 0;
}

/** Young that a number of adults of their own kind leave alive in a day. */
function youngLeft(adults: number, young: number, area: number): number {
  const population = animals({});
  put(population, adults, GROWN);
  put(population, young, NEWBORN);
  huntOn([population], area);
  return survivors(population, NEWBORN);
}

/** Generations whose adults hunt the newborn of their own kind for a day and then give way to those left. */
export const stockFigures: Calculation = (inputs) => {
  const a = inputs.number('a', '-');
  const b = inputs.number('b', '-');
  const area = (TRIAL_GROUND * -Math.log(youngLeft(1, 1, TRIAL_GROUND))) / b;
  const next = (adults: number): number => youngLeft(adults, a * adults, area);
  const steps = inputs.numbers('steps', '-');
  let adults = inputs.number('N0', '-');
  const course = new Map<number, number>();
  for (let step = 1; step <= Math.max(...steps, 2000); step += 1) {
    adults = next(adults);
    course.set(step, adults);
  }
  const change = 1e-4 * adults;
  const multiplier = (next(adults + change) - next(adults - change)) / (2 * change);
  return figuresOf({
    ...Object.fromEntries(steps.map((step) => [`N.${step}`, course.get(step)!])),
    equilibrium: adults,
    multiplier,
    stable: Math.abs(multiplier) < 1 ? 1 : 0,
  });
};

interface Beetles {
  readonly larvae: number;
  readonly pupae: number;
  readonly adults: number;
}
interface Appetites {
  readonly larvae: number;
  readonly adultsOnEggs: number;
  readonly adultsOnPupae: number;
  readonly area: number;
}

/** Eggs and pupae that larvae and adults leave alive. */
function leftByBeetles(
  eggs: number,
  { larvae, pupae, adults }: Beetles,
  appetites: Appetites,
): { eggs: number; pupae: number } {
  const egg = animals({ preyKind: 'plankton', traits: { preferenceForPrey: 0 } });
  const pupa = animals({ preyKind: 'crustaceans', traits: { preferenceForPrey: 0 } });
  const larva = animals({
    hunts: { plankton: 1 },
    traits: { preferenceForPrey: appetites.larvae, cannibalism: 0 },
  });
  const adult = animals({
    hunts: { plankton: appetites.adultsOnEggs, crustaceans: appetites.adultsOnPupae },
    traits: {
      preferenceForPrey: Math.max(appetites.adultsOnEggs, appetites.adultsOnPupae),
      cannibalism: 0,
    },
  });
  put(egg, eggs, NEWBORN);
  put(pupa, pupae, NEWBORN);
  put(larva, larvae, GROWN);
  put(adult, adults, GROWN);
  huntOn([egg, pupa, larva, adult], appetites.area);
  return { eggs: survivors(egg, NEWBORN), pupae: survivors(pupa, NEWBORN) };
}

/** Two weeks of flour beetles: larvae and adults eat eggs, adults eat pupae. */
export const beetleFigures: Calculation = (inputs) => {
  const of = (name: string): number => inputs.number(name, '-');
  const one = { larvae: 1, pupae: 0, adults: 0 };
  const trial = { larvae: 1, adultsOnEggs: 1, adultsOnPupae: 1, area: TRIAL_GROUND };
  const unit = -Math.log(leftByBeetles(1, one, trial).eggs);
  // The strongest appetite is 1, the ground makes it so.
  const strongest = Math.max(of('c_el'), of('c_ea'), of('c_pa'));
  const appetites: Appetites = {
    larvae: of('c_el') / strongest,
    adultsOnEggs: of('c_ea') / strongest,
    adultsOnPupae: of('c_pa') / strongest,
    area: (TRIAL_GROUND * unit) / strongest,
  };
  const next = (now: Beetles): Beetles => {
    const left = leftByBeetles(of('b') * now.adults, now, appetites);
    return {
      larvae: left.eggs,
      pupae: now.larvae - EXPECTED.among(now.larvae, of('mu_l')),
      adults: left.pupae + now.adults - EXPECTED.among(now.adults, of('mu_a')),
    };
  };
  const asList = ({ larvae, pupae, adults }: Beetles): number[] => [larvae, pupae, adults];
  let now: Beetles = { larvae: of('L0'), pupae: of('P0'), adults: of('A0') };
  const course: Beetles[] = [now];
  for (let step = 1; step <= 4000; step += 1) {
    now = next(now);
    course.push(now);
  }
  const pair = [now, next(now)].sort((x, y) => x.larvae - y.larvae);
  return figuresOf({
    ...Object.fromEntries(
      inputs.numbers('steps', '-').map((step) => [`states.${step}`, asList(course[step]!)]),
    ),
    long_run_pair: pair.flatMap(asList),
  });
};
