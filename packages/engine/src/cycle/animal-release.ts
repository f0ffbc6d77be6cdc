import type { Process } from '../process/contract.ts';
import { balanced } from '../process/stoichiometry.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { concentration, monod } from './concentration.ts';

export interface AnimalReleaseParameters {
  readonly timeConstant: number;
  readonly oxygenHalf: number;
}

/**
 * What the animals respire and excrete of the day before, let out over the day: pool / tau for ammonium and
 * phosphate, pool / tau O2/(K + O2) for carbon dioxide.
 * @validity tau only spreads a daily sum over the hours; it is no physiology
 * @source assumed: first order with a time constant of a quarter of a day
 */
export const animalRelease: Process<AnimalReleaseParameters> = {
  id: 'animal-release',
  parameters: {
    timeConstant: { unit: 'h', min: 1, max: 24, meaning: 'time over which the daily sum is let out' },
    oxygenHalf: { unit: 'mg/L', min: 0.02, max: 2, meaning: 'oxygen at which respiration is halved' },
  },
  reads: ['excretedCarbon', 'excretedNitrogen', 'excretedPhosphorus', 'oxygen', 'waterVolume'],
  changes: [
    'excretedCarbon',
    'excretedNitrogen',
    'excretedPhosphorus',
    'dissolvedInorganicCarbon',
    'ammonium',
    'phosphate',
    'oxygen',
  ],
  prepare(parameters, setting) {
    const carbon = setting.index('excretedCarbon');
    const nitrogen = setting.index('excretedNitrogen');
    const phosphorus = setting.index('excretedPhosphorus');
    const oxygen = setting.index('oxygen');
    const volume = setting.index('waterVolume');
    const pace = 1 / (parameters.timeConstant * 3600);
    const oxygenHalf = parameters.oxygenHalf / MOLAR_MASS.oxygen;
    return {
      reactions: [
        {
          name: 'respiration of animals',
          stoichiometry: balanced(
            { excretedCarbon: -1 },
            { carbon: 'dissolvedInorganicCarbon', oxygen: 'oxygen' },
          ),
        },
        { name: 'excretion of ammonium', stoichiometry: { excretedNitrogen: -1, ammonium: 1 } },
        { name: 'excretion of phosphate', stoichiometry: { excretedPhosphorus: -1, phosphate: 1 } },
      ],
      evaluate(values, rates, offset) {
        const breath = monod(concentration(values[oxygen]!, values[volume]!), oxygenHalf);
        rates[offset] = pace * breath * values[carbon]!;
        rates[offset + 1] = pace * values[nitrogen]!;
        rates[offset + 2] = pace * values[phosphorus]!;
      },
    };
  },
};
