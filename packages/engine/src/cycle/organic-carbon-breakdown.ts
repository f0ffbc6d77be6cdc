import type { Process } from '../process/contract.ts';
import { balanced } from '../process/stoichiometry.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { concentration, monod } from './concentration.ts';
import { thetaResponse } from './temperature-response.ts';

export interface OrganicCarbonBreakdownParameters {
  readonly rate: number;
  readonly labileRate: number;
  readonly theta: number;
  readonly oxygenHalf: number;
}

/**
 * Oxidation of dissolved organic carbon to carbon dioxide by bacteria, the stubborn coloured part and the colourless
 * part that is used up within weeks: k20 theta^(T - 20) DOC O2 / (K + O2).
 * @validity bleaching by light is left out; only the coloured part counts as an acid
 * @source chapra-1997, section 35 (first order with oxygen attenuation)
 */
export const organicCarbonBreakdown: Process<OrganicCarbonBreakdownParameters> = {
  id: 'organic-carbon-breakdown',
  parameters: {
    rate: { unit: '1/d', min: 0.0005, max: 0.3, meaning: 'oxidation of the coloured part at 20 degC' },
    labileRate: {
      unit: '1/d',
      min: 0.02,
      max: 3,
      meaning: 'oxidation of the colourless part at 20 degC',
    },
    theta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor per degree' },
    oxygenHalf: { unit: 'mg/L', min: 0.02, max: 2, meaning: 'oxygen at which half the rate is reached' },
  },
  reads: ['dissolvedOrganicCarbon', 'labileOrganicCarbon', 'oxygen', 'waterVolume', 'waterTemperature'],
  changes: ['dissolvedOrganicCarbon', 'labileOrganicCarbon', 'dissolvedInorganicCarbon', 'oxygen'],
  prepare(parameters, setting) {
    const coloured = setting.index('dissolvedOrganicCarbon');
    const labile = setting.index('labileOrganicCarbon');
    const oxygen = setting.index('oxygen');
    const volume = setting.index('waterVolume');
    const temperature = setting.index('waterTemperature');
    const rate = parameters.rate / SECONDS_PER_DAY;
    const labileRate = parameters.labileRate / SECONDS_PER_DAY;
    const oxygenHalf = parameters.oxygenHalf / MOLAR_MASS.oxygen;
    const warmth = thetaResponse(parameters.theta, 20);
    const burnt = { carbon: 'dissolvedInorganicCarbon', oxygen: 'oxygen' } as const;
    return {
      reactions: [
        {
          name: 'oxidation of coloured organic carbon',
          stoichiometry: balanced({ dissolvedOrganicCarbon: -1 }, burnt),
        },
        {
          name: 'oxidation of colourless organic carbon',
          stoichiometry: balanced({ labileOrganicCarbon: -1 }, burnt),
        },
      ],
      evaluate(values, rates, offset) {
        const breath = monod(concentration(values[oxygen]!, values[volume]!), oxygenHalf);
        const pace = warmth(values[temperature]!) * breath;
        rates[offset] = rate * pace * values[coloured]!;
        rates[offset + 1] = labileRate * pace * values[labile]!;
      },
    };
  },
};
