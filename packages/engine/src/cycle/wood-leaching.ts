import type { Process } from '../process/contract.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { thetaResponse } from './temperature-response.ts';

export interface WoodLeachingParameters {
  readonly rate: number;
  readonly theta: number;
}

/**
 * Coloured organic acid leaving the wood: first order in what is left, k(T) = k20 theta^(T - 20).
 * @validity one pool stands for a fast and a slow one; the total released is the wood's content
 * @source assumed: first order; the rate is an estimate between the fast first weeks and the slow months after
 */
export const woodLeaching: Process<WoodLeachingParameters> = {
  id: 'wood-leaching',
  parameters: {
    rate: { unit: '1/d', min: 0.001, max: 0.5, meaning: 'leaching at 20 degC' },
    theta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor per degree' },
  },
  reads: ['woodLeachable', 'waterTemperature'],
  changes: ['woodLeachable', 'dissolvedOrganicCarbon'],
  prepare(parameters, setting) {
    const wood = setting.index('woodLeachable');
    const temperature = setting.index('waterTemperature');
    const rate = parameters.rate / SECONDS_PER_DAY;
    const warmth = thetaResponse(parameters.theta, 20);
    return {
      reactions: [
        { name: 'leaching from wood', stoichiometry: { woodLeachable: -1, dissolvedOrganicCarbon: 1 } },
      ],
      evaluate(values, rates, offset) {
        rates[offset] = rate * warmth(values[temperature]!) * values[wood]!;
      },
    };
  },
};
