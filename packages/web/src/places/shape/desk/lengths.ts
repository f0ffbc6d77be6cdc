import { readQuantity, toPlanUnit, unitsOf } from '@shoreglass/engine';
import { type LengthUnit, metresOf, quantityText } from '@shoreglass/figures';

/** Steps of the arrow keys and of the grid that dragging falls on: coarse, and fine with Shift [m]. */
export const STEPS: Readonly<Record<LengthUnit, { readonly coarse: number; readonly fine: number }>> = {
  cm: { coarse: 0.01, fine: 0.001 },
  in: { coarse: 0.0127, fine: 0.00254 },
};

/** Digits a length is written with at most. */
const DIGITS = 2;

/** A length as a number of its unit, without needless zeros: "16.5". */
export function lengthNumber(metres: number, unit: LengthUnit): string {
  return String(Number((metres / metresOf(unit)).toFixed(DIGITS)));
}

/** A length as people read it: "16.5 cm". */
export function lengthText(metres: number, unit: LengthUnit): string {
  const number = lengthNumber(metres, unit);
  return quantityText(Number(number), unit, number.split('.')[1]?.length ?? 0);
}

/** A length as it is written into the file: "16.5 cm". */
export function lengthWritten(metres: number, unit: LengthUnit): string {
  return `${lengthNumber(metres, unit)} ${unit}`;
}

export type Dimension = 'length' | 'share' | 'mass';

const BARE: Readonly<Record<Exclude<Dimension, 'length'>, string>> = { share: '%', mass: 'g' };

/** What was typed as a value in the plan's unit; a bare number is of the unit shown beside the field. */
export function readTyped(
  typed: string,
  dimension: Dimension,
  unit: LengthUnit,
): number | { readonly wrong: string } {
  const own = dimension === 'length' ? unit : BARE[dimension];
  const bare = /^[+-]?[\d.,]+$/.test(typed.trim());
  const quantity = readQuantity(bare ? `${typed.trim()} ${own}` : typed);
  if ('wrong' in quantity) return { wrong: `This ${quantity.wrong}. Write a number, such as 12.5 ${own}.` };
  if (!unitsOf(dimension).includes(quantity.unit))
    return { wrong: `${quantity.unit} does not measure a ${dimension}. Write it in ${own}.` };
  return toPlanUnit(quantity.value, quantity.unit, dimension);
}

/** A value as it stands in its field, and the unit beside it. */
export function fieldText(
  value: number,
  dimension: Dimension,
  unit: LengthUnit,
): { number: string; unit: string } {
  if (dimension === 'length') return { number: lengthNumber(value, unit), unit };
  if (dimension === 'share') return { number: String(Number((value * 100).toFixed(1))), unit: '%' };
  return { number: String(Number((value * 1000).toPrecision(6))), unit: 'g' };
}

/** A value as it is written into the file. */
export function valueWritten(value: number, dimension: Dimension, unit: LengthUnit): string {
  const { number, unit: own } = fieldText(value, dimension, unit);
  if (dimension === 'mass' && value >= 1) return `${Number(value.toPrecision(6))} kg`;
  return `${number} ${own}`;
}

/** A value as people read it. */
export function valueText(value: number, dimension: Dimension, unit: LengthUnit): string {
  return valueWritten(value, dimension, unit).replace(' ', '\u00a0');
}
