import type { Process } from '../process/contract.ts';
import { balanced } from '../process/stoichiometry.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { concentration, monod } from './concentration.ts';
import { thetaResponse } from './temperature-response.ts';

export interface OrganicCarbonBreakdownParameters {
  readonly rate: number;
  readonly theta: number;
  readonly oxygenHalf: number;
}

/**
 * Oxidation of coloured dissolved organic carbon to carbon dioxide by bacteria:
 * k20 theta^(T - 20) DOC O2 / (K + O2).
 * @validity one pool for labile and stubborn colour; bleaching by light is left out
 * @source chapra-1997, section 35 (first order with oxygen attenuation)
 */
export const organicCarbonBreakdown: Process<OrganicCarbonBreakdownParameters> = {
  id: 'organic-carbon-breakdown',
  parameters: {
    rate: { unit: '1/d', min: 0.0005, max: 0.3, meaning: 'oxidation at 20 degC' },
    theta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor per degree' },
    oxygenHalf: { unit: 'mg/L', min: 0.02, max: 2, meaning: 'oxygen at which half the rate is reached' },
  },
  reads: ['dissolvedOrganicCarbon', 'oxygen', 'waterVolume', 'waterTemperature'],
  changes: ['dissolvedOrganicCarbon', 'dissolvedInorganicCarbon', 'oxygen'],
  prepare(parameters, setting) {
    const organicCarbon = setting.index('dissolvedOrganicCarbon');
    const oxygen = setting.index('oxygen');
    const volume = setting.index('waterVolume');
    const temperature = setting.index('waterTemperature');
    const rate = parameters.rate / SECONDS_PER_DAY;
    const oxygenHalf = parameters.oxygenHalf / MOLAR_MASS.oxygen;
    const warmth = thetaResponse(parameters.theta, 20);
    return {
      reactions: [
        {
          name: 'oxidation of coloured organic carbon',
          stoichiometry: balanced(
            { dissolvedOrganicCarbon: -1 },
            { carbon: 'dissolvedInorganicCarbon', oxygen: 'oxygen' },
          ),
        },
      ],
      evaluate(values, rates, offset) {
        const breath = monod(concentration(values[oxygen]!, values[volume]!), oxygenHalf);
        rates[offset] = rate * warmth(values[temperature]!) * breath * values[organicCarbon]!;
      },
    };
  },
};
