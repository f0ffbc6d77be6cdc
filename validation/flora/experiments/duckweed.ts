import { COMPOSITIONS } from '../../../packages/engine/src/variables/compositions.ts';
import { CARBON_SHARE, type Culture, culture, day, dryMass, GRAMS_PER_MOL, RICH_MEDIUM } from '../culture.ts';
import { type Experiment, NotStated, type Question, temperatureOf } from '../experiment.ts';

/** The standard light of duckweed tests: 100 µmol/m2/s around the clock at 25 °C. @source ISO 20079 (memory) */
const STANDARD = { light: 100, lit: 24, medium: RICH_MEDIUM } as const;
/** Fresh mass of duckweed over dry [g/g]. @source memory: 6 % dry */
const FRESH = 1 / 0.06;
/** Area that 1 g dry of a single layer covers [m2]. @source memory: specific leaf area of duckweed */
const LAYER = 0.04;

const grams = (stock: number): number => dryMass(stock, CARBON_SHARE.duckweed);
const moles = (mass: number): number => (mass * CARBON_SHARE.duckweed) / GRAMS_PER_MOL.carbon;

/** A square metre of still, shallow medium with duckweed on it [mol C]. */
function basin(floatingPlants: number, temperature: number): Culture {
  return culture({
    water: RICH_MEDIUM,
    contents: { floatingPlants },
    setting: {
      waterVolume: 0.1,
      waterArea: 1,
      waterDepth: 0.1,
      submergedArea: 1.4,
      darkFilmSurface: 0,
      wetSubstrate: 0,
      waterTemperature: temperature,
    },
  });
}

/** Relative growth rate over a week from a stock [1/d]. */
function relativeGrowth(stock: number, question: Question, light: number = STANDARD.light): number {
  const vessel = basin(stock, temperatureOf(question, 25));
  const days = 7;
  for (let k = 0; k < days; k += 1) day(vessel, { ...STANDARD, light });
  return Math.log(vessel.amount('floatingPlants') / stock) / days;
}

export const duckweedGrowth: Experiment = {
  name: 'growth of duckweed',
  asks: /(duckweed|lemna).*growth.*; .*relative growth|(duckweed|lemna).*; .*doubling/i,
  answer(question) {
    const rate = relativeGrowth(moles(1), question);
    return /doubling/i.test(question.quantity) ? Math.log(2) / rate : rate;
  },
};

/** Growth over five days at the temperatures named, in the mean, over that at the last of them [1]. */
export const duckweedWarmth: Experiment = {
  name: 'warmth for duckweed',
  asks: /duckweed warmth/i,
  answer(question) {
    const [reference, ...others] = [...question.temperatures].reverse();
    if (reference === undefined || others.length === 0) throw new NotStated('two temperatures are needed');
    const at = (temperature: number): number =>
      relativeGrowth(moles(1), { ...question, temperatures: [temperature] });
    return others.reduce((sum, temperature) => sum + at(temperature), 0) / others.length / at(reference);
  },
};

export const duckweedNitrogen: Experiment = {
  name: 'nitrogen in duckweed',
  asks: /(duckweed|lemna).*(protein|nitrogen content|N fraction)/i,
  answer({ quantity }) {
    const { nitrogenPerCarbon } = COMPOSITIONS.floatingPlants;
    const perDry =
      (nitrogenPerCarbon * GRAMS_PER_MOL.nitrogen * CARBON_SHARE.duckweed) / GRAMS_PER_MOL.carbon;
    // Crude protein is 6.25 times nitrogen by convention.
    return /protein/i.test(quantity) ? 6.25 * perDry : perDry;
  },
};

/** Regrowth [g fresh/m2/d] when a third is taken every five days, once it has settled. */
export const duckweedYield: Experiment = {
  name: 'yield of duckweed',
  asks: /(duckweed|lemna).*(yield|areal).*(regrowth|rate|production|yield)/i,
  answer(question) {
    const fresh = /fresh/i.test(`${question.topic} ${question.quantity} ${question.unit}`);
    // 'Optimised' light of the rack is not stated: 250 µmol/m2/s for 16 h.
    const regime = { light: 250, lit: 16, medium: RICH_MEDIUM };
    const vessel = basin(moles(60), temperatureOf(question, 25));
    let harvest = 0;
    for (let k = 1; k <= 60; k += 1) {
      day(vessel, regime);
      if (k % 5 !== 0) continue;
      const taken = vessel.amount('floatingPlants') / 3;
      vessel.add({ floatingPlants: -taken });
      if (k > 30) harvest += taken;
    }
    return (grams(harvest) / 30) * (fresh ? FRESH : 1);
  },
};

export const duckweedCrowding: Experiment = {
  name: 'crowding of duckweed',
  asks: /(duckweed|lemna).*crowding/i,
  answer(question) {
    const vessel = basin(moles(40), temperatureOf(question, 25));
    for (let k = 0; k < 90; k += 1) day(vessel, STANDARD);
    return grams(vessel.amount('floatingPlants'));
  },
};

/** Bright daylight of the sites, as a mean over 12 h [umol/m2/s]. @source assumed */
const DAYLIGHT = 600;

/** Loss of the relative growth rate [1/d] when a single layer just covers the water, or under half the light. */
export const floatingFernCrowding: Experiment = {
  name: 'crowding of floating ferns',
  asks: /salvinia.*(crowding|shade)/i,
  answer(question) {
    const rate = (stock: number, light: number): number => {
      const vessel = basin(stock, temperatureOf(question, 25));
      day(vessel, { light, lit: 12, medium: RICH_MEDIUM });
      return Math.log(vessel.amount('floatingPlants') / stock);
    };
    const free = rate(moles(0.1), DAYLIGHT);
    if (/shade/i.test(question.quantity)) return free - rate(moles(0.1), DAYLIGHT / 2);
    return free - rate(moles(1 / LAYER), DAYLIGHT);
  },
};

export const floatingFernWarmth: Experiment = {
  name: 'warmth for floating ferns',
  asks: /salvinia.*temperature/i,
  answer(question) {
    if (question.temperatures.length < 3) throw new NotStated('three temperatures are needed');
    const rates = new Map(
      question.temperatures
        .slice(0, 3)
        .map((temperature) => [
          temperature,
          relativeGrowth(moles(1), { ...question, temperatures: [temperature] }, DAYLIGHT),
        ]),
    );
    const [cool, warm, hot] = [...rates.keys()].sort((a, b) => a - b).map((key) => rates.get(key)!);
    return warm! > cool! && cool! > hot!;
  },
};
