import type { WaterComposition } from '../../plan/water-composition.ts';
import { conductivityAt } from '../conductivity.ts';
import { dissolvedSolids, METER_FACTORS, meterSolids } from '../dissolved-solids.ts';
import { type Air, carbonDioxidePressure } from '../gases.ts';
import { generalHardness, testedAlkalinity } from '../hardness.ts';
import { speciate } from '../speciate.ts';
import type { RecipeWater } from './recipe.ts';
import type { RecipeQuantity } from './request.ts';

/** Surroundings of a water: its temperature [degC] and the air above it. */
export interface Surroundings {
  readonly temperature: number;
  readonly air: Air;
}

/**
 * A water in full once it is in balance with the air: pH, hardness, conductivity at 25 degC, dissolved solids both
 * ways, saturation with calcite and gypsum; units as in `RecipeWater`. Nothing is taken to fall out.
 * @param composition totals [mol/m3]
 * @throws RangeError when an amount is negative or the temperature outside 0 to 40 degC.
 * @source derived: see `speciate`, `conductivityAt`, `dissolvedSolids`
 */
export function recipeWater(composition: WaterComposition, { temperature, air }: Surroundings): RecipeWater {
  const carbon = { kind: 'open', pressure: carbonDioxidePressure(temperature, air) } as const;
  const solved = speciate({ temperature, composition, carbon });
  const conductivity = conductivityAt(solved.free, solved.ionicStrength, 25);
  const [low, middle, high] = METER_FACTORS;
  return {
    composition,
    pH: solved.pH,
    GH: generalHardness(composition),
    KH: Math.max(0, testedAlkalinity(composition)),
    conductivity,
    dissolvedSolids: {
      ...dissolvedSolids(composition, solved),
      meter500: meterSolids(conductivity, low),
      meter640: meterSolids(conductivity, middle),
      meter700: meterSolids(conductivity, high),
    },
    calciteSaturationIndex: solved.saturationIndex.calcite,
    gypsumSaturationIndex: solved.saturationIndex.gypsum,
    dissolvedInorganicCarbon: solved.dissolvedInorganicCarbon,
    bicarbonate: solved.bicarbonate,
  };
}

/** What a water has of a quantity, in the plan's unit of it. `derived`. */
export function quantityIn(water: RecipeWater, quantity: RecipeQuantity): number {
  if (quantity === 'GH' || quantity === 'KH' || quantity === 'conductivity') return water[quantity];
  return water.composition[quantity];
}
