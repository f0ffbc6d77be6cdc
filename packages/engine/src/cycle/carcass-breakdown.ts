import type { Process } from '../process/contract.ts';
import { balanced } from '../process/stoichiometry.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { concentration, monod } from './concentration.ts';
import { thetaResponse } from './temperature-response.ts';

export interface CarcassBreakdownParameters {
  readonly rate: number;
  readonly oxidisedShare: number;
  readonly theta: number;
  readonly oxygenHalf: number;
}

/**
 * Dead animals falling apart, first order: k20 theta^(T - 20) pool. The oxidised share is used up by the bacteria on
 * it at once (carbon with oxygen, as O2/(K + O2); nitrogen to ammonium, phosphorus to phosphate, with oxygen or
 * without); the rest becomes detritus.
 * @validity bodies below about a gram and no scavengers; large bodies last longer, shells are apart
 * @source assumed: first order; rates from the works named in the library
 */
export const carcassBreakdown: Process<CarcassBreakdownParameters> = {
  id: 'carcass-breakdown',
  parameters: {
    rate: { unit: '1/d', min: 0.02, max: 2, meaning: 'loss of small dead animals at 20 degC' },
    oxidisedShare: { unit: '1', min: 0, max: 1, meaning: 'part used up at once, the rest becoming detritus' },
    theta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor per degree' },
    oxygenHalf: { unit: 'mg/L', min: 0.02, max: 2, meaning: 'oxygen at which half the rate is reached' },
  },
  reads: [
    'carcassCarbon',
    'carcassNitrogen',
    'carcassPhosphorus',
    'oxygen',
    'waterVolume',
    'waterTemperature',
  ],
  changes: [
    'carcassCarbon',
    'carcassNitrogen',
    'carcassPhosphorus',
    'detritusCarbon',
    'detritusNitrogen',
    'detritusPhosphorus',
    'dissolvedInorganicCarbon',
    'ammonium',
    'phosphate',
    'oxygen',
  ],
  prepare(parameters, setting) {
    const carbon = setting.index('carcassCarbon');
    const nitrogen = setting.index('carcassNitrogen');
    const phosphorus = setting.index('carcassPhosphorus');
    const oxygen = setting.index('oxygen');
    const volume = setting.index('waterVolume');
    const temperature = setting.index('waterTemperature');
    const rate = parameters.rate / SECONDS_PER_DAY;
    const oxidised = parameters.oxidisedShare;
    const oxygenHalf = parameters.oxygenHalf / MOLAR_MASS.oxygen;
    const warmth = thetaResponse(parameters.theta, 20);
    return {
      reactions: [
        { name: 'detritus from the dead, carbon', stoichiometry: { carcassCarbon: -1, detritusCarbon: 1 } },
        {
          name: 'detritus from the dead, nitrogen',
          stoichiometry: { carcassNitrogen: -1, detritusNitrogen: 1 },
        },
        {
          name: 'detritus from the dead, phosphorus',
          stoichiometry: { carcassPhosphorus: -1, detritusPhosphorus: 1 },
        },
        {
          name: 'oxidation of dead animals',
          stoichiometry: balanced(
            { carcassCarbon: -1 },
            { carbon: 'dissolvedInorganicCarbon', oxygen: 'oxygen' },
          ),
        },
        { name: 'ammonium from dead animals', stoichiometry: { carcassNitrogen: -1, ammonium: 1 } },
        { name: 'phosphate from dead animals', stoichiometry: { carcassPhosphorus: -1, phosphate: 1 } },
      ],
      evaluate(values, rates, offset) {
        const pace = rate * warmth(values[temperature]!);
        const breath = monod(concentration(values[oxygen]!, values[volume]!), oxygenHalf);
        const apart = pace * (1 - oxidised);
        const atOnce = pace * oxidised;
        rates[offset] = apart * values[carbon]!;
        rates[offset + 1] = apart * values[nitrogen]!;
        rates[offset + 2] = apart * values[phosphorus]!;
        rates[offset + 3] = atOnce * breath * values[carbon]!;
        rates[offset + 4] = atOnce * values[nitrogen]!;
        rates[offset + 5] = atOnce * values[phosphorus]!;
      },
    };
  },
};
