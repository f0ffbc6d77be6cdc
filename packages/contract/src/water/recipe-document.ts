import {
  convert,
  MOLAR_MASS,
  type Recipe,
  type RecipeChoice,
  type RecipeQuantity,
  type RecipeWater,
} from '@shoreglass/engine';

/** Unit in which a quantity is shown, and a value of the plan's unit in it. */
export const RECIPE_UNITS: Readonly<
  Record<
    RecipeQuantity,
    { readonly unit: string; readonly digits: number; readonly shown: (value: number) => number }
  >
> = {
  GH: { unit: '°dGH', digits: 1, shown: (value) => convert(value, 'mol/m³', '°dGH') },
  KH: { unit: '°dKH', digits: 1, shown: (value) => convert(value, 'meq/L', '°dKH') },
  calcium: { unit: 'mg/L', digits: 1, shown: (value) => value * MOLAR_MASS.calcium },
  magnesium: { unit: 'mg/L', digits: 1, shown: (value) => value * MOLAR_MASS.magnesium },
  sodium: { unit: 'mg/L', digits: 1, shown: (value) => value * MOLAR_MASS.sodium },
  potassium: { unit: 'mg/L', digits: 1, shown: (value) => value * MOLAR_MASS.potassium },
  chloride: { unit: 'mg/L', digits: 1, shown: (value) => value * MOLAR_MASS.chloride },
  sulfate: { unit: 'mg/L', digits: 1, shown: (value) => value * MOLAR_MASS.sulfate },
  nitrate: { unit: 'mg/L', digits: 1, shown: (value) => value * MOLAR_MASS.nitrate },
  conductivity: { unit: 'µS/cm', digits: 0, shown: (value) => value },
};

/** Hardness or alkalinity in every unit the trade uses. */
function hardnessUnits(value: number, from: 'mol/m³' | 'meq/L') {
  const [degree, charge] = from === 'mol/m³' ? (['°dGH', 2] as const) : (['°dKH', 1] as const);
  const into = (unit: string) => convert(value, from, unit);
  return {
    [degree]: into(degree),
    'ppm CaCO3': into('ppm CaCO3'),
    '°fH': into('°fH'),
    '°Clark': into('°Clark'),
    gpg: into('gpg'),
    'meq/L': charge * value,
    ...(from === 'mol/m³' ? { 'mmol/L': value } : {}),
  };
}

/** JSON has no infinity: an index without ions is null. */
const index = (value: number): number | null => (Number.isFinite(value) ? value : null);

function waterDocument({ composition, ...water }: RecipeWater) {
  const mass = (id: Exclude<RecipeQuantity, 'GH' | 'KH' | 'conductivity'>) =>
    RECIPE_UNITS[id].shown(composition[id]);
  return {
    pH: water.pH,
    GH: hardnessUnits(water.GH, 'mol/m³'),
    KH: hardnessUnits(water.KH, 'meq/L'),
    'conductivity uS/cm at 25 degC': water.conductivity,
    'dissolved solids mg/L': water.dissolvedSolids,
    'ions mg/L': {
      calcium: mass('calcium'),
      magnesium: mass('magnesium'),
      sodium: mass('sodium'),
      potassium: mass('potassium'),
      chloride: mass('chloride'),
      sulfate: mass('sulfate'),
      nitrate: mass('nitrate'),
      bicarbonate: water.bicarbonate * MOLAR_MASS.bicarbonate,
    },
    calciteSaturationIndex: index(water.calciteSaturationIndex),
    gypsumSaturationIndex: index(water.gypsumSaturationIndex),
  };
}

const inUnit = (quantity: RecipeQuantity, value: number | undefined) =>
  value === undefined ? undefined : RECIPE_UNITS[quantity].shown(value);

/** A recipe as one document in the keeper's units, each named beside its value. */
export function recipeDocument(recipe: Recipe) {
  return {
    litres: 1000 * recipe.volume,
    litresMixedNew: 1000 * recipe.mixed,
    waters: recipe.waters.map(({ id, name, share, volume, parts }) => ({
      id,
      name,
      share,
      litres: 1000 * volume,
      parts,
    })),
    salts: recipe.salts.map(({ id, name, formula, mass, concentration, leastWater, spoons }) => ({
      id,
      name,
      formula,
      grams: 1000 * mass,
      milligramsPerLitre: 1000 * concentration,
      leastWaterLitres: 1000 * leastWater,
      spoons: spoons && { said: spoons.said, grams: 1000 * spoons.mass },
    })),
    targets: recipe.targets.map(({ quantity, aim, low, high, value, valueBySpoon, met, why }) => ({
      quantity,
      unit: RECIPE_UNITS[quantity].unit,
      aim: inUnit(quantity, aim),
      low: inUnit(quantity, low),
      high: inUnit(quantity, high),
      value: inUnit(quantity, value),
      valueBySpoon: inUnit(quantity, valueBySpoon),
      met,
      why,
    })),
    misfit: recipe.misfit,
    water: waterDocument(recipe.water),
    waterBySpoon: waterDocument(recipe.waterBySpoon),
    steps: recipe.steps,
    remarks: recipe.remarks,
  };
}

/** Several recipes as one document. */
export function recipesDocument(choices: readonly RecipeChoice[]) {
  return {
    recipes: choices.map(({ id, name, about, recipe }) => ({ id, name, about, ...recipeDocument(recipe) })),
  };
}
