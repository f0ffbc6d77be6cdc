import { exp, expm1 } from '../numerics/elementary.ts';
import type { Derivation } from '../process/contract.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { concentration } from './concentration.ts';

export interface UnderwaterLightParameters {
  readonly backgroundAttenuation: number;
  readonly colourAttenuation: number;
  readonly suspendedAttenuation: number;
  readonly plantAttenuation: number;
  readonly floatingAttenuation: number;
  readonly emersedAttenuation: number;
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
 * Light on all that grow by it [umol/m2/s], means over depth and over their own thickness: the one place where they
 * take light from each other.
 * Floating: I0, as their crowding holds what shade within the mat does; below it I1 = I0 e^(-k_f F / A_water).
 * tau = (k_w + k_c DOC + k_s S) z + k_p P / A_water, S suspended algae per water volume; film = k_a B / A_submerged.
 * Suspended algae: I1 M(tau); attached algae: I1 g M(tau) M(film); submerged plants: I1 M(tau) e^(-film); M is the
 * mean transmission, g the share of the light in the water that meets the surfaces, most of which stand upright or in
 * shade. Plants bear the film on their leaves. Plants rooted in wet ground: I0 M(k_e E / A_ground).
 * @validity plants spread evenly; light straight down; no scattering; plants on land do not shade the pool
 * @source kirk-2011 (Beer-Lambert), morris-1995 (colour), chapra-1997 (suspended algae)
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
    suspendedAttenuation: { unit: 'm²/mol C', min: 0, max: 20, meaning: 'extinction by suspended algae' },
    plantAttenuation: { unit: 'm²/mol C', min: 0, max: 3, meaning: 'extinction by submerged plants' },
    floatingAttenuation: { unit: 'm²/mol C', min: 0, max: 5, meaning: 'extinction by floating plants' },
    emersedAttenuation: {
      unit: 'm²/mol C',
      min: 0,
      max: 3,
      meaning: 'extinction by plants rooted in wet ground',
    },
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
    'wetPlantGround',
    'dissolvedOrganicCarbon',
    'attachedAlgae',
    'suspendedAlgae',
    'submergedPlants',
    'floatingPlants',
    'emersedPlants',
  ],
  provides: [
    'lightOnAlgae',
    'lightOnPlants',
    'lightOnSuspendedAlgae',
    'lightOnFloatingPlants',
    'lightOnEmersedPlants',
  ],
  prepare(parameters, setting) {
    const surface = setting.index('lightAtSurface');
    const depth = setting.index('waterDepth');
    const volume = setting.index('waterVolume');
    const waterArea = setting.index('waterArea');
    const submergedArea = setting.index('submergedArea');
    const plantGround = setting.index('wetPlantGround');
    const organicCarbon = setting.index('dissolvedOrganicCarbon');
    const algae = setting.index('attachedAlgae');
    const suspended = setting.index('suspendedAlgae');
    const plants = setting.index('submergedPlants');
    const floating = setting.index('floatingPlants');
    const emersed = setting.index('emersedPlants');
    const onAlgae = setting.index('lightOnAlgae');
    const onPlants = setting.index('lightOnPlants');
    const onSuspended = setting.index('lightOnSuspendedAlgae');
    const onFloating = setting.index('lightOnFloatingPlants');
    const onEmersed = setting.index('lightOnEmersedPlants');
    const background = parameters.backgroundAttenuation;
    const colour = parameters.colourAttenuation * MOLAR_MASS.carbon;
    const green = parameters.suspendedAttenuation;
    return {
      derive(values) {
        const light = values[surface]!;
        if (!(light > 0)) {
          values[onAlgae] = 0;
          values[onPlants] = 0;
          values[onSuspended] = 0;
          values[onFloating] = 0;
          values[onEmersed] = 0;
          return;
        }
        const water = values[volume]!;
        const open = values[waterArea]!;
        const mat = parameters.floatingAttenuation * perArea(values[floating]!, open);
        const leaves = parameters.emersedAttenuation * perArea(values[emersed]!, values[plantGround]!);
        const clear =
          background +
          colour * concentration(values[organicCarbon]!, water) +
          green * concentration(values[suspended]!, water);
        const canopy = parameters.plantAttenuation * perArea(values[plants]!, open);
        const film = parameters.algalAttenuation * perArea(values[algae]!, values[submergedArea]!);
        const below = mat > 0 ? light * exp(-mat) : light;
        const inWater = below * meanTransmission(clear * values[depth]! + canopy);
        const thinned = expm1(-film);
        values[onAlgae] = inWater * parameters.incidentShare * (film > 1e-9 ? -thinned / film : 1);
        values[onPlants] = inWater * (1 + thinned);
        values[onSuspended] = inWater;
        values[onFloating] = light;
        values[onEmersed] = light * meanTransmission(leaves);
      },
    };
  },
};
