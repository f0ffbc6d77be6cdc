import { type Dimension, toPlanUnit, unitsOf } from '@shoreglass/engine';
import { z } from 'zod';

/**
 * Where a value comes from: seen in a published work, seen on a page, a rule of the trade without a source,
 * recalled and not re-read, reasoned from other values with the steps given, or judged.
 */
const basis = z.enum(['published', 'page', 'common practice', 'memory', 'derived', 'assumed']);

/** What is believed of a value: none means it is taken as it stands. */
const distribution = z.enum(['fixed', 'normal', 'lognormal', 'uniform']);

const fields = {
  value: z.number(),
  unit: z.string().min(1),
  distribution: distribution.optional(),
  /** Standard deviation of a normal in the same unit, geometric standard deviation of a lognormal. */
  spread: z.number().positive().optional(),
  min: z.number().optional(),
  max: z.number().optional(),
  basis,
  source: z.string().min(3),
  note: z.string().min(3).optional(),
};

interface Spread {
  readonly value: number;
  readonly unit: string;
  readonly distribution?: z.infer<typeof distribution> | undefined;
  readonly spread?: number | undefined;
  readonly min?: number | undefined;
  readonly max?: number | undefined;
}

/** What is wrong with the spread of a value, or nothing. */
function spreadProblem({ value, distribution: kind, spread, min, max }: Spread): string | undefined {
  if (min !== undefined && value < min) return `value ${value} lies below min ${min}`;
  if (max !== undefined && value > max) return `value ${value} lies above max ${max}`;
  if (kind === undefined || kind === 'fixed') return undefined;
  if (min === undefined || max === undefined) return `a ${kind} value needs min and max`;
  if (kind !== 'uniform' && spread === undefined) return `a ${kind} value needs spread`;
  if (kind === 'lognormal' && !(value > 0 && (spread ?? 0) > 1))
    return 'a lognormal value must be positive and its spread, a geometric standard deviation, above 1';
  return undefined;
}

/** A value with unit, optional spread, and provenance; the unit is any text, for values the engine names itself. */
export const anyQuantity = z.strictObject(fields).check((context) => {
  const wrong = spreadProblem(context.value);
  if (wrong) context.issues.push({ code: 'custom', message: wrong, input: context.value });
});

/** Range of a value in the plan's unit. */
export interface Limits {
  readonly min: number;
  readonly max: number;
}

/** A value whose unit measures one of the dimensions and which lies within limits [plan's unit of the first]. */
export function quantity(dimension: Dimension, limits: Limits, others: readonly Dimension[] = []) {
  const allowed = new Set([dimension, ...others].flatMap((each) => unitsOf(each) as string[]));
  return anyQuantity.check((context) => {
    const { value, unit, min, max } = context.value;
    const say = (message: string) => context.issues.push({ code: 'custom', message, input: context.value });
    if (!allowed.has(unit)) {
      say(`unit '${unit}' does not measure ${dimension}; use one of ${[...allowed].join(', ')}`);
      return;
    }
    if (!unitsOf(dimension).some((each) => each === unit)) return;
    for (const part of [value, min, max]) {
      if (part === undefined) continue;
      const plain = toPlanUnit(part, unit, dimension);
      if (!(plain >= limits.min && plain <= limits.max))
        say(`${part} ${unit} is outside ${limits.min} to ${limits.max} in the plan's unit`);
    }
  });
}

/** A value in the one unit its key is written in, within limits. */
export function quantityIn(unit: string, limits: Limits) {
  return anyQuantity.check((context) => {
    const { value, min, max } = context.value;
    const say = (message: string) => context.issues.push({ code: 'custom', message, input: context.value });
    if (context.value.unit !== unit) say(`unit '${context.value.unit}' must be ${unit}`);
    for (const part of [value, min, max]) {
      if (part !== undefined && !(part >= limits.min && part <= limits.max))
        say(`${part} ${unit} is outside ${limits.min} to ${limits.max}`);
    }
  });
}

export const share = quantity('share', { min: 0, max: 1 });

/** A name by which other files refer to an entry; equal to the file's name. */
const entryId = z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'use a-z, 0-9 and single hyphens');

/** What every entry starts with. */
export const entryHead = {
  id: entryId,
  name: z.string().min(2),
  about: z.string().min(3).optional(),
  /** Sentences shown to the keeper wherever the entry is used. */
  cautions: z.array(z.string().min(10)).optional(),
};

/** What can go wrong with the law, with health, with other animals. */
export const risk = z.strictObject({
  kind: z.enum(['law', 'invasive', 'welfare', 'toxin', 'zoonosis', 'disease', 'escape', 'handling']),
  text: z.string().min(10),
  basis: anyQuantity.shape.basis,
  source: z.string().min(3),
});

export type Risk = z.infer<typeof risk>;

/** How well an entry's numbers are known, and which are not. */
export const known = z.strictObject({
  level: z.enum(['well', 'fairly', 'poorly']),
  note: z.string().min(10),
});

export type Known = z.infer<typeof known>;

export type Quantity = z.infer<typeof anyQuantity>;
