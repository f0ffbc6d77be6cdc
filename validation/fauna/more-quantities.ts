import { bodyRate, broodRate, lengthOf } from '../../packages/engine/src/life/energetics.ts';
import { NotStated, type Quantity } from './quantities.ts';
import { atTimes, type Rearing, rear, timeOf } from './rearing.ts';
import type { Species } from './species.ts';

const LONGEST = 1500;
const COHORT = 1000;

function temperatureOf(temperatures: readonly number[]): number {
  if (temperatures.length === 0) throw new NotStated('the conditions name no temperature');
  return temperatures.reduce((sum, each) => sum + each, 0) / temperatures.length;
}

/** Feeds on one day in `1/share`. */
function feedOn(rearing: Rearing, day: number, share: number): void {
  const every = Math.round(1 / share);
  rearing.pass(day % every === 0 ? 'ample' : 'none');
}

/** Eggs laid per living female up to day 80 after hatching, with food on a share of the days. */
export const eggsByFeeding: Quantity = ({ species, x, temperatures }) => {
  if (!x) throw new NotStated('the quantity needs a table');
  const days = 80;
  return x.map((share) => {
    const rearing = rear(species, { temperature: temperatureOf(temperatures), count: COHORT });
    let eggs = 0;
    for (let day = 0; day < days; day += 1) {
      feedOn(rearing, day, share);
      rearing.keepOldest();
      const females = rearing.alive() * species.traits.femaleShare;
      if (females > 0) eggs += rearing.population.day.laid / females;
    }
    return eggs;
  });
};

/** Length at the day the quantity names, with food on a share of the days [mm]. */
export const lengthByFeeding: Quantity = ({ species, x, temperatures, text }) => {
  const named = /day (\d+)/.exec(text)?.[1];
  if (!x || !named) throw new NotStated('the quantity needs a table and a day');
  return x.map((share) => {
    const rearing = rear(species, { temperature: temperatureOf(temperatures), count: COHORT });
    for (let day = 0; day < Number(named); day += 1) {
      feedOn(rearing, day, share);
      rearing.keepOldest();
    }
    return rearing.length();
  });
};

function lengthAtMass({ traits, dryPart }: Species, rearing: Rearing, mass: number): number {
  if (dryPart === undefined) throw new NotStated('wet mass with a shell is not modelled');
  const carbon = (mass * 1e-3 * dryPart * traits.carbonContent) / 12.011;
  const { energetics } = rearing.population;
  return lengthOf(energetics, carbon / (1 + energetics.store));
}

/** Wet mass after days, from the mass the conditions start at [mg]. */
export const massFromStart: Quantity = ({ species, x, temperatures, text }) => {
  const start = /day 0 at (\d+(?:\.\d+)?) mg/.exec(text)?.[1];
  if (!x || !start || species.dryPart === undefined) throw new NotStated('no mass at the start is named');
  const temperature = temperatureOf(temperatures);
  const length = lengthAtMass(species, rear(species, { temperature, count: 1 }), Number(start));
  const rearing = rear(species, { temperature, count: COHORT, length });
  const course = [Number(start)];
  for (let day = 1; day <= Math.max(...x) + 1; day += 1) {
    rearing.pass('ample');
    rearing.keepOldest();
    course.push(rearing.dryMass() / species.dryPart);
  }
  return atTimes(course, x);
};

/** Mean of the ratios of egg development and of body growth between two temperatures. */
export const rateRatio: Quantity = ({ species: { traits }, text }) => {
  const [, warm, cold] = /(\d+) C to (\d+) C/.exec(text) ?? [];
  if (!warm || !cold) throw new NotStated('two temperatures are needed');
  const ratio = (rate: typeof bodyRate): number => rate(traits, Number(warm)) / rate(traits, Number(cold));
  return (ratio(broodRate) + ratio(bodyRate)) / 2;
};

/** Young alive after the days named, from ten adults half way between puberty and the end. */
export const youngFromTen: Quantity = ({ species, temperatures, text }) => {
  const days = /six weeks/.test(text) ? 42 : Number(/after (\d+) days/.exec(text)?.[1] ?? Number.NaN);
  if (Number.isNaN(days)) throw new NotStated('no length is named');
  const { lengthAtPuberty, lengthAtEnd, femaleShare } = species.traits;
  const females = /females/.test(text) ? femaleShare : 1;
  const rearing = rear(species, {
    temperature: temperatureOf(temperatures),
    count: 10 / females,
    length: (lengthAtPuberty + lengthAtEnd) / 2,
  });
  for (let day = 0; day < days; day += 1) rearing.pass('ample');
  const { train } = rearing.population;
  let young = 0;
  for (let i = 0; i < train.size; i += 1) if (train.age[i]! < days + 1) young += train.count[i]!;
  return young;
};

function daysTo(species: Species, temperature: number, length: number): number {
  const rearing = rear(species, { temperature, count: COHORT });
  const lengths = [rearing.length()];
  for (let day = 1; day <= LONGEST; day += 1) {
    rearing.pass('ample');
    rearing.keepOldest();
    lengths.push(rearing.length());
    if (rearing.length() >= length) break;
  }
  const days = timeOf(lengths, length);
  if (days === undefined) throw new Error('the animals never get there');
  return days;
}

/** From egg laid to first eggs of its own less a day [d]. */
export const eggToAdult: Quantity = ({ species, temperatures }) => {
  const temperature = temperatureOf(temperatures);
  const { broodTime, lengthAtPuberty, pupaTime } = species.traits;
  const resting =
    broodTime / broodRate(species.traits, temperature) + pupaTime / bodyRate(species.traits, temperature);
  return resting + daysTo(species, temperature, lengthAtPuberty);
};

/** To the length at which larvae change; from the egg where the quantity says so [d]. */
export const metamorphosis: Quantity = ({ species, temperatures, text }) => {
  const { traits } = species;
  const temperature = temperatures.length > 0 ? temperatureOf(temperatures) : traits.referenceTemperature;
  if (traits.lengthAtChange <= 0) throw new NotStated('the species has no larvae');
  const egg = /egg/.test(text) ? traits.broodTime / broodRate(traits, temperature) : 0;
  return egg + daysTo(species, temperature, traits.lengthAtChange);
};

/** Young released in fresh water over 200 days by adults. */
export const recruitment: Quantity = ({ species }) => {
  const { lengthAtPuberty, lengthAtEnd, referenceTemperature } = species.traits;
  const rearing = rear(species, {
    temperature: referenceTemperature,
    count: COHORT,
    length: (lengthAtPuberty + lengthAtEnd) / 2,
  });
  let born = 0;
  for (let day = 0; day < 200; day += 1) {
    rearing.pass('ample');
    born += rearing.population.day.born;
  }
  return born;
};

/** Gain of wet mass by newborns over the days named, by temperature [mg]. */
export const gainInDays: Quantity = ({ species, x, text }) => {
  const days = Number(/in (\d+) days/.exec(text)?.[1] ?? Number.NaN);
  const { dryPart } = species;
  if (!x || Number.isNaN(days) || dryPart === undefined) throw new NotStated('days or dry part are missing');
  return x.map((temperature) => {
    const rearing = rear(species, { temperature, count: COHORT });
    const before = rearing.dryMass() / dryPart;
    for (let day = 0; day < days; day += 1) {
      rearing.pass('ample');
      rearing.keepOldest();
    }
    return rearing.dryMass() / dryPart - before;
  });
};

/** Eaten by one animal that stays at the length named, at the concentration of food held [mg C/d]. */
export const ingestion: Quantity = ({ species, temperatures, text }) => {
  const length = Number(/(\d+(?:\.\d+)?) mm/.exec(text)?.[1] ?? Number.NaN);
  if (Number.isNaN(length)) throw new NotStated('no length is named');
  const rearing = rear(species, { temperature: temperatureOf(temperatures), count: 1, length });
  rearing.pass('ample');
  const { day, train } = rearing.population;
  const grown = train.middle[0]! / length;
  return (day.eatenCarbon * 12.011e3) / (grown * grown);
};
