import { type Exchanger, VARIABLE_INDEX } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { exchangerOf } from '../../../packages/contract/src/enclosure/plan/exchanger-of.ts';
import { woodLeachable } from '../../../packages/contract/src/enclosure/plan/pieces.ts';
import { type Culture, culture, GRAMS_PER_MOL } from '../culture.ts';
import { type Experiment, NotStated, type Question } from '../experiment.ts';

/** Grain of sawdust [m]. */
const SAWDUST = 0.5e-3;

/**
 * Carbon that one gram of sawdust gives to a litre of water [mg C/g]. The published batch gave most of it within a day;
 * the rates of the engine are those of whole pieces, so the batch is left until nothing more comes.
 */
function fromSawdust({ quantity, topic, setup }: Question): number {
  const kind = ['oak', 'pine', 'alder'].find((each) => `${quantity} ${topic} ${setup}`.includes(each));
  const material = library.data.materials[`${kind}-wood`];
  if (material?.use !== 'wood') throw new NotStated('the library holds no such wood');
  const { quick, slow } = woodLeachable(material, 1e-3, SAWDUST);
  const batch = culture({
    water: { sodium: 1, chloride: 0.9 },
    setting: { waterVolume: 1e-3, waterArea: 0.01, waterDepth: 0.1, submergedArea: 0, darkFilmSurface: 0 },
    contents: { woodLeachable: quick, woodLeachableSlow: slow },
    without: ['organic-carbon-breakdown'],
  });
  batch.pass(24 * 1500);
  const carbon = batch.amount('dissolvedOrganicCarbon') + batch.amount('labileOrganicCarbon');
  return carbon * GRAMS_PER_MOL.carbon * 1000;
}

export const woodCarbon: Experiment = {
  name: 'carbon from wood',
  asks: /wood.*DOC/i,
  answer: fromSawdust,
};

function exchanger(id: 'sphagnum-peat' | 'sphagnum-moss', grams: number): Exchanger {
  const material = library.data.materials[id];
  const found = material?.use === 'layer' ? exchangerOf(material, grams / 1000) : undefined;
  if (!found) throw new Error(`${id} exchanges nothing`);
  return found;
}

/** An exchanger in a litre of water, in the dark, open to the air. */
function beaker(held: Exchanger, water: Parameters<typeof culture>[0]['water']): Culture {
  const { sites, calcium, magnesium, sodium, potassium } = held;
  return culture({
    water,
    setting: {
      waterVolume: 1e-3,
      waterArea: 0.01,
      waterDepth: 0.1,
      submergedArea: 0,
      darkFilmSurface: 0,
      wetSubstrate: 0,
      looseExchanger: sites,
      exchangeAcidStrength: held.acidStrength,
    },
    contents: {
      exchangeableCalcium: (sites * calcium) / 2,
      exchangeableMagnesium: (sites * magnesium) / 2,
      exchangeableSodium: sites * sodium,
      exchangeablePotassium: sites * potassium,
      exchangeableAcid: sites * (1 - calcium - magnesium - sodium - potassium),
    },
  });
}

/** Sites of a gram that a renewed, limed calcium solution fills [meq/g]. */
function capacity(): number {
  const solution = { calcium: 50, sodium: 10, chloride: 100 };
  const vessel = beaker(exchanger('sphagnum-peat', 1), solution);
  for (let day = 0; day < 60; day += 1) {
    vessel.pass(24);
    vessel.hold(solution);
  }
  return 1000 * (2 * vessel.amount('exchangeableCalcium') + vessel.amount('exchangeableSodium'));
}

export const peatCapacity: Experiment = {
  name: 'cation exchange of peat',
  asks: /peat.*exchange capacity/i,
  answer: capacity,
};

/** Fall of pH of a litre over five grams of moss within a day. */
function fall(salt: Partial<Record<'calcium' | 'magnesium' | 'potassium', number>>): number {
  const charge = 2 * ((salt.calcium ?? 0) + (salt.magnesium ?? 0)) + (salt.potassium ?? 0);
  const vessel = beaker(exchanger('sphagnum-moss', 5), { ...salt, chloride: charge });
  const before = vessel.values[VARIABLE_INDEX.pH]!;
  vessel.pass(24);
  return before - vessel.values[VARIABLE_INDEX.pH]!;
}

export const mossAcidity: Experiment = {
  name: 'acid from moss by exchange',
  asks: /sphagnum.*(pure water|pH change)/i,
  answer() {
    const [pure, potassium, magnesium, calcium] = [
      fall({}),
      fall({ potassium: 1 }),
      fall({ magnesium: 1 }),
      fall({ calcium: 1 }),
    ];
    return pure < 0.1 && potassium! > 0.1 && magnesium! > potassium! && calcium! > magnesium!;
  },
};
