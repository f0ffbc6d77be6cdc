import type { Process } from '../process/contract.ts';
import { balanced, type Stoichiometry } from '../process/stoichiometry.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import {
  BACTERIA_TO_DETRITUS,
  FILM_OXIDATION_SPECS,
  type FilmOxidationParameters,
  filmCapacity,
  filmDecay,
  filmReads,
  type Guild,
  molarYield,
} from './film-oxidation.ts';

export interface AmmoniaOxidationParameters extends FilmOxidationParameters {
  readonly ammoniaHalf: number;
  readonly filmTransfer: number;
}

const MICROMOLAR = 1e-3;
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
 * where ammonia is plentiful, as thrifty as archaea and complete oxidisers where it is scarce.
 *   r = q S/(S + K S/n + q/(k A)), q the rate in plenty (`filmCapacity`)
 * with S all ammonia of the water, n the un-ionised part, which is what they take, K that which half saturates the cells, k
 * the transfer from the water to them and A the film surface. So K counts S/n times as much ammonia in acid water, and a
 * thick film is half saturated only by c/k more, with c its capacity per area.
 * @validity 1 to 32 degC; inhibition by its own substrate begins far above what animals bear and is left out; that acid
 *   water comes to hold archaea thriftier still is left out
 * @source henze-2000 (structure), vannecke-2015 (activation energy), jung-2022 (ammonia, not ammonium, is taken),
 *   zhu-chen-1999 (transfer); `derived`: cells and diffusion in series, 1/r = (1 + K/n)/q + 1/(k A S)
 */
export const ammoniaOxidation: Process<AmmoniaOxidationParameters> = {
  id: 'ammonia-oxidation',
  parameters: {
    ...FILM_OXIDATION_SPECS,
    ammoniaHalf: {
      unit: 'µmol/L',
      min: 0.002,
      max: 50,
      meaning: 'un-ionised ammonia that half saturates the cells',
    },
    filmTransfer: {
      unit: 'm/d',
      min: 0.1,
      max: 10,
      meaning:
        'way of ammonia from the water to the cells of a film, as water stripped of it per film surface',
    },
  },
  reads: [...filmReads(GUILD), 'unionisedAmmonia'],
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
    const capacity = filmCapacity(parameters, GUILD, setting);
    const decay = filmDecay(parameters, GUILD, setting);
    const half = parameters.ammoniaHalf * MICROMOLAR;
    const transfer = parameters.filmTransfer / SECONDS_PER_DAY;
    const ammonium = setting.index('ammonium');
    const ammonia = setting.index('unionisedAmmonia');
    const volume = setting.index('waterVolume');
    const lit = setting.index('submergedArea');
    const dark = setting.index('darkFilmSurface');
    return {
      reactions: [
        { name: 'oxidation of ammonia', stoichiometry: ammoniaOxidationStoichiometry(parameters.yield) },
        {
          name: 'decay of ammonia oxidisers',
          stoichiometry: { ammoniaOxidisers: -1, ...BACTERIA_TO_DETRITUS },
        },
      ],
      evaluate(values, rates, offset) {
        const all = values[ammonium]!;
        const unionised = values[ammonia]!;
        rates[offset] = 0;
        rates[offset + 1] = decay(values);
        if (!(all > 0 && unionised > 0)) return;
        const plenty = capacity(values);
        if (!(plenty > 0)) return;
        const content = all / values[volume]!;
        const reach = transfer * (values[lit]! + values[dark]!);
        rates[offset] = (plenty * content) / (content * (1 + half / unionised) + plenty / reach);
      },
    };
  },
};
