import { convert } from '../../units/convert.ts';
import type { RecipeRequest, RecipeSalt, RecipeTarget, SourceWater } from './request.ts';
import type { solveRecipe } from './solve-recipe.ts';

/** A salt without other purity than its own. `derived`. */
const salt = (id: string, formula: string, rest: Partial<RecipeSalt> = {}): RecipeSalt => ({
  id,
  name: id,
  formula,
  solubility: 300,
  bulkDensity: 1000,
  dissolving: 'quick',
  ...rest,
});
export const GYPSUM = salt('gypsum', 'CaSO4.2H2O', { solubility: 2.4, dissolving: 'slow' });
const CHLORIDE = salt('calcium chloride', 'CaCl2.2H2O');
export const EPSOM = salt('epsom', 'MgSO4.7H2O');
const MAGNESIUM = salt('magnesium chloride', 'MgCl2.6H2O');
export const POTASSIUM = salt('potassium bicarbonate', 'KHCO3');
export const SODA = salt('baking soda', 'NaHCO3');
export const CHALK = salt('chalk', 'CaCO3', { solubility: 0.014, dissolving: 'with carbon dioxide' });
export const SHELF = [GYPSUM, CHLORIDE, EPSOM, MAGNESIUM, POTASSIUM, SODA];

export const PURE: SourceWater = { id: 'distilled', name: 'distilled', composition: {}, kind: 'pure' };
export const TAP: SourceWater = {
  id: 'tap',
  name: 'tap',
  kind: 'tap',
  composition: { calcium: 2.5, magnesium: 0.5, sodium: 1, chloride: 1, sulfate: 0.5 },
};
const AIR = { carbonDioxide: 420, pressure: 101_325 };

/** What is asked of forty litres of distilled water and a usual shelf. `derived`. */
export const request = (
  targets: readonly RecipeTarget[],
  rest: Partial<RecipeRequest> = {},
): RecipeRequest => ({
  volume: 0.04,
  waters: [PURE],
  salts: SHELF,
  targets,
  temperature: 20,
  air: AIR,
  ...rest,
});
/** A general hardness aimed at [°dGH]. `derived`. */
export const GH = (degrees: number): RecipeTarget => ({
  quantity: 'GH',
  aim: convert(degrees, '°dGH', 'mol/m³'),
});
/** A carbonate hardness aimed at [°dKH]. `derived`. */
export const KH = (degrees: number): RecipeTarget => ({
  quantity: 'KH',
  aim: convert(degrees, '°dKH', 'meq/L'),
});
/** Mass of each salt [g]. `derived`. */
export const grams = ({ salts }: ReturnType<typeof solveRecipe>) =>
  Object.fromEntries(salts.map(({ id, mass }) => [id, 1000 * mass]));
