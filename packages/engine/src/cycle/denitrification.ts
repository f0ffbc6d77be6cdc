import type { Process } from '../process/contract.ts';
import { SECONDS_PER_DAY } from '../units/constants.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { concentration, monod } from './concentration.ts';
import { thetaResponse } from './temperature-response.ts';

export interface DenitrificationParameters {
  readonly arealRate: number;
  readonly theta: number;
  readonly nitrateHalf: number;
  readonly oxygenInhibition: number;
  readonly detritusHalf: number;
}

/**
 * Detritus carbon burnt per mol of nitrate turned to nitrogen gas [mol/mol].
 * @source derived: 5 CH2O + 4 NO3- -> 2 N2 + 4 HCO3- + CO2 + 3 H2O
 */
export const CARBON_PER_NITRATE = 1.25;

/**
 * Nitrate turned to nitrogen gas by bacteria in wet substrate, burning detritus:
 * r = V20 theta^(T - 20) A NO3/(K_N + NO3) K_O/(K_O + O2) d/(K_d + d), with A the wet substrate deep enough to run
 * short of oxygen, O2 that of the water above it, which reaches the deeper the more there is, and d the detritus
 * carbon per A. The gas leaves the glass; a unit of alkalinity comes back per nitrate through the ions alone.
 * @validity one well mixed layer for the substrate; detritus counts as if all of it lay there; no nitrous oxide, no
 *   return of ammonium from nitrate
 * @source saunders-2001 (rate per area), barato-2011 (half-saturation and temperature); `assumed`: the form of the
 *   limits of oxygen and detritus
 */
export const denitrification: Process<DenitrificationParameters> = {
  id: 'denitrification',
  parameters: {
    arealRate: {
      unit: 'mg N/m²/d',
      min: 1,
      max: 2000,
      meaning: 'nitrate lost per wet substrate at 20 degC, nothing lacking and no oxygen above',
    },
    theta: { unit: '1', min: 1, max: 1.2, meaning: 'temperature factor per degree' },
    nitrateHalf: { unit: 'mg N/L', min: 0.05, max: 5, meaning: 'nitrate at half the highest rate' },
    oxygenInhibition: { unit: 'mg/L', min: 0.1, max: 20, meaning: 'oxygen above that halves the rate' },
    detritusHalf: {
      unit: 'mol C/m²',
      min: 0.01,
      max: 20,
      meaning: 'detritus per wet substrate at half the highest rate',
    },
  },
  reads: ['nitrate', 'oxygen', 'detritusCarbon', 'wetSubstrate', 'waterVolume', 'waterTemperature'],
  changes: ['nitrate', 'detritusCarbon', 'dissolvedInorganicCarbon'],
  boundary: ['nitrogen', 'oxygen'],
  prepare(parameters, setting) {
    const nitrate = setting.index('nitrate');
    const oxygen = setting.index('oxygen');
    const detritus = setting.index('detritusCarbon');
    const substrate = setting.index('wetSubstrate');
    const volume = setting.index('waterVolume');
    const temperature = setting.index('waterTemperature');
    const rate = parameters.arealRate / 1000 / MOLAR_MASS.nitrogen / SECONDS_PER_DAY;
    const nitrateHalf = parameters.nitrateHalf / MOLAR_MASS.nitrogen;
    const oxygenHalf = parameters.oxygenInhibition / MOLAR_MASS.oxygen;
    const warmth = thetaResponse(parameters.theta, 20);
    return {
      reactions: [
        {
          name: 'denitrification',
          stoichiometry: {
            nitrate: -1,
            detritusCarbon: -CARBON_PER_NITRATE,
            dissolvedInorganicCarbon: CARBON_PER_NITRATE,
          },
        },
      ],
      evaluate(values, rates, offset) {
        const area = values[substrate]!;
        const held = values[nitrate]!;
        const burnt = values[detritus]!;
        if (!(area > 0 && held > 0 && burnt > 0)) {
          rates[offset] = 0;
          return;
        }
        const water = values[volume]!;
        rates[offset] =
          rate *
          area *
          warmth(values[temperature]!) *
          monod(concentration(held, water), nitrateHalf) *
          (oxygenHalf / (oxygenHalf + concentration(values[oxygen]!, water))) *
          monod(burnt / area, parameters.detritusHalf);
      },
    };
  },
};
