import { type RearingAlone, rearAlone, suitable } from '../../packages/engine/src/community/rearing-alone.ts';
import { bodyCarbonOf } from '../../packages/engine/src/life/cohort-train.ts';
import type { WaterConditions } from '../../packages/engine/src/life/water-stress.ts';
import { NotStated, type Quantity, type Question } from './quantities.ts';
import type { Species } from './species.ts';

const COHORT = 1000;
/** Soft water on Lake Superior, and hard water of tests with water fleas, as calcium carbonate (memory) [dGH]. */
const HARDNESS = { soft: 45 / 17.85, hard: 250 / 17.85 } as const;

interface Trial {
  readonly water: Partial<WaterConditions>;
  readonly temperature: number;
  readonly length?: number;
}

function started({ animal, traits }: Species, { water, temperature, length }: Trial): RearingAlone {
  const { hardness } = suitable(traits, temperature).water;
  return rearAlone(
    {
      id: animal.id,
      traits: { mating: animal.mating, brood: animal.brood, development: animal.development ?? 'direct' },
      values: traits,
    },
    temperature,
    COHORT,
    {
      water: { ...water, hardness: water.hardness ?? hardness },
      ...(length === undefined ? {} : { length }),
    },
  );
}

/** Part of the cohort alive, its mass [mol C an animal], and both together after some days. */
function after(species: Species, trial: Trial, days: number): { alive: number; mass: number; all: number } {
  const { population, pass } = started(species, trial);
  for (let day = 0; day < days; day += 1) pass(false);
  const { train, energetics } = population;
  const alive = train.size > 0 ? train.count[0]! / COHORT : 0;
  const mass = train.size > 0 ? bodyCarbonOf(train, energetics, 0) : 0;
  return { alive, mass, all: alive * mass };
}

/** Number before a unit in a text. */
function figureIn(text: string, before: RegExp): number {
  const found = new RegExp(`(\\d+(?:\\.\\d+)?) ?${before.source}`).exec(text)?.[1];
  if (found === undefined) throw new NotStated(`no figure before ${before.source}`);
  return Number(found);
}

/** Dose at which a falling measure reaches a level. */
function doseAt(measure: (dose: number) => number, level: number): number {
  let [low, high] = [1e-3, 1e6];
  for (let halving = 0; halving < 60; halving += 1) {
    const middle = Math.sqrt(low * high);
    if (measure(middle) > level) low = middle;
    else high = middle;
  }
  return Math.sqrt(low * high);
}

const hardnessIn = (text: string): number | undefined =>
  /soft/i.test(text) ? HARDNESS.soft : /hard/i.test(text) ? HARDNESS.hard : undefined;

/** Loss of living mass that a trial of some animals a dish would notice [1]. @source assumed */
const NOTICED = 0.1;

/** Copper [ug/L] by which living mass of adults is a tenth less after the weeks named than without. */
export const harmlessCopper: Quantity = ({ species, text }) => {
  const days = 7 * figureIn(text, /weeks/);
  const { lengthAtPuberty, lengthAtEnd, referenceTemperature: temperature } = species.traits;
  const length = (lengthAtPuberty + lengthAtEnd) / 2;
  const measure = (copper: number): number =>
    after(species, { water: waterOf(text, copper), temperature, length }, days).all;
  return doseAt(measure, (1 - NOTICED) * measure(0));
};

/** Copper [ug/L] by which half of the newborns that live without it are dead after the weeks named. */
export const copperForNewborns: Quantity = ({ species, text }) => {
  const days = 7 * figureIn(text, /weeks/);
  const temperature = species.traits.referenceTemperature;
  const measure = (copper: number): number =>
    after(species, { water: waterOf(text, copper), temperature }, days).alive;
  return doseAt(measure, 0.5 * measure(0));
};

function waterOf(text: string, copper: number): Partial<WaterConditions> {
  const hardness = hardnessIn(text);
  if (hardness === undefined) throw new NotStated('how hard the water is');
  return { copper, hardness };
}

function temperatureOf({ temperatures, species }: Question): number {
  return temperatures[0] ?? species.traits.referenceTemperature;
}

/** Mass of newborns after the time named in total ammonia or nitrate, over that without [1]. */
export const massInPoison: Quantity = (question) => {
  const { species, text } = question;
  const days = /weeks/.test(text) ? 7 * figureIn(text, /weeks/) : figureIn(text, /days/);
  const dose = figureIn(text, /mg N/);
  const pH = /pH (\d+(?:\.\d+)?)/.exec(text)?.[1];
  const acidity = pH === undefined ? {} : { pH: Number(pH) };
  const poison = /ammonia/.test(text) ? { totalAmmonia: dose } : { nitrate: dose };
  const temperature = temperatureOf(question);
  const mass = (water: Partial<WaterConditions>): number =>
    after(species, { water: { ...acidity, ...water }, temperature }, days).mass;
  return mass(poison) / mass({});
};

/** Part of animals of each age at the start alive after the days named at the copper named, of those alive without [1]. */
export const survivalByAge: Quantity = (question) => {
  const { species, text, x } = question;
  if (!x) throw new NotStated('the ages');
  const days = figureIn(text, /days/);
  const copper = figureIn(text, /ug\/L copper/);
  const temperature = temperatureOf(question);
  return x.map((age) => {
    const length = lengthAt(species, age, temperature);
    const trial = (dose: number): Trial => ({ water: waterOf(text, dose), temperature, length });
    return after(species, trial(copper), days).alive / after(species, trial(0), days).alive;
  });
};

function lengthAt(species: Species, age: number, temperature: number): number {
  const { population, pass } = started(species, { water: {}, temperature });
  for (let day = 0; day < age; day += 1) pass(false);
  return population.train.peak[0]!;
}
