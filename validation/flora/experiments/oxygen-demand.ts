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

/** Dry part of feed as given. @source memory */
const DRY = 0.9;

/** Oxygen that a gram of feed as given uses until all its carbon is burnt and its nitrogen is nitrate [g O2/g]. */
export const feedDemand: Experiment = {
  name: 'oxygen that feed uses in all',
  asks: /feed.*(whole|total|in all|oxygen demand)/i,
  answer(question) {
    const volume = 1e-3;
    const carbon = (PORTION * CARBON_SHARE.feed) / GRAMS_PER_MOL.carbon;
    // 7.4 % nitrogen and 1.2 % phosphorus: general composition of dry feeds (memory)
    const bottle = culture({
      water: { sodium: 10, chloride: 0.5, oxygen: 20 },
      setting: {
        waterVolume: volume,
        waterArea: 0,
        waterDepth: 0.1,
        submergedArea: 0.1,
        darkFilmSurface: 0,
        wetSubstrate: 0,
        surfaceRenewal: 0,
        waterTemperature: temperatureOf(question, 25),
      },
      contents: {
        feedCarbon: carbon,
        feedNitrogen: (PORTION * 0.074) / GRAMS_PER_MOL.nitrogen,
        feedPhosphorus: (PORTION * 0.012) / GRAMS_PER_MOL.phosphorus,
        ammoniaOxidisers: 1e-5,
        nitriteOxidisers: 1e-5,
      },
      without: ['gas-exchange', 'attached-algae', 'suspended-algae', 'denitrification'],
    });
    const before = bottle.amount('oxygen');
    bottle.pass(24 * 365);
    const own = 2e-5;
    return ((before - bottle.amount('oxygen') - own) * GRAMS_PER_MOL.oxygen * DRY) / PORTION;
  },
};

export const faecesRespiration: Experiment = {
  name: 'oxygen used by faeces',
  asks: /f(a)?eces.*(respiration|oxygen)/i,
  answer: (question) => uptake('detritus', 6, temperatureOf(question, 20)),
};
