import type { Process } from '../process/contract.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { thetaResponse } from './temperature-response.ts';

export interface LitterBreakdownParameters {
  readonly breakdownRate: number;
  readonly breakdownTheta: number;
  readonly leachingRate: number;
  readonly leachingTheta: number;
}

/**
 * Leaf litter in the water: its soluble part leaves within days as coloured organic carbon,
 * k_l20 theta_l^(T - 20) leachable; what is left falls to detritus, k_b20 theta_b^(T - 20) litter, carbon,
 * nitrogen and phosphorus alike.
 * @validity no gain of nitrogen by litter in its first weeks, no effect of acid water; leaf eaters come on top
 * @source olson-1963 (first order), webster-1986 (rates), taylor-1996 (leaching)
 */
export const litterBreakdown: Process<LitterBreakdownParameters> = {
  id: 'litter-breakdown',
  parameters: {
    breakdownRate: { unit: '1/d', min: 0.0005, max: 0.08, meaning: 'breakdown of leaves at 20 degC' },
    breakdownTheta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor of breakdown per degree' },
    leachingRate: { unit: '1/d', min: 0.1, max: 5, meaning: 'leaching of the soluble part at 20 degC' },
    leachingTheta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor of leaching per degree' },
  },
  reads: ['litterCarbon', 'litterNitrogen', 'litterPhosphorus', 'litterLeachable', 'waterTemperature'],
  changes: [
    'litterCarbon',
    'litterNitrogen',
    'litterPhosphorus',
    'litterLeachable',
    'detritusCarbon',
    'detritusNitrogen',
    'detritusPhosphorus',
    'dissolvedOrganicCarbon',
  ],
  prepare(parameters, setting) {
    const carbon = setting.index('litterCarbon');
    const nitrogen = setting.index('litterNitrogen');
    const phosphorus = setting.index('litterPhosphorus');
    const leachable = setting.index('litterLeachable');
    const temperature = setting.index('waterTemperature');
    const breakdownRate = parameters.breakdownRate / SECONDS_PER_DAY;
    const leachingRate = parameters.leachingRate / SECONDS_PER_DAY;
    const breakdownWarmth = thetaResponse(parameters.breakdownTheta, 20);
    const leachingWarmth = thetaResponse(parameters.leachingTheta, 20);
    return {
      reactions: [
        { name: 'detritus from litter, carbon', stoichiometry: { litterCarbon: -1, detritusCarbon: 1 } },
        {
          name: 'detritus from litter, nitrogen',
          stoichiometry: { litterNitrogen: -1, detritusNitrogen: 1 },
        },
        {
          name: 'detritus from litter, phosphorus',
          stoichiometry: { litterPhosphorus: -1, detritusPhosphorus: 1 },
        },
        { name: 'leaching from litter', stoichiometry: { litterLeachable: -1, dissolvedOrganicCarbon: 1 } },
      ],
      evaluate(values, rates, offset) {
        const degrees = values[temperature]!;
        const pace = breakdownRate * breakdownWarmth(degrees);
        rates[offset] = pace * values[carbon]!;
        rates[offset + 1] = pace * values[nitrogen]!;
        rates[offset + 2] = pace * values[phosphorus]!;
        rates[offset + 3] = leachingRate * leachingWarmth(degrees) * values[leachable]!;
      },
    };
  },
};
