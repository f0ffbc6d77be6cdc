import { library } from '@shoreglass/library';
import { carcassPace } from '../../../packages/engine/src/cycle/carcass-breakdown.ts';
import type { Entries } from '../../../packages/engine/src/cycle/tank-test-kit.ts';
import { COMPOSITIONS } from '../../../packages/engine/src/variables/compositions.ts';
import { culture, GRAMS_PER_MOL, MEDIANS } from '../culture.ts';
import { type Experiment, NotStated, type Question, slopeOf } from '../experiment.ts';

/** Nitrogen and phosphorus over carbon of a whole fish [mol/mol]. @source memory: 10 % N, 2 % P, 45 % C of dry mass */
const FISH = { nitrogen: 0.19, phosphorus: 0.017 } as const;

const bodyOf = (carbon: number) => ({
  carcassCarbon: carbon,
  carcassNitrogen: carbon * FISH.nitrogen,
  carcassPhosphorus: carbon * FISH.phosphorus,
});

/** Carbon of a fish of some fresh mass [mol]. @source memory: a quarter dry, 45 % carbon */
const carbonOf = (grams: number): number => (0.25 * 0.45 * grams) / GRAMS_PER_MOL.carbon;
/** Fresh mass of the fish [g]; no abstract states it. @source assumed */
const TROUT = 250;
const POND_FISH = 100;

/**
 * Loss of what is left of a trout [%/d] over the days in which three quarters go. The abstract calls the relative loss
 * constant and says the bodies were gone in about 50 and more than 120 days, which 4.9 and 1.5 % a day of what is left
 * give; of the mass at the start they would give 20 and 67 days.
 */
function dailyLoss({ temperatures }: Question): number {
  const [temperature] = temperatures;
  if (temperature === undefined) throw new NotStated('no temperature is named');
  const carbon = carbonOf(TROUT);
  const stream = culture({
    water: { sodium: 1, chloride: 0.5 },
    setting: {
      waterVolume: 10,
      waterArea: 20,
      waterTemperature: temperature,
      surfaceRenewal: 1,
      carcassPace: carcassPace(carbon),
    },
    contents: bodyOf(carbon),
  });
  const course: [day: number, logarithm: number][] = [[0, 0]];
  for (let day = 1; day < 2000 && stream.amount('carcassCarbon') > 0.25 * carbon; day += 1) {
    stream.pass(24);
    course.push([day, Math.log(stream.amount('carcassCarbon') / carbon)]);
  }
  return -100 * slopeOf(course);
}

export const carcassLoss: Experiment = {
  name: 'breakdown of dead fish',
  asks: /carcass.*(daily loss|loss of initial)/i,
  answer: dailyLoss,
};

interface Mud {
  readonly setting: Entries;
  /** What it holds [mol], at rest under the phosphate of the water [mol/m3]. */
  readonly boundPhosphate: number;
  readonly phosphate: number;
}

/** The library's pond mud on an area [m2], to the depth that its phosphate reaches, at rest with the water above. */
function mudOf(area: number): Mud {
  const mud = library.material('pond-mud');
  if (mud.use !== 'layer' || !mud.phosphate) throw new Error('the library holds no mud that binds phosphate');
  const { maximum, half, balance } = mud.phosphate;
  const depth = MEDIANS['phosphate-sorption']!.mixedDepth! / 100;
  const grams = (mud.bulkDensity.value * depth * area * maximum.value) / 1000;
  const sites = grams / GRAMS_PER_MOL.phosphorus;
  return {
    setting: {
      phosphateSites: sites,
      phosphateHalf: half.value / GRAMS_PER_MOL.phosphorus,
      phosphateBedArea: area,
    },
    boundPhosphate: (sites * balance.value) / (half.value + balance.value),
    phosphate: balance.value / GRAMS_PER_MOL.phosphorus,
  };
}

/**
 * Day on which the water holds most phosphorus, dissolved and in its algae, after fish are put into a shallow warm pond
 * of a cubic metre with algae on its walls and mud on its ground. @source assumed: 5 mmol of phosphorus, 25 °C, 300 umol/m2/s for 14 h
 */
function pulseDay(question: Question): number {
  const mud = mudOf(2);
  const pond = culture({
    water: { calcium: 0.8, sodium: 0.4, chloride: 0.3, nitrate: 0.02, phosphate: mud.phosphate },
    setting: {
      waterVolume: 1,
      waterArea: 2,
      waterDepth: 0.5,
      submergedArea: 5,
      darkFilmSurface: 0,
      wetSubstrate: 2,
      waterTemperature: question.temperatures[0] ?? 25,
      carcassPace: carcassPace(carbonOf(POND_FISH)),
      ...mud.setting,
    },
    contents: {
      ...bodyOf(0.3),
      attachedAlgae: 0.1,
      suspendedAlgae: 0.01,
      boundPhosphate: mud.boundPhosphate,
    },
  });
  const { phosphorusPerCarbon } = COMPOSITIONS.algae;
  let best = { day: 0, phosphorus: 0 };
  for (let day = 1; day <= 60; day += 1) {
    pond.pass(14, 300);
    pond.pass(10);
    const phosphorus = pond.amount('phosphate') + phosphorusPerCarbon * pond.amount('suspendedAlgae');
    if (phosphorus > best.phosphorus) best = { day, phosphorus };
  }
  return best.day;
}

export const carcassPulse: Experiment = {
  name: 'nutrients from dead fish',
  asks: /carcass.*(pulse|peak)/i,
  answer: pulseDay,
};
