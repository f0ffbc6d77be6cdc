import { convert, PLAN_UNITS, readQuantity, toPlanUnit, unitsOf } from '@shoreglass/engine';
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

export type Dimension =
  | 'length'
  | 'share'
  | 'mass'
  | 'power'
  | 'water flow'
  | 'air flow'
  | 'temperature'
  | 'colour temperature'
  | 'hours'
  | 'small area'
  | 'large area'
  | 'volume'
  | 'photon flux'
  | 'luminous flux'
  | 'count';

type Measured = keyof typeof PLAN_UNITS;

interface Shown {
  readonly of: Measured;
  /** Beside the field, when lengths are in cm and when they are in inches. */
  readonly cm: string;
  readonly in: string;
}

/** How a value stands in its field; hours and counts are what they are in the file. */
const SHOWN: Readonly<Record<Exclude<Dimension, 'length' | 'count'>, Shown>> = {
  share: { of: 'share', cm: '%', in: '%' },
  mass: { of: 'mass', cm: 'g', in: 'g' },
  power: { of: 'power', cm: 'W', in: 'W' },
  'water flow': { of: 'flow', cm: 'L/h', in: 'gal/h' },
  'air flow': { of: 'flow', cm: 'm³/h', in: 'm³/h' },
  temperature: { of: 'temperature', cm: '°C', in: '°F' },
  'colour temperature': { of: 'temperature difference', cm: 'K', in: 'K' },
  hours: { of: 'time', cm: 'h', in: 'h' },
  'small area': { of: 'area', cm: 'cm²', in: 'in²' },
  'large area': { of: 'area', cm: 'm²', in: 'm²' },
  volume: { of: 'volume', cm: 'mL', in: 'mL' },
  'photon flux': { of: 'photon flux', cm: 'µmol/s', in: 'µmol/s' },
  'luminous flux': { of: 'luminous flux', cm: 'lm', in: 'lm' },
};

/** Seconds of an hour: a time is read in seconds, and stands in the file in hours. */
const HOUR = 3600;

const planFactor = (dimension: Dimension) => (dimension === 'hours' ? HOUR : 1);

/** What was typed as a value in the plan's unit; a bare number is of the unit shown beside the field. */
export function readTyped(
  typed: string,
  dimension: Dimension,
  unit: LengthUnit,
): number | { readonly wrong: string } {
  if (dimension === 'count') return readCount(typed);
  const [of, own] = dimension === 'length' ? (['length', unit] as const) : shownIn(dimension, unit);
  const bare = /^[+-]?[\d.,]+$/.test(typed.trim());
  const quantity = readQuantity(bare ? `${typed.trim()} ${own}` : typed);
  if ('wrong' in quantity) return { wrong: `This ${quantity.wrong}. Write a number, such as 12.5 ${own}.` };
  if (!unitsOf(of).includes(quantity.unit))
    return { wrong: `${quantity.unit} does not measure a ${of}. Write it in ${own}.` };
  return toPlanUnit(quantity.value, quantity.unit, of) / planFactor(dimension);
}

function readCount(typed: string): number | { readonly wrong: string } {
  return /^\d{1,4}$/.test(typed.trim()) ? Number(typed) : { wrong: 'Write a whole number, such as 2.' };
}

function shownIn(dimension: keyof typeof SHOWN, unit: LengthUnit): readonly [Measured, string] {
  const { of, [unit]: own } = SHOWN[dimension];
  return [of, own];
}

/** A value as it stands in its field, and the unit beside it. */
export function fieldText(
  value: number,
  dimension: Dimension,
  unit: LengthUnit,
): { number: string; unit: string } {
  if (dimension === 'length') return { number: lengthNumber(value, unit), unit };
  if (dimension === 'count') return { number: String(value), unit: '' };
  const [of, own] = shownIn(dimension, unit);
  const shown = convert(value * planFactor(dimension), PLAN_UNITS[of], own);
  const digits = dimension === 'share' ? 1 : dimension === 'temperature' ? 2 : undefined;
  const number = digits === undefined ? shown.toPrecision(6) : shown.toFixed(digits);
  return { number: String(Number(number)), unit: own };
}

/** A value as it is written into the file: a number with its unit, and a count as it is. */
export function valueWritten(value: number, dimension: Dimension, unit: LengthUnit): string {
  const { number, unit: own } = fieldText(value, dimension, unit);
  if (dimension === 'mass' && value >= 1) return `${Number(value.toPrecision(6))} kg`;
  return own === '' ? number : `${number} ${own}`;
}

/** A value as people read it. */
export function valueText(value: number, dimension: Dimension, unit: LengthUnit): string {
  return valueWritten(value, dimension, unit).replace(' ', '\u00a0');
}

/** Steps that do not follow the value, in the plan's unit. */
const FIXED_STEPS: Readonly<Partial<Record<Dimension, number>>> = {
  share: 0.01,
  temperature: 0.5,
  hours: 0.25,
  count: 1,
};

/** The step of the buttons, fine for what is thin or small [in the plan's unit]. */
export function stepOf(
  { dimension, value }: { readonly dimension: Dimension; readonly value: number },
  unit: LengthUnit,
): number {
  if (dimension === 'length') {
    const { coarse, fine } = STEPS[unit];
    return value < 0.02 ? fine : coarse / 2;
  }
  if (dimension === 'mass') return value >= 1 ? 0.1 : 0.01;
  const fixed = FIXED_STEPS[dimension];
  if (fixed !== undefined || dimension === 'count') return fixed ?? 1;
  const { number, unit: own } = fieldText(value, dimension, unit);
  // A tenth to a twentieth of the value, as one and noughts: 10 of 400, 1 of 30, 0.01 of 0.2.
  const size = Math.abs(Number(number)) || 5;
  const step = 10 ** Math.floor(Math.log10(size / 5 + 1e-9));
  const [of] = shownIn(dimension, unit);
  return toPlanUnit(step, own, of);
}
