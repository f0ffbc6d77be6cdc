import type { Process } from '../process/contract.ts';
import { balanced } from '../process/stoichiometry.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { concentration, monod } from './concentration.ts';
import { thetaResponse } from './temperature-response.ts';

export interface MineralisationParameters {
  readonly carbonRate: number;
  readonly nitrogenRate: number;
  readonly phosphorusRate: number;
  readonly theta: number;
  readonly oxygenHalf: number;
  readonly shareWithoutOxygen: number;
}

/**
 * Breakdown of detritus to dissolved carbon dioxide, ammonium and phosphate, each first order in its pool:
 * k20 theta^(T - 20) pool f, with f = O2/(K + O2) for carbon, which needs the oxygen, and
 * f = s + (1 - s) O2/(K + O2) for nitrogen and phosphorus, which hydrolysis goes on releasing at the share s.
 * Without oxygen it therefore slows: carbon waits, and nutrients leave at the reduced rate.
 * @validity one pool for faeces, feed residue and plant remains; no methane, no hydrogen sulfide; bacteria holding
 *   nitrogen back from poor detritus is left out
 * @source chapra-1997 (first order), henze-2000 (reduction of hydrolysis without oxygen)
 */
export const mineralisation: Process<MineralisationParameters> = {
  id: 'mineralisation',
  parameters: {
    carbonRate: { unit: '1/d', min: 0.005, max: 0.5, meaning: 'oxidation of detritus carbon at 20 degC' },
    nitrogenRate: { unit: '1/d', min: 0.005, max: 0.5, meaning: 'release of ammonium at 20 degC' },
    phosphorusRate: { unit: '1/d', min: 0.005, max: 0.5, meaning: 'release of phosphate at 20 degC' },
    theta: { unit: '1', min: 1, max: 1.15, meaning: 'temperature factor per degree' },
    oxygenHalf: { unit: 'mg/L', min: 0.02, max: 2, meaning: 'oxygen at which half the rate is reached' },
    shareWithoutOxygen: {
      unit: '1',
      min: 0,
      max: 1,
      meaning: 'nutrient release without oxygen over that with it',
    },
  },
  reads: [
    'detritusCarbon',
    'detritusNitrogen',
    'detritusPhosphorus',
    'oxygen',
    'waterVolume',
    'waterTemperature',
  ],
  changes: [
    'detritusCarbon',
    'detritusNitrogen',
    'detritusPhosphorus',
    'dissolvedInorganicCarbon',
    'ammonium',
    'phosphate',
    'oxygen',
  ],
  prepare(parameters, setting) {
    const carbon = setting.index('detritusCarbon');
    const nitrogen = setting.index('detritusNitrogen');
    const phosphorus = setting.index('detritusPhosphorus');
    const oxygen = setting.index('oxygen');
    const volume = setting.index('waterVolume');
    const temperature = setting.index('waterTemperature');
    const carbonRate = parameters.carbonRate / SECONDS_PER_DAY;
    const nitrogenRate = parameters.nitrogenRate / SECONDS_PER_DAY;
    const phosphorusRate = parameters.phosphorusRate / SECONDS_PER_DAY;
    const oxygenHalf = parameters.oxygenHalf / MOLAR_MASS.oxygen;
    const anoxic = parameters.shareWithoutOxygen;
    const warmth = thetaResponse(parameters.theta, 20);
    return {
      reactions: [
        {
          name: 'oxidation of detritus carbon',
          stoichiometry: balanced(
            { detritusCarbon: -1 },
            { carbon: 'dissolvedInorganicCarbon', oxygen: 'oxygen' },
          ),
        },
        { name: 'ammonium from detritus', stoichiometry: { detritusNitrogen: -1, ammonium: 1 } },
        { name: 'phosphate from detritus', stoichiometry: { detritusPhosphorus: -1, phosphate: 1 } },
      ],
      evaluate(values, rates, offset) {
        const pace = warmth(values[temperature]!);
        const breath = monod(concentration(values[oxygen]!, values[volume]!), oxygenHalf);
        const release = pace * (anoxic + (1 - anoxic) * breath);
        rates[offset] = carbonRate * pace * breath * values[carbon]!;
        rates[offset + 1] = nitrogenRate * release * values[nitrogen]!;
        rates[offset + 2] = phosphorusRate * release * values[phosphorus]!;
      },
    };
  },
};
