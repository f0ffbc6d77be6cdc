import { convert, MOLAR_MASS, type Recipe, type RecipeWater, type TargetResult } from '@shoreglass/engine';
import { quantityText } from '@shoreglass/figures';
import { AMOUNTS, type AmountId, type AmountKind, inUnit } from '../amount/amount-kind.ts';
import { inWords } from '../amount/read-amount.ts';
import { targetInUnit } from './recipe-desk.ts';

/** Grams a kitchen or pocket balance shows: "0.42 g", "12.3 g", "148 g". */
export function gramsText(mass: number): string {
  const grams = mass * 1000;
  if (grams >= 1000) return quantityText(mass, 'kg', 2);
  return quantityText(grams, 'g', grams >= 100 ? 0 : grams >= 10 ? 1 : 2);
}

export function litresText(volume: number): string {
  const litres = volume * 1000;
  return quantityText(litres, 'L', litres >= 100 ? 0 : 1);
}

/** "1 part", "3 parts"; empty where a share is too small for whole parts. */
export function partsText(parts: number): string {
  if (parts === 0) return '';
  return parts === 1 ? '1 part' : `${parts} parts`;
}

/** A value in the plan's unit of a target, as the keeper asked for it. */
export function targetText(quantity: string, value: number, unit: string | undefined): string {
  const kind = (AMOUNTS as Readonly<Record<string, AmountKind>>)[quantity];
  if (!kind) return inWords(value, 'mmol/L');
  const shown = unit !== undefined && unit in kind.from ? unit : kind.usual;
  return inWords(inUnit(kind, targetInUnit(quantity, value), shown), shown);
}

/** "about 6 °dGH", "at most 20 mg/L" */
export function askedText({ quantity, aim, low, high }: TargetResult, unit: string | undefined): string {
  if (aim !== undefined) return targetText(quantity, aim, unit);
  if (high !== undefined) return `at most ${targetText(quantity, high, unit)}`;
  return low === undefined ? '' : `at least ${targetText(quantity, low, unit)}`;
}

interface WaterLine {
  readonly name: string;
  readonly id: AmountId | undefined;
  readonly of: (water: RecipeWater) => string;
}

const ion = (name: string, key: keyof RecipeWater['composition'], molarMass: number): WaterLine => ({
  name,
  id: undefined,
  of: ({ composition }) => inWords((composition[key] ?? 0) * molarMass, 'mg/L'),
});

/** The finished water line by line. */
export const WATER_LINES: readonly WaterLine[] = [
  { name: 'GH', id: 'GH', of: ({ GH }) => inWords(convert(GH, 'mmol/L', '°dGH'), '°dGH') },
  { name: 'KH', id: 'KH', of: ({ KH }) => inWords(convert(KH, 'meq/L', '°dKH'), '°dKH') },
  { name: 'pH, aired', id: 'pH', of: ({ pH }) => quantityText(pH, '', 1) },
  {
    name: 'conductivity',
    id: 'conductivity',
    of: ({ conductivity }) => quantityText(conductivity, 'µS/cm'),
  },
  ion('calcium', 'calcium', MOLAR_MASS.calcium),
  ion('magnesium', 'magnesium', MOLAR_MASS.magnesium),
  ion('sodium', 'sodium', MOLAR_MASS.sodium),
  ion('potassium', 'potassium', MOLAR_MASS.potassium),
  ion('chloride', 'chloride', MOLAR_MASS.chloride),
  ion('sulfate', 'sulfate', MOLAR_MASS.sulfate),
  ion('nitrate', 'nitrate', MOLAR_MASS.nitrate),
];

/** One line that says it all: "4.1 g gypsum, 3.2 g baking soda in 36 L distilled and 12 L rain". */
export function recipeInShort({ salts, waters, volume }: Recipe): string {
  const weighed = salts.map(({ mass, name }) => `${gramsText(mass)} ${shortName(name)}`).join(', ');
  const poured = waters.map((water) => `${litresText(water.volume)} ${shortName(water.name)}`).join(' and ');
  if (weighed === '') return poured === '' ? `${litresText(volume)} as it is` : poured;
  return poured === '' ? weighed : `${weighed} in ${poured}`;
}

/** "gypsum" of "gypsum, calcium sulfate dihydrate". */
export function shortName(name: string): string {
  return (name.split(/[,(]/)[0] ?? name).trim();
}

const BELOW = '₀₁₂₃₄₅₆₇₈₉';

/** A formula as it is printed: CaSO₄·2H₂O of CaSO4.2H2O. */
export function formulaText(formula: string): string {
  return formula
    .replaceAll('.', '·')
    .replaceAll(/(?<=[A-Za-z)])\d+/g, (digits) => [...digits].map((digit) => BELOW[Number(digit)]).join(''));
}
