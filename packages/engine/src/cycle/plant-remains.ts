import type { Process } from '../process/contract.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { COMPOSITIONS } from '../variables/compositions.ts';
import { eatenWhole } from './eaten-whole.ts';
import { lossToDetritus } from './producer.ts';
import { thetaResponse } from './temperature-response.ts';

export interface PlantRemainsParameters {
  readonly rate: number;
  readonly theta: number;
}

/**
 * Dead water plants falling to detritus, first order: k20 pace theta^(T - 20) pool, the pace being the
 * mean of the kinds that lie there, 1 for soft shoots; animals eat them at their clearance, as
 * in `grazing`.
 * @validity fresh dead parts; dried ones take longer
 * @source olson-1963 (first order)
 */
export const plantRemains: Process<PlantRemainsParameters> = {
  id: 'plant-remains',
  parameters: {
    rate: { unit: '1/d', min: 0.001, max: 0.2, meaning: 'breakdown of soft shoots at 20 degC' },
    theta: { unit: '1', min: 1, max: 1.2, meaning: 'temperature factor per degree' },
  },
  reads: ['plantRemains', 'remainsPace', 'waterTemperature', 'grazingOnDeadPlants'],
  changes: [
    'plantRemains',
    'detritusCarbon',
    'detritusNitrogen',
    'detritusPhosphorus',
    'eatenCarbon',
    'eatenNitrogen',
    'eatenPhosphorus',
  ],
  prepare(parameters, setting) {
    const pool = setting.index('plantRemains');
    const pace = setting.index('remainsPace');
    const clearance = setting.index('grazingOnDeadPlants');
    const temperature = setting.index('waterTemperature');
    const rate = parameters.rate / SECONDS_PER_DAY;
    const warmth = thetaResponse(parameters.theta, 20);
    return {
      reactions: [
        {
          name: 'detritus from dead plants',
          stoichiometry: lossToDetritus('plantRemains', COMPOSITIONS.submergedPlants),
        },
        {
          name: 'dead water plants eaten',
          stoichiometry: eatenWhole('plantRemains', COMPOSITIONS.submergedPlants),
        },
      ],
      evaluate(values, rates, offset) {
        rates[offset] = rate * values[pace]! * warmth(values[temperature]!) * values[pool]!;
        rates[offset + 1] = values[clearance]! * values[pool]!;
      },
    };
  },
};
