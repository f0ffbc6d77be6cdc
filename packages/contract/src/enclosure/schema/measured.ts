import { type Dimension, readQuantity, toPlanUnit, unitsOf } from '@shoreglass/engine';
import { z } from 'zod';
import { said } from './say.ts';

export interface MeasuredSpec {
  /** What it is, for people. */
  readonly meaning: string;
  readonly example: string;
  /** Smallest and largest value accepted, written with unit. */
  readonly from: string;
  readonly to: string;
}

function planValue(written: string, dimension: Dimension): number {
  const quantity = readQuantity(written);
  if ('wrong' in quantity) throw new Error(`'${written}' ${quantity.wrong}`);
  return toPlanUnit(quantity.value, quantity.unit, dimension);
}

/** Units worth naming in a hint: those people use here, or the first few of the table. */
const HINTS: Partial<Record<Dimension, string>> = {
  share: '%',
  length: 'cm, mm, m, in, ft',
  mass: 'g, mg, kg, oz, lb',
  time: 'd, h, week',
  'mole fraction': 'ppm',
};

function unitHint(dimension: Dimension): string {
  const hint = HINTS[dimension];
  if (hint !== undefined) return hint;
  return unitsOf(dimension).slice(0, 8).join(', ');
}

function withUnit(input: unknown, dimension: Dimension, example: string): string {
  if (input === undefined) return said('is missing', `Add it with its unit, such as ${example}.`);
  if (typeof input === 'number')
    return said(
      'has no unit',
      `Write the unit after the number (${unitHint(dimension)}), such as ${example}.`,
    );
  return said('must be a number with a unit', `Write it like ${example}.`);
}

/** What is wrong with a written quantity of a dimension, or its value in the plan's unit. */
function readMeasured(
  text: string,
  dimension: Dimension,
  { example, from, to }: MeasuredSpec,
): number | string {
  const written = readQuantity(text);
  if ('wrong' in written)
    return said(written.wrong, `Write a number and a unit (${unitHint(dimension)}), such as ${example}.`);
  if (!unitsOf(dimension).includes(written.unit))
    return said(
      `${written.unit} does not measure ${dimension}`,
      `Use one of ${unitHint(dimension)}, such as ${example}.`,
    );
  const value = toPlanUnit(written.value, written.unit, dimension);
  if (value < planValue(from, dimension) || value > planValue(to, dimension))
    return said(
      `is outside ${from} to ${to}`,
      `Check the number and its unit; an ordinary value is ${example}.`,
    );
  return value;
}

/** A quantity written with its unit ('13 cm', '64 °F'), read into the plan's unit of its dimension. */
export function measured(dimension: Dimension, spec: MeasuredSpec) {
  return z
    .string({ error: (issue) => withUnit(issue.input, dimension, spec.example) })
    .meta({
      description: `${spec.meaning} A number with its unit (${unitHint(dimension)}), ${spec.from} to ${spec.to}.`,
      examples: [spec.example],
    })
    .transform((text, context) => {
      const value = readMeasured(text, dimension, spec);
      if (typeof value === 'number') return value;
      context.issues.push({ code: 'custom', message: value, input: text });
      return z.NEVER;
    });
}

const length = (meaning: string, example: string, from: string, to: string) =>
  measured('length', { meaning, example, from, to });

export const measure = {
  length,
  share: (meaning: string, example: string, from = '0 %', to = '100 %') =>
    measured('share', { meaning, example, from, to }),
  days: (meaning: string, example: string, from = '0 d', to = '3000 d') =>
    measured('time', { meaning, example, from, to }).transform((seconds) => seconds / 86_400),
  hours: (meaning: string, example: string, from = '0 h', to = '24 h') =>
    measured('time', { meaning, example, from, to }).transform((seconds) => seconds / 3600),
  mass: (meaning: string, example: string, from = '1 mg', to = '500 kg') =>
    measured('mass', { meaning, example, from, to }),
  power: (meaning: string, example: string) =>
    measured('power', { meaning, example, from: '0 W', to: '3 kW' }),
};
