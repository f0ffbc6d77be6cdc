import type { WaterComposition } from '../plan/water-composition.ts';
import { type Air, carbonDioxidePressure, oxygenSaturation } from './gases.ts';
import type { OrganicAcid } from './organic-acids.ts';
import { speciate } from './speciate.ts';

export interface AiredWater {
  /** [mol/m3] */
  readonly dissolvedInorganicCarbon: number;
  readonly oxygen: number;
  readonly pH: number;
}

/**
 * What a water holds after standing in air long enough: inorganic carbon and oxygen [mol/m3], and its pH.
 * @param composition totals [mol/m3]
 * @param temperature [degC], 0 to 40
 * @param air CO2 in dry air [umol/mol] and pressure [Pa]
 * @param organicAcid nature of the organic carbon; humic acid when left out
 * @throws RangeError when an amount or the temperature is out of range.
 * @source benson-krause-1984 for oxygen, plummer-busenberg-1982 for CO2; derived: equilibrium at the surface
 */
export function equilibrateWithAir(
  composition: WaterComposition,
  temperature: number,
  air: Air,
  organicAcid?: OrganicAcid,
): AiredWater {
  const carbon = { kind: 'open', pressure: carbonDioxidePressure(temperature, air) } as const;
  const { dissolvedInorganicCarbon, pH } = speciate({
    temperature,
    composition,
    carbon,
    ...(organicAcid && { organicAcid }),
  });
  return { dissolvedInorganicCarbon, oxygen: oxygenSaturation(temperature, air.pressure), pH };
}
