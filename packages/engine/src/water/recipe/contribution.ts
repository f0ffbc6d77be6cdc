import type { WaterComposition } from '../../plan/water-composition.ts';
import { conductivityAt } from '../conductivity.ts';
import { generalHardness, testedAlkalinity } from '../hardness.ts';
import type { FreeIons } from '../speciate.ts';
import type { RecipeQuantity } from './request.ts';

const NO_IONS: FreeIons = {
  hydrogen: 0,
  hydroxide: 0,
  calcium: 0,
  magnesium: 0,
  sodium: 0,
  potassium: 0,
  ammonium: 0,
  chloride: 0,
  sulfate: 0,
  nitrate: 0,
  nitrite: 0,
  bicarbonate: 0,
  carbonate: 0,
};

/** What a mol of each ion conducts in very dilute water at 25 degC [uS/cm per mol/m3]. */
const LIMITING = Object.fromEntries(
  (Object.keys(NO_IONS) as (keyof FreeIons)[]).map((ion) => [
    ion,
    conductivityAt({ ...NO_IONS, [ion]: 1 }, 0, 25),
  ]),
) as Record<keyof FreeIons, number>;

const CONDUCTING = [
  'calcium',
  'magnesium',
  'sodium',
  'potassium',
  'ammonium',
  'chloride',
  'sulfate',
  'nitrate',
  'nitrite',
] as const;

/**
 * Conductivity a composition would have if its ions did not hinder each other [uS/cm at 25 degC]; its alkalinity
 * counts as bicarbonate. An upper bound, linear in the composition.
 * @source mccleskey-2012, limiting values; derived: their sum
 */
export function limitingConductivity(composition: Partial<WaterComposition>): number {
  const ions = CONDUCTING.reduce((sum, ion) => sum + LIMITING[ion] * (composition[ion] ?? 0), 0);
  return ions + LIMITING.bicarbonate * testedAlkalinity(composition);
}

/**
 * What a composition adds to a quantity of a mix, linear in the composition [plan's unit of the quantity]:
 * conductivity as its limiting value.
 * @source derived: definitions
 */
export function contributionTo(quantity: RecipeQuantity, composition: Partial<WaterComposition>): number {
  if (quantity === 'GH') return generalHardness(composition);
  if (quantity === 'KH') return testedAlkalinity(composition);
  if (quantity === 'conductivity') return limitingConductivity(composition);
  return composition[quantity] ?? 0;
}
