import { DISSOLVED_IDS } from '@shoreglass/engine';
import { z } from 'zod';
import { budget, quantileSeries, turningPoint } from './ahead-document.ts';

const share = z.number().min(0).max(1);
const day = z.number().min(0);
const perDay = z.array(z.number()).readonly();

const felt = z
  .strictObject({
    pH: z.number(),
    KH: z.number().describe('[°dKH]'),
    GH: z.number().describe('[°dGH]'),
    conductivity: z.number().describe('At 25 °C [µS/cm].'),
    temperature: z.number().describe('[°C]'),
  })
  .describe("A water as animals feel it, in balance with the room's air.");

const sourceWater = z
  .strictObject({
    use: z
      .array(z.string())
      .readonly()
      .describe('What it is used for: fill, top-off, water change; with its share of a blend.'),
    id: z.string(),
    name: z.string(),
    ions: z
      .record(z.enum(DISSOLVED_IDS), z.number())
      .describe('[mg/L of the ion itself, of carbon for the organic carbon]'),
    dissolvedSolids: z.number().describe('Sum of the ions [mg/L].'),
    felt,
    assumed: z.array(z.string()).readonly().describe('What had to be assumed of its analysis.'),
  })
  .describe('A water the plan uses, as read.');

const effectCourse = z.strictObject({
  series: z.enum(['pH', 'KH', 'dissolvedOrganicCarbon']),
  name: z.string(),
  unit: z.string(),
  expected: perDay.describe('With the piece less without it, day by day.'),
  q05: perDay,
  q50: perDay,
  q95: perDay,
  largest: z.strictObject({ day, q05: z.number(), q50: z.number(), q95: z.number() }),
  mostlyBy: z
    .number()
    .describe('First day on which the median has come nine tenths of the way to its largest.'),
});

const pieceEffect = z
  .strictObject({
    piece: z.string(),
    name: z.string(),
    kind: z.string(),
    mass: z.number().describe('Dry mass [kg].'),
    courses: z.array(effectCourse).readonly(),
    sentence: z.string(),
  })
  .describe('What a piece of wood, litter, peat or carbonate does, from runs with and without it.');

const shareOfRuns = z
  .strictObject({ share, low: share, high: share, runs: z.int().positive() })
  .describe('A share of runs with its 90 % interval after Wilson.');

const bufferOption = z.strictObject({
  material: z.string(),
  name: z.string(),
  grain: z.number().describe('Diameter [m].'),
  verdict: z.enum(['found', 'cannot']),
  mass: z.number().describe('Found, or what came closest [kg].'),
  inBand: shareOfRuns,
  fresh: z
    .boolean()
    .describe(
      'Whether that is counted in runs without part in the choice; else in those that chose, which flatter.',
    ),
  left: z.number().describe('Undissolved at the end, share of the mass, median over the runs.'),
  tried: z.array(z.strictObject({ mass: z.number(), inBand: shareOfRuns })).readonly(),
  monotone: z
    .boolean()
    .describe('Whether a larger mass never lowered the least KH of a member, in all that was tried.'),
  portions: z.array(z.strictObject({ day, mass: z.number() })).readonly(),
  gentle: z.boolean().describe("Whether in these portions no day's change exceeds the animals' limits."),
  because: z.exactOptional(
    z.enum(['too late', 'dissolves too slowly', 'acid too strong', 'saturated', 'rises too high']),
  ),
  sentence: z.string(),
});

const bufferAnswer = z
  .strictObject({
    verdict: z.enum(['not needed', 'found', 'cannot']),
    days: z.int().positive(),
    probability: share,
    limits: z
      .array(
        z.strictObject({
          series: z.enum(['pH', 'KH']),
          side: z.enum(['low', 'high']),
          value: z.number(),
          owner: z.string(),
        }),
      )
      .readonly(),
    without: shareOfRuns.describe('In band without any buffer.'),
    options: z.array(bufferOption).readonly(),
    best: z.exactOptional(z.int().nonnegative()),
    sentences: z.array(z.string()).readonly(),
    runs: z.int().nonnegative(),
  })
  .describe('The least mass of a carbonate that holds the bands of pH and KH, or why none can.');

const changeLimit = z.strictObject({
  quantity: z.enum(['pH', 'KH', 'conductivity', 'waterTemperature']),
  perDay: z.number().describe('pH units; °dKH; share of the conductivity before; K.'),
  owner: z.string(),
  basis: z.string(),
  source: z.string(),
});

const splitChange = z
  .strictObject({
    steps: z
      .array(z.strictObject({ day, amount: z.number().describe('Share of the water, or kg.'), after: felt }))
      .readonly(),
    limits: z.array(changeLimit).readonly(),
    before: felt,
    decidedBy: z.exactOptional(changeLimit),
    sentence: z.string(),
  })
  .describe('A water change spread over days by the animals’ limits.');

/** The water year as one document, as `water --json` prints it. */
export const waterDocumentSchema = z
  .strictObject({
    enclosure: z.strictObject({ id: z.string(), name: z.string(), startDate: z.iso.date() }),
    run: z.strictObject({
      days: z.int().positive(),
      members: z.int().positive(),
      seed: z.int().nonnegative(),
      engineVersion: z.string(),
    }),
    waters: z.array(sourceWater).readonly(),
    start: felt.describe('The water on the first day.'),
    measured: z.exactOptional(
      z
        .strictObject({ readings: z.array(z.string()).readonly(), inferred: z.array(z.string()).readonly() })
        .describe('Readings the run was started from, and what was inferred.'),
    ),
    series: z.record(z.string(), quantileSeries).describe('Series of the water, by id.'),
    turningPoints: z.array(turningPoint).readonly(),
    budgets: z.array(budget).readonly().describe('Over the expected run.'),
    pieces: z.array(pieceEffect).readonly(),
    changeLimits: z.array(changeLimit).readonly(),
    change: z.exactOptional(splitChange),
    buffer: z.exactOptional(bufferAnswer),
    notModelled: z.array(z.string()).readonly(),
  })
  .describe('The water of an enclosure over a year. Days count from the start of the run.');

export type WaterDocument = z.output<typeof waterDocumentSchema>;
