import { exp } from '../numerics/elementary.ts';
import type { Process } from '../process/contract.ts';
import { balanced, type Stoichiometry } from '../process/stoichiometry.ts';
import { ICE_POINT } from '../units/constants.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { concentration, monod } from './concentration.ts';
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
import { rememberingLast } from './temperature-response.ts';

export interface NitriteOxidationParameters extends FilmOxidationParameters {
  readonly nitrogenHalf: number;
  readonly ammoniaInhibition: number;
  readonly nitrousAcidInhibition: number;
}

const GUILD: Guild = { biomass: 'nitriteOxidisers', substrate: 'nitrite' };
const MICROMOLAR = 1e-3;

/**
 * Dissociation constant of nitrous acid [mol/L]: exp(-2300 / T), T in K.
 * @param temperature [degC], 5 to 40
 * @source anthonisen-1976
 */
export function nitrousAcidConstant(temperature: number): number {
  return exp(-2300 / (temperature + ICE_POINT));
}

/**
 * Per mol of nitrite oxidised to nitrate: y mol C of biomass, its nitrogen taken from nitrite as well.
 * @param gramsDemandPerGramNitrogen yield [g COD/g N]
 * @source derived: element balance
 */
export function nitriteOxidationStoichiometry(gramsDemandPerGramNitrogen: number): Stoichiometry {
  return balanced(
    { nitrate: 1, nitriteOxidisers: molarYield(gramsDemandPerGramNitrogen) },
    {
      carbon: 'dissolvedInorganicCarbon',
      nitrogen: 'nitrite',
      phosphorus: 'phosphate',
      oxygen: 'oxygen',
    },
  );
}

/**
 * Second step of nitrification by growing nitrite oxidisers; see `filmCapacity` for the rate in plenty, here times
 * NO2/(K + NO2) 1/(1 + NH3/K_A) 1/(1 + HNO2/K_N): nitrite arises in the film and need not diffuse to it; both free
 * ammonia and free nitrous acid slow it, HNO2 = NO2 aH / K_a.
 * @validity 1 to 32 degC
 * @source henze-2000 (structure), vannecke-2015 (activation energy), park-2009 (inhibition constants)
 */
export const nitriteOxidation: Process<NitriteOxidationParameters> = {
  id: 'nitrite-oxidation',
  parameters: {
    ...FILM_OXIDATION_SPECS,
    nitrogenHalf: { unit: 'mg N/L', min: 0.01, max: 5, meaning: 'nitrite at half the highest rate' },
    ammoniaInhibition: { unit: 'µmol/L', min: 5, max: 500, meaning: 'free ammonia that halves the rate' },
    nitrousAcidInhibition: {
      unit: 'µmol/L',
      min: 0.3,
      max: 50,
      meaning: 'free nitrous acid that halves the rate',
    },
  },
  reads: [...filmReads(GUILD), 'unionisedAmmonia'],
  changes: [
    'nitrite',
    'nitrate',
    'nitriteOxidisers',
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
    const ammonia = setting.index('unionisedAmmonia');
    const nitrite = setting.index('nitrite');
    const hydrogen = setting.index('hydrogenActivity');
    const volume = setting.index('waterVolume');
    const temperature = setting.index('waterTemperature');
    const ammoniaHalf = parameters.ammoniaInhibition * MICROMOLAR;
    const nitriteHalf = parameters.nitrogenHalf / MOLAR_MASS.nitrogen;
    const nitrousHalf = parameters.nitrousAcidInhibition * MICROMOLAR;
    const nitrousHalfTimesConstant = rememberingLast((degrees) => nitrousHalf * nitrousAcidConstant(degrees));
    return {
      reactions: [
        { name: 'oxidation of nitrite', stoichiometry: nitriteOxidationStoichiometry(parameters.yield) },
        {
          name: 'decay of nitrite oxidisers',
          stoichiometry: { nitriteOxidisers: -1, ...BACTERIA_TO_DETRITUS },
        },
      ],
      evaluate(values, rates, offset) {
        const content = concentration(values[nitrite]!, values[volume]!);
        const nitrousAcid = (content * values[hydrogen]!) / nitrousHalfTimesConstant(values[temperature]!);
        const spared = ammoniaHalf / (ammoniaHalf + values[ammonia]!) / (1 + nitrousAcid);
        rates[offset] = spared * monod(content, nitriteHalf) * capacity(values);
        rates[offset + 1] = decay(values);
      },
    };
  },
};
