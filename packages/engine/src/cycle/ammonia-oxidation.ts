import type { Process } from '../process/contract.ts';
import { balanced, type Stoichiometry } from '../process/stoichiometry.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import {
  BACTERIA_TO_DETRITUS,
  FILM_OXIDATION_SPECS,
  type FilmOxidationParameters,
  filmDecay,
  filmOxidation,
  filmReads,
  type Guild,
  molarYield,
} from './film-oxidation.ts';

export interface AmmoniaOxidationParameters extends FilmOxidationParameters {
  readonly filmTransfer: number;
}

const GUILD: Guild = { biomass: 'ammoniaOxidisers', substrate: 'ammonium' };

/**
 * Per mol of nitrogen oxidised to nitrite: y mol C of biomass built from carbon dioxide, ammonium and phosphate, and
 * 1.5 - y mol O2. Alkalinity falls by 2 eq per mol oxidised through the ions alone.
 * @param gramsDemandPerGramNitrogen yield [g COD/g N]
 * @source derived: element balance
 */
export function ammoniaOxidationStoichiometry(gramsDemandPerGramNitrogen: number): Stoichiometry {
  return balanced(
    { nitrite: 1, ammoniaOxidisers: molarYield(gramsDemandPerGramNitrogen) },
    {
      carbon: 'dissolvedInorganicCarbon',
      nitrogen: 'ammonium',
      phosphorus: 'phosphate',
      oxygen: 'oxygen',
    },
  );
}

/**
 * First step of nitrification by growing ammonia oxidisers, bacteria and archaea as one guild: as quick as the bacteria
 * where ammonia is plentiful, as thrifty as archaea and complete oxidisers where it is scarce; see `filmOxidation` for the
 * rate. Ammonia diffuses to them from the water.
 * @validity 1 to 32 degC; inhibition by its own substrate begins far above what animals bear and is left out
 * @source henze-2000 (structure), vannecke-2015 (activation energy)
 */
export const ammoniaOxidation: Process<AmmoniaOxidationParameters> = {
  id: 'ammonia-oxidation',
  parameters: {
    ...FILM_OXIDATION_SPECS,
    filmTransfer: {
      unit: 'm/d',
      min: 0.1,
      max: 10,
      meaning:
        'way of ammonia from the water to the cells of a film, as water stripped of it per film surface',
    },
  },
  reads: filmReads(GUILD),
  changes: [
    'ammonium',
    'nitrite',
    'ammoniaOxidisers',
    'dissolvedInorganicCarbon',
    'phosphate',
    'oxygen',
    'detritusCarbon',
    'detritusNitrogen',
    'detritusPhosphorus',
  ],
  prepare(parameters, setting) {
    const oxidation = filmOxidation(parameters, GUILD, setting, parameters.filmTransfer / SECONDS_PER_DAY);
    const decay = filmDecay(parameters, GUILD, setting);
    return {
      reactions: [
        { name: 'oxidation of ammonia', stoichiometry: ammoniaOxidationStoichiometry(parameters.yield) },
        {
          name: 'decay of ammonia oxidisers',
          stoichiometry: { ammoniaOxidisers: -1, ...BACTERIA_TO_DETRITUS },
        },
      ],
      evaluate(values, rates, offset) {
        rates[offset] = oxidation(values);
        rates[offset + 1] = decay(values);
      },
    };
  },
};
