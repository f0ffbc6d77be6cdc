import type { Process } from '../process/contract.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';

export interface PhosphateSorptionParameters {
  readonly bedVelocity: number;
  readonly mixedDepth: number;
}

/**
 * Phosphate bound by iron, aluminium and clay of mud and soil, and given up again, until the two rest by a Langmuir
 * isotherm, h = S c/(K + c):
 *   net = v A (c (S - h) - K h)/S,  bound when above 0, given up when below,
 * with c the phosphate of the water, S what the ground can bind, h what it holds, K the phosphate at which it holds half, v
 * the water that a bed takes in per area A. Fresh ground takes what the water brings, v A c; the fuller, the less. A phosphate
 * bound sets a hydroxide free, so what is bound leaves its charge to the water as alkalinity.
 * @validity water with oxygen: iron that is dissolved where oxygen runs out keeps its phosphate here; pH 4 to 8, within which
 *   soils bind about alike; all ground that binds counts as one of mean K; calcium phosphates are not computed
 * @source langmuir-1918 (both rates), kadlec-2016 (uptake in proportion to what stands above), asomaning-2020 (little effect
 *   of pH); `derived`: the way of the water to the bed as the rate of binding
 */
export const phosphateSorption: Process<PhosphateSorptionParameters> = {
  id: 'phosphate-sorption',
  parameters: {
    bedVelocity: {
      unit: 'cm/d',
      min: 0.05,
      max: 100,
      meaning: 'water that ground which binds phosphate takes in, per area',
    },
    mixedDepth: {
      unit: 'cm',
      min: 0.1,
      max: 20,
      meaning: 'depth of ground that the water’s phosphate reaches',
    },
  },
  reads: [
    'phosphate',
    'boundPhosphate',
    'phosphateSites',
    'phosphateHalf',
    'phosphateBedArea',
    'waterVolume',
  ],
  changes: ['phosphate', 'boundPhosphate'],
  prepare({ bedVelocity }, setting) {
    const dissolved = setting.index('phosphate');
    const bound = setting.index('boundPhosphate');
    const sites = setting.index('phosphateSites');
    const half = setting.index('phosphateHalf');
    const area = setting.index('phosphateBedArea');
    const volume = setting.index('waterVolume');
    const velocity = bedVelocity / 100 / SECONDS_PER_DAY;
    return {
      reactions: [
        { name: 'phosphate bound by the ground', stoichiometry: { phosphate: -1, boundPhosphate: 1 } },
        { name: 'phosphate given up by the ground', stoichiometry: { boundPhosphate: -1, phosphate: 1 } },
      ],
      evaluate(values, rates, offset) {
        rates[offset] = 0;
        rates[offset + 1] = 0;
        const all = values[sites]!;
        const water = values[volume]!;
        if (!(all > 0 && water > 0)) return;
        const held = values[bound]!;
        const lacking = (values[dissolved]! / water) * (all - held) - values[half]! * held;
        rates[lacking > 0 ? offset : offset + 1] = (velocity * values[area]! * Math.abs(lacking)) / all;
      },
    };
  },
};
