import { cbrt } from '../numerics/elementary.ts';
import type { Process } from '../process/contract.ts';
import { concentration } from './concentration.ts';
import {
  CARBON_DIOXIDE_SCHMIDT,
  OXYGEN_SCHMIDT,
  type SchmidtCubic,
  schmidtNumber,
} from './schmidt-number.ts';
import { rememberingLast, type TemperatureResponse } from './temperature-response.ts';

export interface GasExchangeParameters {
  readonly stillVelocity: number;
  readonly stirredVelocity: number;
}

const METRES_PER_SECOND = 0.01 / 3600;

/** (Sc / 600)^(-2/3) of a gas, over temperature. */
function stillVelocity(cubic: SchmidtCubic): TemperatureResponse {
  return rememberingLast((temperature) => {
    const root = cbrt(schmidtNumber(cubic, temperature) / 600);
    return 1 / (root * root);
  });
}

/** (Sc / 600)^(-1/2) of a gas, over temperature. */
function stirredVelocity(cubic: SchmidtCubic): TemperatureResponse {
  return rememberingLast((temperature) => 1 / Math.sqrt(schmidtNumber(cubic, temperature) / 600));
}

/**
 * Exchange of oxygen and carbon dioxide with the air over the water:
 * dC/dt = (A k + Q_E) (C_eq - C) / V, k = (1 - s) k_still (Sc/600)^(-2/3) + s k_stirred (Sc/600)^(-1/2),
 * with s the stirred share of the surface (`surfaceRenewal`) and Q_E the water a fall brings to balance
 * (`fallAeration`). In and out are booked apart, so that neither rate is ever negative.
 * @validity no chemical enhancement of carbon dioxide uptake, which matters above pH 8.5 in still water
 * @source liss-1974 (film form), jahne-1987 (exponents), wanninkhof-1992 (Schmidt numbers)
 */
export const gasExchange: Process<GasExchangeParameters> = {
  id: 'gas-exchange',
  parameters: {
    stillVelocity: { unit: 'cm/h', min: 0.1, max: 5, meaning: 'transfer velocity k600 of a still surface' },
    stirredVelocity: {
      unit: 'cm/h',
      min: 0.5,
      max: 20,
      meaning: 'transfer velocity k600 of a surface moved by a pump',
    },
  },
  reads: [
    'waterVolume',
    'waterArea',
    'waterTemperature',
    'surfaceRenewal',
    'fallAeration',
    'oxygen',
    'oxygenSaturation',
    'dissolvedInorganicCarbon',
    'carbonDioxide',
    'carbonDioxideSaturation',
  ],
  changes: ['oxygen', 'dissolvedInorganicCarbon'],
  boundary: ['oxygen', 'carbon'],
  prepare(parameters, setting) {
    const volume = setting.index('waterVolume');
    const area = setting.index('waterArea');
    const temperature = setting.index('waterTemperature');
    const renewal = setting.index('surfaceRenewal');
    const fall = setting.index('fallAeration');
    const oxygen = setting.index('oxygen');
    const oxygenSaturation = setting.index('oxygenSaturation');
    const inorganicCarbon = setting.index('dissolvedInorganicCarbon');
    const carbonDioxide = setting.index('carbonDioxide');
    const carbonDioxideSaturation = setting.index('carbonDioxideSaturation');

    const still = parameters.stillVelocity * METRES_PER_SECOND;
    const stirred = parameters.stirredVelocity * METRES_PER_SECOND;
    const oxygenStill = stillVelocity(OXYGEN_SCHMIDT);
    const oxygenStirred = stirredVelocity(OXYGEN_SCHMIDT);
    const carbonStill = stillVelocity(CARBON_DIOXIDE_SCHMIDT);
    const carbonStirred = stirredVelocity(CARBON_DIOXIDE_SCHMIDT);

    return {
      reactions: [
        { name: 'oxygen from the air', stoichiometry: { oxygen: 1 } },
        { name: 'oxygen to the air', stoichiometry: { oxygen: -1 } },
        { name: 'carbon dioxide from the air', stoichiometry: { dissolvedInorganicCarbon: 1 } },
        { name: 'carbon dioxide to the air', stoichiometry: { dissolvedInorganicCarbon: -1 } },
      ],
      evaluate(values, rates, offset) {
        const water = values[volume]!;
        const degrees = values[temperature]!;
        const share = values[renewal]!;
        const stillFlow = values[area]! * still * (1 - share);
        const stirredFlow = values[area]! * stirred * share;
        const wet = water > 0 ? 1 : 0;
        const oxygenFlow =
          wet * (stillFlow * oxygenStill(degrees) + stirredFlow * oxygenStirred(degrees) + values[fall]!);
        const carbonFlow =
          wet * (stillFlow * carbonStill(degrees) + stirredFlow * carbonStirred(degrees) + values[fall]!);
        rates[offset] = oxygenFlow * values[oxygenSaturation]!;
        rates[offset + 1] = oxygenFlow * concentration(values[oxygen]!, water);
        rates[offset + 2] = carbonFlow * values[carbonDioxideSaturation]!;
        rates[offset + 3] =
          carbonFlow * Math.min(values[carbonDioxide]!, concentration(values[inorganicCarbon]!, water));
      },
    };
  },
};
