import { exp10 } from '../numerics/elementary.ts';
import type { WaterComposition } from '../plan/water-composition.ts';
import { HUMIC_ACID, oliverExponent } from './organic-acids.ts';

/** End point of an alkalinity titration with an indicator. @source apha-2320 */
const TITRATION_END = 4.5;

/**
 * General hardness [mol/m3]: calcium and magnesium.
 * @source derived: definition
 */
export function generalHardness({ calcium = 0, magnesium = 0 }: Partial<WaterComposition>): number {
  return calcium + magnesium;
}

/**
 * Conservative alkalinity of a composition [eq/m3].
 * Alk = 2 Ca + 2 Mg + Na + K + NH4 - Cl - 2 SO4 - NO3 - NO2 - P
 * @source derived: electroneutrality with zero level CO2(aq), H2PO4-, NH4+, NO3-, SO4 2-
 */
export function alkalinityOf(composition: Partial<WaterComposition>): number {
  const { calcium = 0, magnesium = 0, sodium = 0, potassium = 0, ammonium = 0 } = composition;
  const { chloride = 0, sulfate = 0, nitrate = 0, nitrite = 0, phosphate = 0 } = composition;
  return (
    2 * (calcium + magnesium) +
    (sodium + potassium + ammonium) -
    (chloride + 2 * sulfate + nitrate + nitrite + phosphate)
  );
}

/**
 * Alkalinity a drop test finds [eq/m3], >= 0: acid taken up on the way to pH 4.5.
 * Organic acids that are still dissociated at the end point escape the test; the acid that pure water itself takes
 * to reach pH 4.5 (0.03 eq/m3) is not counted, as a blank would show it. Zero where the water is already below.
 * Equal to the conservative alkalinity where there are no organic acids.
 * @param alkalinity conservative alkalinity [eq/m3]
 * @param organicSites charge of organic sites when all are dissociated [eq/m3]
 * @source apha-2320 for the end point; oliver-1983 for the share dissociated there
 */
export function titratedAlkalinity(alkalinity: number, organicSites: number): number {
  return Math.max(0, alkalinity - organicSites / (1 + exp10(oliverExponent(TITRATION_END))));
}

/**
 * Alkalinity of a composition as a drop test finds it [eq/m3], not cut off at zero: below zero it is the acid in
 * excess. Linear in the composition, so that waters can be blended by it. Organic carbon counts as humic acid.
 * @source apha-2320, oliver-1983; see `titratedAlkalinity`
 */
export function testedAlkalinity(composition: Partial<WaterComposition>): number {
  const sites = (composition.dissolvedOrganicCarbon ?? 0) * HUMIC_ACID.siteDensity;
  return alkalinityOf(composition) - sites / (1 + exp10(oliverExponent(TITRATION_END)));
}
