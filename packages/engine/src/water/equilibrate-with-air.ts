import type { WaterComposition } from '../plan/water-composition.ts';
import type { Workspace } from './equilibrium/workspace.ts';
import { type Air, carbonDioxidePressure, oxygenSaturation } from './gases.ts';
import { speciate } from './speciate.ts';

export interface AiredWater {
  /** [mol/m3] */
  readonly dissolvedInorganicCarbon: number;
  readonly oxygen: number;
  readonly pH: number;
}

/**
 * What a water holds after standing in air long enough: inorganic carbon and oxygen [mol/m3], and its pH. Organic
 * carbon counts as humic acid.
 * @param composition totals [mol/m3]
 * @param temperature [degC], 0 to 40
 * @param air CO2 in dry air [umol/mol] and pressure [Pa]
 * @param w workspace kept from call to call, see `speciate`
 * @throws RangeError when an amount or the temperature is out of range.
 * @source benson-krause-1984 for oxygen, plummer-busenberg-1982 for CO2; derived: equilibrium at the surface
 */
export function equilibrateWithAir(
  composition: WaterComposition,
  temperature: number,
  air: Air,
  w?: Workspace,
): AiredWater {
  const carbon = { kind: 'open', pressure: carbonDioxidePressure(temperature, air) } as const;
  const { dissolvedInorganicCarbon, pH } = speciate({ temperature, composition, carbon }, w);
  return { dissolvedInorganicCarbon, oxygen: oxygenSaturation(temperature, air.pressure), pH };
}
