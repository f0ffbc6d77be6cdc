import { RECIPE_QUANTITIES } from '@shoreglass/engine';
import { z } from 'zod';

const amount = z.number().min(0);
const quantity = z.enum(RECIPE_QUANTITIES);

const hardness = z.object({
  '°dGH': amount.optional(),
  '°dKH': amount.optional(),
  'ppm CaCO3': amount,
  '°fH': amount,
  '°Clark': amount,
  gpg: amount,
  'meq/L': amount,
  'mmol/L': amount.optional(),
});

const water = z.strictObject({
  pH: z.number(),
  GH: hardness,
  KH: hardness,
  'conductivity uS/cm at 25 degC': amount,
  'dissolved solids mg/L': z
    .strictObject({
      sumOfIons: amount,
      residueAt180: amount,
      meter500: amount,
      meter640: amount,
      meter700: amount,
    })
    .describe('By mass, and as meters show them: conductivity times 0.5, 0.64 and 0.7.'),
  'ions mg/L': z.record(z.string(), amount),
  calciteSaturationIndex: z.number().nullable().describe('log10; null without calcium or carbonate.'),
  gypsumSaturationIndex: z.number().nullable().describe('log10; null without calcium or sulfate.'),
});

const target = z.strictObject({
  quantity,
  unit: z.string(),
  aim: amount.optional(),
  low: amount.optional(),
  high: amount.optional(),
  value: amount,
  valueBySpoon: amount,
  met: z.boolean(),
  why: z.array(z.string()).describe('Why it is missed; empty when met.'),
});

const salt = z.strictObject({
  id: z.string(),
  name: z.string(),
  formula: z.string(),
  grams: amount,
  milligramsPerLitre: amount.describe('In the finished water.'),
  leastWaterLitres: amount.describe('In which it dissolves at 20 °C.'),
  spoons: z.strictObject({ said: z.string(), grams: amount }).optional(),
});

const recipe = z.strictObject({
  id: z.enum(['closest', 'fewest-salts', 'no-sodium', 'least-weighing', 'purest-water']),
  name: z.string(),
  about: z.string(),
  litres: amount.describe('Of the finished water.'),
  litresMixedNew: amount,
  waters: z.array(
    z.strictObject({
      id: z.string(),
      name: z.string(),
      share: z.number().min(0).max(1).describe('Of what is mixed new.'),
      litres: amount,
      parts: z.number().int().min(0),
    }),
  ),
  salts: z.array(salt),
  targets: z.array(target),
  misfit: amount.describe('Root mean square of the misses, each in steps of the usual test.'),
  water: water.describe('In balance with the air.'),
  waterBySpoon: water.describe('With the salts measured in level spoons.'),
  steps: z.array(z.strictObject({ text: z.string(), why: z.string(), salts: z.array(z.string()) })),
  remarks: z.array(
    z.strictObject({
      severity: z.enum(['caution', 'warning', 'note']),
      text: z.string(),
      source: z.string().optional(),
    }),
  ),
});

/** What `shoreglass mix --json` prints. */
export const recipesDocumentSchema = z
  .strictObject({ recipes: z.array(recipe).min(1) })
  .describe('Several ways to make a water, the closest first.');
