import { culture, GRAMS_PER_MOL } from '../culture.ts';
import { type Experiment, NotStated } from '../experiment.ts';

interface Bed {
  readonly temperature: number;
  /** [mol/m3] */
  readonly nitrate: number;
  readonly oxygen: number;
}

/** Nitrate lost a day by one square metre of muddy bed under a metre of water [mol N/m2/d]. */
function lost({ temperature, nitrate, oxygen }: Bed): number {
  const mud = culture({
    water: { nitrate, sodium: 4, oxygen },
    setting: {
      waterVolume: 1,
      waterArea: 1,
      waterDepth: 1,
      submergedArea: 1,
      darkFilmSurface: 0,
      wetSubstrate: 1,
      waterTemperature: temperature,
    },
    contents: { detritusCarbon: 20, detritusNitrogen: 1, detritusPhosphorus: 0.1 },
    without: ['attached-algae', 'suspended-algae', 'bacterial-film', 'mineralisation', 'gas-exchange'],
  });
  for (let hour = 0; hour < 24; hour += 1) {
    mud.pass(1);
    mud.hold({ nitrate, oxygen });
  }
  return mud.extent('denitrification');
}

const AIRED = 0.26;

export const denitrificationWarmth: Experiment = {
  name: 'denitrification and temperature',
  asks: /denitrif.*(temperature|Q10|ratio)/i,
  answer({ temperatures }) {
    const [cold, warm] = [Math.min(...temperatures), Math.max(...temperatures)];
    if (!(warm > cold)) throw new NotStated('two temperatures are needed');
    const slurry = { nitrate: 1, oxygen: 0 };
    return lost({ temperature: warm, ...slurry }) / lost({ temperature: cold, ...slurry });
  },
};

export const denitrificationRate: Experiment = {
  name: 'denitrification of lake sediment',
  asks: /denitrif.*(rate|littoral|sediment|loss|average)/i,
  answer({ unit }) {
    const rate = lost({ temperature: 20, nitrate: 1 / GRAMS_PER_MOL.nitrogen, oxygen: AIRED });
    if (/umol/.test(unit)) return (rate * 1e6) / 24;
    if (/mg N/.test(unit)) return rate * 1000 * GRAMS_PER_MOL.nitrogen;
    throw new NotStated('the unit is not one of nitrogen per area and time');
  },
};
