import type { Process } from '../process/contract.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { concentration, monod } from './concentration.ts';

export interface ShellBuildingParameters {
  readonly time: number;
  readonly calciumHalf: number;
}

/**
 * Calcium carbonate that growing snails and moulting crustaceans take from the water, and that their dead leave:
 * (target - shells)/tau Ca/(K + Ca) while bodies outgrow their shells; what the dead of a day carried, and
 * (shells - target)/tau when bodies shrink, lies as calcite, or as aragonite if a snail built it. The target is set once a day from the bodies' mass and the library's share of CaCO3 in them.
 * @validity moults are eaten or kept in the mean share; calcium in food is not counted
 * @source greenaway-1971 (uptake by a freshwater snail saturates with calcium), hasse-2000 (snail shells are aragonite); the daily mean is derived
 */
export const shellBuilding: Process<ShellBuildingParameters> = {
  id: 'shell-building',
  parameters: {
    time: { unit: 'd', min: 0.2, max: 30, meaning: 'time in which shells follow the bodies' },
    calciumHalf: { unit: 'mmol/L', min: 0.01, max: 3, meaning: 'calcium at which uptake is halved' },
  },
  reads: [
    'shellTarget',
    'shellLoss',
    'shellAragonite',
    'shellCarbonate',
    'carbonateSolid',
    'aragoniteSolid',
    'calcium',
    'bicarbonate',
    'dissolvedInorganicCarbon',
    'waterVolume',
  ],
  changes: ['shellCarbonate', 'carbonateSolid', 'aragoniteSolid', 'calcium', 'dissolvedInorganicCarbon'],
  prepare(parameters, setting) {
    const target = setting.index('shellTarget');
    const shells = setting.index('shellCarbonate');
    const loss = setting.index('shellLoss');
    const aragonite = setting.index('shellAragonite');
    const calcium = setting.index('calcium');
    const bicarbonate = setting.index('bicarbonate');
    const carbon = setting.index('dissolvedInorganicCarbon');
    const volume = setting.index('waterVolume');
    const pace = 1 / (parameters.time * SECONDS_PER_DAY);
    const half = parameters.calciumHalf;
    return {
      reactions: [
        {
          name: 'shells and cuticles built',
          stoichiometry: { calcium: -1, dissolvedInorganicCarbon: -1, shellCarbonate: 1 },
        },
        { name: 'cuticles left by the dead', stoichiometry: { shellCarbonate: -1, carbonateSolid: 1 } },
        { name: 'snail shells left by the dead', stoichiometry: { shellCarbonate: -1, aragoniteSolid: 1 } },
      ],
      evaluate(values, rates, offset) {
        const lacking = values[target]! - values[shells]!;
        const carbonLeft = values[carbon]! > 0 ? values[bicarbonate]! : 0;
        const supply =
          monod(concentration(values[calcium]!, values[volume]!), half) * monod(carbonLeft, 0.5 * half);
        rates[offset] = lacking > 0 ? pace * lacking * supply : 0;
        const left = values[loss]! * values[shells]! + (lacking < 0 ? -pace * lacking : 0);
        const snails = Math.min(1, values[aragonite]!);
        rates[offset + 1] = left * (1 - snails);
        rates[offset + 2] = left * snails;
      },
    };
  },
};
