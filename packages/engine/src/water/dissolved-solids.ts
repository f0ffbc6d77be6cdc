import type { WaterComposition } from '../plan/water-composition.ts';
import { MOLAR_MASS } from './molar-masses.ts';
import type { Speciation } from './speciate.ts';

/** Part of bicarbonate's mass that stays when water is dried at 180 degC: 2 HCO3 -> CO3 + CO2 + H2O. */
const BICARBONATE_LEFT = MOLAR_MASS.carbonate / (2 * MOLAR_MASS.bicarbonate);

/**
 * Dissolved solids of a water [g/m3 = mg/L]: all ions by mass, bicarbonate in full or as the carbonate that stays
 * after drying. Phosphorus counts as H2PO4-; organic matter and silica are left out.
 * @param composition totals [mol/m3]
 * @source derived: mass balance; apha-2540 for drying at 180 degC
 */
export function dissolvedSolids(
  composition: Partial<WaterComposition>,
  { bicarbonate, carbonate, unionisedAmmonia }: Speciation,
) {
  const { calcium = 0, magnesium = 0, sodium = 0, potassium = 0, chloride = 0, sulfate = 0 } = composition;
  const { ammonium = 0, nitrate = 0, nitrite = 0, phosphate = 0 } = composition;
  const ions =
    calcium * MOLAR_MASS.calcium +
    magnesium * MOLAR_MASS.magnesium +
    sodium * MOLAR_MASS.sodium +
    potassium * MOLAR_MASS.potassium +
    chloride * MOLAR_MASS.chloride +
    sulfate * MOLAR_MASS.sulfate +
    (ammonium - unionisedAmmonia) * MOLAR_MASS.ammonium +
    nitrate * MOLAR_MASS.nitrate +
    nitrite * MOLAR_MASS.nitrite +
    phosphate * MOLAR_MASS.dihydrogenPhosphate +
    carbonate * MOLAR_MASS.carbonate;
  const bicarbonateMass = bicarbonate * MOLAR_MASS.bicarbonate;
  return { sumOfIons: ions + bicarbonateMass, residueAt180: ions + BICARBONATE_LEFT * bicarbonateMass };
}

/** What meters multiply conductivity by: table salt, a mixed natural water, and the 442 standard. */
export const METER_FACTORS = [0.5, 0.64, 0.7] as const;

/**
 * Dissolved solids as a meter shows them [mg/L, which meters call ppm]: conductivity times a fixed factor. Meters
 * differ in the factor, so the same water reads up to two fifths more on one than on another.
 * @param conductivity at 25 degC [uS/cm], >= 0
 * @param factor of the meter, see `METER_FACTORS`
 * @throws RangeError when the conductivity is negative or not finite, or the factor outside 0.3 to 1.
 * @source assumed: common practice, no source; apha-2510 gives 0.55 to 0.7 for natural waters
 */
export function meterSolids(conductivity: number, factor: number): number {
  if (!(conductivity >= 0 && conductivity < Number.POSITIVE_INFINITY))
    throw new RangeError(`conductivity [uS/cm] = ${conductivity} is not a number from 0 up`);
  if (!(factor >= 0.3 && factor <= 1)) throw new RangeError(`a factor of ${factor} is outside 0.3 to 1`);
  return factor * conductivity;
}
