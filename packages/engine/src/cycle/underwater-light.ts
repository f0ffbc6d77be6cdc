import { expm1 } from '../numerics/elementary.ts';
import type { Derivation } from '../process/contract.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { concentration } from './concentration.ts';

export interface UnderwaterLightParameters {
  readonly backgroundAttenuation: number;
  readonly colourAttenuation: number;
  readonly plantAttenuation: number;
  readonly algalAttenuation: number;
  readonly incidentShare: number;
}

/**
 * Mean of the light over a layer of optical thickness tau, over the light at its top [0..1]: (1 - e^-tau) / tau.
 * @param thickness tau [1], >= 0
 * @source derived: Beer-Lambert law integrated over the layer
 */
export function meanTransmission(thickness: number): number {
  return thickness > 1e-9 ? -expm1(-thickness) / thickness : 1;
}

/** Amount per area [mol/m2], 0 where there is no area. */
function perArea(amount: number, area: number): number {
  return area > 0 ? amount / area : 0;
}

/**
 * Light on algae and on plants [umol/m2/s], means over depth and over their own thickness.
 * tau = (k_w + k_c DOC) z + k_p P / A_water; film = k_a B / A_submerged.
 * Algae: I0 g M(tau) M(film), plants: I0 M(tau) e^(-film), with M the mean transmission and g the share of the light
 * in the water that meets the surfaces, most of which stand upright or in shade. Plants bear the film on
 * their leaves.
 * @validity plants spread evenly; light straight down; no scattering, no suspended matter
 * @source kirk-2011 (Beer-Lambert), morris-1995 (colour)
 */
export const underwaterLight: Derivation<UnderwaterLightParameters> = {
  id: 'underwater-light',
  parameters: {
    backgroundAttenuation: { unit: '1/m', min: 0.01, max: 2, meaning: 'attenuation of clear tank water' },
    colourAttenuation: {
      unit: '1/m per mg C/L',
      min: 0,
      max: 1,
      meaning: 'attenuation by coloured organic carbon',
    },
    plantAttenuation: { unit: 'm²/mol C', min: 0, max: 3, meaning: 'extinction by submerged plants' },
    algalAttenuation: { unit: 'm²/mol C', min: 0, max: 20, meaning: 'extinction by attached algae' },
    incidentShare: {
      unit: '1',
      min: 0.05,
      max: 1,
      meaning: 'share of the light that meets submerged surfaces',
    },
  },
  reads: [
    'lightAtSurface',
    'waterDepth',
    'waterVolume',
    'waterArea',
    'submergedArea',
    'dissolvedOrganicCarbon',
    'attachedAlgae',
    'submergedPlants',
  ],
  provides: ['lightOnAlgae', 'lightOnPlants'],
  prepare(parameters, setting) {
    const surface = setting.index('lightAtSurface');
    const depth = setting.index('waterDepth');
    const volume = setting.index('waterVolume');
    const waterArea = setting.index('waterArea');
    const submergedArea = setting.index('submergedArea');
    const organicCarbon = setting.index('dissolvedOrganicCarbon');
    const algae = setting.index('attachedAlgae');
    const plants = setting.index('submergedPlants');
    const onAlgae = setting.index('lightOnAlgae');
    const onPlants = setting.index('lightOnPlants');
    const background = parameters.backgroundAttenuation;
    const colour = parameters.colourAttenuation * MOLAR_MASS.carbon;
    return {
      derive(values) {
        const light = values[surface]!;
        if (!(light > 0)) {
          values[onAlgae] = 0;
          values[onPlants] = 0;
          return;
        }
        const water = background + colour * concentration(values[organicCarbon]!, values[volume]!);
        const canopy = parameters.plantAttenuation * perArea(values[plants]!, values[waterArea]!);
        const film = parameters.algalAttenuation * perArea(values[algae]!, values[submergedArea]!);
        const inWater = light * meanTransmission(water * values[depth]! + canopy);
        const thinned = expm1(-film);
        values[onAlgae] = inWater * parameters.incidentShare * (film > 1e-9 ? -thinned / film : 1);
        values[onPlants] = inWater * (1 + thinned);
      },
    };
  },
};
