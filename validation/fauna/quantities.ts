import { broodRate } from '../../packages/engine/src/life/energetics.ts';
import { atTimes, type Rearing, rear, timeOf } from './rearing.ts';
import type { Species } from './species.ts';

/** What a case asks: the abscissae of its table, if any, and the temperatures named in its conditions [degC]. */
export interface Question {
  readonly species: Species;
  readonly x: readonly number[] | undefined;
  readonly xName: string;
  readonly temperatures: readonly number[];
  readonly text: string;
}
/** Answers in the unit the quantity is named with: days, mm, mg wet, fraction, animals, uL O2 per hour, per day. */
export type Quantity = (question: Question) => number | readonly number[];

/** The case leaves out something without which the rearing cannot be set up. */
export class NotStated extends Error {}

const LONGEST = 1500;
const COHORT = 1000;

function onlyTemperature({ temperatures }: Question): number {
  if (temperatures.length === 0) throw new NotStated('the conditions name no temperature');
  return temperatures.reduce((sum, each) => sum + each, 0) / temperatures.length;
}

/** One answer per temperature of the table, or one at the mean temperature of the conditions. */
function byTemperature(answer: (species: Species, temperature: number) => number): Quantity {
  return (question) =>
    question.x && /temperature/i.test(question.xName)
      ? question.x.map((temperature) => answer(question.species, temperature))
      : answer(question.species, onlyTemperature(question));
}

function course(rearing: Rearing, days: number, value: (rearing: Rearing) => number): number[] {
  const values = [value(rearing)];
  for (let day = 1; day <= days; day += 1) {
    rearing.pass('ample');
    rearing.keepOldest();
    values.push(value(rearing));
  }
  return values;
}

function newborns(species: Species, temperature: number): Rearing {
  return rear(species, { temperature, count: COHORT });
}

function needTable({ x }: Question): readonly number[] {
  if (!x) throw new NotStated('the quantity needs a table');
  return x;
}

/** Days from laying to release. */
export const broodTime = byTemperature(
  ({ traits }, temperature) => traits.broodTime / broodRate(traits, temperature),
);

/** Days from release to the length of puberty. */
export const maturityAge = byTemperature((species, temperature) => {
  const lengths = course(newborns(species, temperature), LONGEST, (each) => each.length());
  const age = timeOf(lengths, species.traits.lengthAtPuberty);
  if (age === undefined) throw new Error('the animals never mature');
  return age;
});

/** Days from release until a first brood laid at the length of puberty is released. */
export const firstReleaseAge = byTemperature((species, temperature) => {
  const lengths = course(newborns(species, temperature), LONGEST, (each) => each.length());
  const age = timeOf(lengths, species.traits.lengthAtPuberty);
  if (age === undefined) throw new Error('the animals never mature');
  return age + species.traits.broodTime / broodRate(species.traits, temperature);
});

/** Days from release to the first young of their own. */
export const firstBroodAge = byTemperature((species, temperature) => {
  const rearing = newborns(species, temperature);
  for (let day = 1; day <= LONGEST; day += 1) {
    rearing.pass('ample');
    if (rearing.population.day.born > 0) return day;
  }
  throw new Error('the animals never breed');
});

/** Body or shell length at ages [mm]. */
export const lengthAtAge: Quantity = (question) => {
  const ages = needTable(question);
  const rearing = newborns(question.species, onlyTemperature(question));
  return atTimes(
    course(rearing, Math.ceil(Math.max(...ages)) + 1, (each) => each.length()),
    ages,
  );
};

/** Wet mass at ages [mg]. */
export const wetMassAtAge: Quantity = (question) => {
  const { dryPart } = question.species;
  if (dryPart === undefined) throw new NotStated('wet mass with a shell is not modelled');
  const ages = needTable(question);
  const rearing = newborns(question.species, onlyTemperature(question));
  return atTimes(
    course(rearing, Math.ceil(Math.max(...ages)) + 1, (each) => each.dryMass() / dryPart),
    ages,
  );
};

/** Length with food without end after a long life [mm]. */
export const ultimateLength: Quantity = ({ species }) => species.traits.lengthAtEnd;

/** Living part of newborns at ages. */
export const survival: Quantity = (question) => {
  const ages = needTable(question);
  const rearing = newborns(question.species, onlyTemperature(question));
  const alive = course(rearing, Math.ceil(Math.max(...ages)) + 1, (each) => each.alive() / COHORT);
  return atTimes(alive, ages);
};

/** Living part after days without food, of animals fed up to the age the conditions name, else of newborns. */
export const starvedSurvival: Quantity = (question) => {
  const days = needTable(question);
  const [, from, to] = /age (\d+)(?:-(\d+))?/.exec(question.text) ?? [];
  const start = from === undefined ? 0 : (Number(from) + Number(to ?? from)) / 2;
  const rearing = newborns(question.species, onlyTemperature(question));
  for (let day = 0; day < start; day += 1) rearing.pass('ample');
  const before = rearing.alive();
  const alive = [1];
  for (let day = 1; day <= Math.max(...days) + 1; day += 1) {
    rearing.pass('none');
    alive.push(rearing.alive() / before);
  }
  return atTimes(alive, days);
};

function broodOf({ traits, ...species }: Species, temperature: number, length: number): number {
  const rearing = rear({ traits, ...species }, { temperature, count: COHORT, length });
  const before = rearing.population.train.buffer[0]!;
  rearing.pass('ample');
  const { energetics, day, train } = rearing.population;
  const gained = train.buffer[0]! - before + (day.laid * energetics.eggCarbon) / COHORT;
  const interval = traits.broodInterval / broodRate(traits, temperature);
  return (gained * interval) / (traits.femaleShare * energetics.eggCarbon);
}

/** Eggs of one brood of a well-fed female, by her length or half way between puberty and the end. */
export const broodSize: Quantity = (question) => {
  const { species, x, xName } = question;
  const temperature = onlyTemperature(question);
  const { lengthAtPuberty, lengthAtEnd } = species.traits;
  if (x && /length|size/i.test(xName)) return x.map((length) => broodOf(species, temperature, length));
  return broodOf(species, temperature, (lengthAtPuberty + lengthAtEnd) / 2);
};

/** Young released per female that began, by ages [animals]. */
export const cumulativeYoung: Quantity = (question) => {
  const named = [...question.text.matchAll(/day (\d+)/g)].map(([, day]) => Number(day));
  const ages = question.x ?? named;
  if (ages.length === 0) throw new NotStated('no age is named');
  const rearing = newborns(question.species, onlyTemperature(question));
  const females = COHORT * question.species.traits.femaleShare;
  let young = 0;
  const values = course(rearing, Math.ceil(Math.max(...ages)) + 1, ({ population }) => {
    young += population.day.born / females;
    return young;
  });
  const answers = atTimes(values, ages);
  return question.x ? answers : answers[0]!;
};

/**
 * Oxygen used by an unfed adult half way between puberty and the end [uL/h]; one O2 per carbon respired, 24.06 L/mol
 * at 20 degC.
 */
export const adultOxygenUse = byTemperature((species, temperature) => {
  const { lengthAtPuberty, lengthAtEnd } = species.traits;
  const length = (lengthAtPuberty + lengthAtEnd) / 2;
  const rearing = rear(species, { temperature, count: COHORT, length });
  rearing.pass('none');
  return ((rearing.population.day.respiredCarbon / COHORT) * 24.06e6) / 24;
});

/** Age by which half have died [d]. */
export const medianLifespan = byTemperature((species, temperature) => {
  const dead = course(newborns(species, temperature), LONGEST, (each) => 1 - each.alive() / COHORT);
  const age = timeOf(
    dead.map((part) => (Number.isNaN(part) ? 1 : part)),
    0.5,
  );
  if (age === undefined) throw new Error('half never die');
  return age;
});

/** Growth rate of a population with food and room without end, once settled [1/d]. */
export const growthRate = byTemperature((species, temperature) => {
  const rearing = newborns(species, temperature);
  const { traits } = species;
  const settled = Math.ceil(6 * (traits.broodTime + 2 / traits.growthRate));
  for (let day = 0; day < settled; day += 1) rearing.pass('ample');
  const before = rearing.alive();
  for (let day = 0; day < settled; day += 1) rearing.pass('ample');
  return Math.log(rearing.alive() / before) / settled;
});

/** Days in which such a population doubles; 25 degC where the conditions only call it warm. */
export const doublingTime: Quantity = (question) => {
  const warm = question.temperatures.length === 0 && /warm/i.test(question.text);
  const rate = growthRate(warm ? { ...question, temperatures: [25] } : question);
  return typeof rate === 'number' ? Math.LN2 / rate : rate.map((each) => Math.LN2 / each);
};

function bearers(species: Species, temperature: number): { laid: number; born: number; alive: number } {
  const { lengthAtPuberty, lengthAtEnd } = species.traits;
  const length = (lengthAtPuberty + lengthAtEnd) / 2;
  const rearing = rear(species, { temperature, count: COHORT, length });
  let laid = 0;
  let born = 0;
  for (let day = 0; day < 90; day += 1) {
    rearing.pass('ample');
    laid += rearing.population.day.laid;
    born += rearing.population.day.born;
    rearing.keepOldest();
  }
  return { laid, born, alive: rearing.alive() / COHORT };
}

/**
 * 1 when a rearing of 90 days shows what the statement says of heat: most young at 28 degC of 24, 28 and 32, none at
 * 32, and at least 70 % alive at each; 0 otherwise.
 */
export const reproductionInHeat: Quantity = ({ species }) => {
  const [cool, best, hot] = [24, 28, 32].map((temperature) => bearers(species, temperature));
  const holds =
    best!.born > cool!.born &&
    hot!.born < 0.05 * best!.born &&
    [cool, best, hot].every((group) => group!.alive >= 0.7);
  return holds ? 1 : 0;
};
