import type { Process } from '../process/contract.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { thetaResponse } from './temperature-response.ts';

export interface WoodLeachingParameters {
  readonly quickRate: number;
  readonly slowRate: number;
  readonly labileShare: number;
  readonly theta: number;
}

/**
 * Coloured organic acid leaving wood and peat: first order in what is left of a quick and of a slow part,
 * k(T) = k20 theta^(T - 20). How much there is of each comes with the material. Part of the quick one is colourless.
 * @validity the total released is the material's content; a piece that rots gives more over years
 * @source assumed: first order; rates estimated for the first weeks and for the months after
 */
export const woodLeaching: Process<WoodLeachingParameters> = {
  id: 'wood-leaching',
  parameters: {
    quickRate: { unit: '1/d', min: 0.02, max: 1, meaning: 'leaching of the quick part at 20 degC' },
    slowRate: { unit: '1/d', min: 0.001, max: 0.1, meaning: 'leaching of the slow part at 20 degC' },
    labileShare: { unit: '1', min: 0, max: 1, meaning: 'part of the quick leachate that is colourless' },
    theta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor per degree' },
  },
  reads: ['woodLeachable', 'woodLeachableSlow', 'waterTemperature'],
  changes: ['woodLeachable', 'woodLeachableSlow', 'dissolvedOrganicCarbon', 'labileOrganicCarbon'],
  prepare(parameters, setting) {
    const quick = setting.index('woodLeachable');
    const slow = setting.index('woodLeachableSlow');
    const temperature = setting.index('waterTemperature');
    const quickRate = ((1 - parameters.labileShare) * parameters.quickRate) / SECONDS_PER_DAY;
    const labileRate = (parameters.labileShare * parameters.quickRate) / SECONDS_PER_DAY;
    const slowRate = parameters.slowRate / SECONDS_PER_DAY;
    const warmth = thetaResponse(parameters.theta, 20);
    return {
      reactions: [
        { name: 'quick leaching', stoichiometry: { woodLeachable: -1, dissolvedOrganicCarbon: 1 } },
        { name: 'slow leaching', stoichiometry: { woodLeachableSlow: -1, dissolvedOrganicCarbon: 1 } },
        { name: 'quick leaching of sugars', stoichiometry: { woodLeachable: -1, labileOrganicCarbon: 1 } },
      ],
      evaluate(values, rates, offset) {
        const pace = warmth(values[temperature]!);
        rates[offset] = quickRate * pace * values[quick]!;
        rates[offset + 1] = slowRate * pace * values[slow]!;
        rates[offset + 2] = labileRate * pace * values[quick]!;
      },
    };
  },
};
