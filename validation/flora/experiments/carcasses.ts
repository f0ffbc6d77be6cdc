import { culture } from '../culture.ts';
import { type Experiment, NotStated, type Question } from '../experiment.ts';

/** Nitrogen and phosphorus over carbon of a whole fish [mol/mol]. @source memory: 10 % N, 2 % P, 45 % C of dry mass */
const FISH = { nitrogen: 0.19, phosphorus: 0.017 } as const;

const bodyOf = (carbon: number) => ({
  carcassCarbon: carbon,
  carcassNitrogen: carbon * FISH.nitrogen,
  carcassPhosphorus: carbon * FISH.phosphorus,
});

/** Mean loss over the time in which nine tenths of a body go [% of it per day]. */
function dailyLoss({ temperatures }: Question): number {
  const [temperature] = temperatures;
  if (temperature === undefined) throw new NotStated('no temperature is named');
  const carbon = 0.01;
  const stream = culture({
    water: { sodium: 1, chloride: 0.5 },
    setting: { waterTemperature: temperature, surfaceRenewal: 1 },
    contents: bodyOf(carbon),
  });
  let days = 0;
  while (stream.amount('carcassCarbon') > 0.1 * carbon && days < 2000) {
    stream.pass(24);
    days += 1;
  }
  return 90 / days;
}

export const carcassLoss: Experiment = {
  name: 'breakdown of dead fish',
  asks: /carcass.*(daily loss|loss of initial)/i,
  answer: dailyLoss,
};

/**
 * Day on which phosphorus in the water is highest after a fish is put into a shallow warm pond of a cubic metre with
 * algae on its walls. @source assumed: 5 mmol of phosphorus, 25 °C, 300 umol/m2/s for 14 h
 */
function pulseDay(question: Question): number {
  const pond = culture({
    water: { calcium: 0.8, sodium: 0.4, chloride: 0.3, nitrate: 0.02 },
    setting: {
      waterVolume: 1,
      waterArea: 2,
      waterDepth: 0.5,
      submergedArea: 5,
      darkFilmSurface: 0,
      wetSubstrate: 2,
      waterTemperature: question.temperatures[0] ?? 25,
    },
    contents: { ...bodyOf(0.3), attachedAlgae: 0.1, suspendedAlgae: 0.01 },
  });
  let best = { day: 0, phosphate: 0 };
  for (let day = 1; day <= 60; day += 1) {
    pond.pass(14, 300);
    pond.pass(10);
    const phosphate = pond.amount('phosphate');
    if (phosphate > best.phosphate) best = { day, phosphate };
  }
  return best.day;
}

export const carcassPulse: Experiment = {
  name: 'nutrients from dead fish',
  asks: /carcass.*(pulse|peak)/i,
  answer: pulseDay,
};
