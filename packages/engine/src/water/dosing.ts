import type { WaterComposition } from '../plan/water-composition.ts';

/**
 * A water after hydrochloric acid [mol/m3]: its chloride rises, its alkalinity falls by the same.
 * @param acid HCl [mol/m3], >= 0
 * @source derived: charge balance
 */
export function withHydrochloricAcid(
  water: Partial<WaterComposition>,
  acid: number,
): Partial<WaterComposition> {
  return { ...water, chloride: (water.chloride ?? 0) + acid };
}

/**
 * A water after sodium hydroxide [mol/m3]: its sodium and alkalinity rise by the same.
 * @param base NaOH [mol/m3], >= 0
 * @source derived: charge balance
 */
export function withSodiumHydroxide(
  water: Partial<WaterComposition>,
  base: number,
): Partial<WaterComposition> {
  return { ...water, sodium: (water.sodium ?? 0) + base };
}

/**
 * A water after nitrification of some of its ammonia [mol/m3]: NH4+ + 2 O2 -> NO3- + 2 H+ + H2O, alkalinity falls by
 * two per nitrogen; growth of the nitrifiers is left out.
 * @param nitrogen oxidised [mol/m3], >= 0
 * @throws RangeError when the water holds less ammonia.
 * @source derived: charge balance of the reaction
 */
export function nitrified(water: Partial<WaterComposition>, nitrogen: number): Partial<WaterComposition> {
  const left = (water.ammonium ?? 0) - nitrogen;
  if (!(left >= -1e-6 * nitrogen))
    throw new RangeError(
      `${nitrogen} mol/m3 of ammonia cannot be oxidised, the water holds ${water.ammonium ?? 0}`,
    );
  return { ...water, ammonium: Math.max(0, left), nitrate: (water.nitrate ?? 0) + nitrogen };
}
