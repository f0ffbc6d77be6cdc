import { type FixedSeriesId, SERIES } from '@shoreglass/engine';
import { z } from 'zod';

const share = z.number().min(0).max(1);
const day = z.number().min(0);
const perDay = z.array(z.number()).readonly();
const optionalBound = z.exactOptional(z.number());

const subject = z
  .union([
    z.enum(Object.keys(SERIES) as [FixedSeriesId, ...FixedSeriesId[]]),
    z.templateLiteral(['population:', z.string()]),
    z.templateLiteral(['planting:', z.string()]),
  ])
  .describe(
    'A series: a fixed one, or population:<id> with the animals of a population, or planting:<id> with the cover of a planting on land.',
  );

const kind = z.enum(['falls below', 'rises above', 'returns', 'first young', 'dies out']);

export const quantileSeries = z
  .strictObject({
    name: z.string(),
    unit: z.string(),
    band: z.exactOptional(
      z.strictObject({
        low: optionalBound,
        high: optionalBound,
        lowOwner: z.exactOptional(z.string()),
        highOwner: z.exactOptional(z.string()),
      }),
    ),
    days: perDay.describe('Day of the run of each value; the arrays below have the same length.'),
    expected: perDay.describe('The expected run: medians of parameters, means of births and deaths.'),
    q05: perDay,
    q25: perDay,
    q50: perDay,
    q75: perDay,
    q95: perDay,
  })
  .describe('One quantity over the run, as quantiles over the members.');

export const turningPoint = z
  .strictObject({
    id: z.string(),
    subject,
    kind,
    probability: share.describe('Share of members in which it happens within the run.'),
    window: z
      .strictObject({ early: day, median: day, late: day })
      .describe('10, 50 and 90 % of the day on which it happens, among those members.'),
    band: z.strictObject({
      low: optionalBound,
      high: optionalBound,
      unit: z.string(),
      owner: z.string(),
      source: z.string(),
    }),
    because: z
      .array(z.strictObject({ term: z.string(), share }))
      .readonly()
      .describe('Largest terms of the budget behind it over the 30 days before.'),
    slowed: z
      .exactOptional(z.string())
      .describe('What slowed the animals it is about in those days, as a sentence.'),
    sentence: z.string(),
  })
  .describe('A quantity leaving or entering its band, or an event such as first young.');

const handsOffHorizon = z
  .strictObject({
    q10: day,
    q50: day,
    q90: day,
    unbroken: share.describe('Share of members that stay within all bands to the end.'),
    limitedBy: z.array(z.strictObject({ subject, kind, owner: z.string(), share })).readonly(),
  })
  .describe(
    'Days until the first band is left for three days running; the length of the run where it is not.',
  );

export const budget = z
  .strictObject({
    id: z.enum(['alkalinity', 'nitrogen', 'ammonia', 'phosphorus', 'hardness', 'oxygen']),
    name: z.string(),
    unit: z.string().describe('Unit of the amounts, which are of the whole water.'),
    about: z.string(),
    periods: z
      .array(z.strictObject({ from: day, to: day }))
      .readonly()
      .describe('Days of the run, from included, to excluded.'),
    terms: z
      .array(z.strictObject({ term: z.string(), amounts: perDay }))
      .readonly()
      .describe(
        'Who adds (positive) and who removes (negative), one amount per period, largest movers first.',
      ),
    stock: perDay.describe('Amount in the water at the start of the first period and at the end of each.'),
  })
  .describe(
    'Who adds and who removes something dissolved; in each period the terms add up to the change of stock.',
  );

const BALANCES = ['nitrogen', 'phosphorus', 'carbon', 'oxygen', 'calcium', 'alkalinity', 'water'] as const;

/** The outlook as one document, as `ahead --json` prints it. */
export const aheadDocumentSchema = z
  .strictObject({
    enclosure: z.strictObject({ id: z.string(), name: z.string(), startDate: z.iso.date() }),
    run: z.strictObject({
      days: z.int().positive(),
      members: z.int().positive(),
      seed: z.int().nonnegative(),
      engineVersion: z.string(),
    }),
    series: z
      .record(z.string(), quantileSeries)
      .describe('By series, such as pH or population:hyalella-azteca.'),
    turningPoints: z.array(turningPoint).readonly(),
    handsOffHorizon,
    budgets: z.array(budget).readonly().describe('Over the expected run.'),
    closure: z
      .record(z.enum(BALANCES), z.number())
      .describe('Relative closure error of each balance over the expected run, events included.'),
    notModelled: z.array(z.string()).readonly(),
  })
  .describe('The outlook of an enclosure. Days count from the start of the run.');
