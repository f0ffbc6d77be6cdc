import { CARBON_SHARE, culture, GRAMS_PER_MOL } from '../culture.ts';
import { type Experiment, NotStated, temperatureOf } from '../experiment.ts';

/** Matter in the bottle [g dry]. */
const PORTION = 0.05;

/** Oxygen used in the first hours in a closed bottle of one litre of aired water, in the dark [mg O2/g/h]. */
function uptake(pool: 'feed' | 'detritus', hours: number, temperature: number): number {
  const share = pool === 'feed' ? CARBON_SHARE.feed : CARBON_SHARE.faeces;
  const carbon = (PORTION * share) / GRAMS_PER_MOL.carbon;
  const bottle = culture({
    water: { sodium: 1, chloride: 0.5 },
    setting: {
      waterVolume: 1e-3,
      waterArea: 0,
      waterDepth: 0.1,
      submergedArea: 0,
      darkFilmSurface: 0,
      wetSubstrate: 0,
      surfaceRenewal: 0,
      waterTemperature: temperature,
    },
    contents: { [`${pool}Carbon`]: carbon, [`${pool}Nitrogen`]: carbon * 0.12 },
    without: ['gas-exchange'],
  });
  const before = bottle.amount('oxygen');
  bottle.pass(hours);
  return ((before - bottle.amount('oxygen')) * GRAMS_PER_MOL.oxygen * 1000) / PORTION / hours;
}

export const feedRespiration: Experiment = {
  name: 'oxygen used by soaked feed',
  asks: /feed.*respiration|feed.*oxygen uptake/i,
  answer(question) {
    if (/liquid|leach/i.test(`${question.topic} ${question.setup}`))
      throw new NotStated('what dissolves from feed is not told apart from the feed');
    return uptake('feed', 6, temperatureOf(question, 20));
  },
};

export const faecesRespiration: Experiment = {
  name: 'oxygen used by faeces',
  asks: /f(a)?eces.*(respiration|oxygen)/i,
  answer: (question) => uptake('detritus', 6, temperatureOf(question, 20)),
};
