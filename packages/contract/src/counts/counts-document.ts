import { z } from 'zod';

const number = z.number();
const estimate = z
  .strictObject({ value: number, low: number, high: number })
  .describe('With its 95 % interval.');
const range = z.tuple([number, number]);
const days = number.min(0);

/** What `shoreglass life --counts --json` prints: the contract's CountsAnswer. */
export const countsDocumentSchema = z.strictObject({
  startDate: z
    .exactOptional(z.string())
    .describe('Date of day 0, the first count; left out where days were given.'),
  counts: z.array(
    z.strictObject({
      day: days.describe('Days from the first count.'),
      number: number.min(0).describe('Animals, or animals in a unit of effort.'),
      error: z.exactOptional(number).describe('Standard deviation of the counting.'),
    }),
  ),
  byEffort: z.boolean(),
  growth: z
    .exactOptional(
      z.strictObject({
        stretches: number,
        span: days,
        rate: number.describe('Of ln N [1/d].'),
        rateRange: z.exactOptional(range).describe('95 %.'),
        variance: z.exactOptional(estimate).describe('[1/d]'),
      }),
    )
    .describe('Dennis, Munholland & Scott 1991: all scatter good and bad days.'),
  trend: z
    .exactOptional(z.strictObject({ rate: estimate }))
    .describe('Regression of ln N on days: all scatter miscounting.'),
  limit: z
    .exactOptional(
      z.strictObject({
        limit: estimate.describe('K [animals].'),
        rate: estimate.describe('r [1/d].'),
        start: estimate.describe('N0 [animals].'),
        gain: number.describe('Corrected criterion of Akaike without a limit less that with one.'),
        shown: z.boolean().describe('Whether the counts tell of it.'),
      }),
    )
    .describe('Logistic growth by least squares.'),
  falling: z.exactOptional(
    z.strictObject({
      from: number,
      below: number,
      days,
      chance: estimate,
      ever: number,
      meanDays: z.exactOptional(number),
    }),
  ),
  stages: z.exactOptional(
    z.strictObject({
      names: z.array(z.string()),
      step: days,
      matrix: z
        .array(z.array(number))
        .describe('What one of each stage (column) becomes or bears in a step.'),
      sumOfSquares: number,
      growth: z.exactOptional(number),
    }),
  ),
  warmth: z.exactOptional(
    z.strictObject({
      threshold: number.describe('[°C]'),
      degreeDays: number.describe('From the first count to the last [°C d].'),
      rate: number.describe('Of ln N [1/(°C d)].'),
      rateRange: z.exactOptional(range),
    }),
  ),
  course: z.array(z.strictObject({ day: days, value: number, low: number, high: number })),
  fitted: z.array(estimate).describe('The curve on the day of each count; empty where none is drawn.'),
  drawn: z.exactOptional(z.enum(['limit', 'trend'])),
  sentences: z.array(
    z.strictObject({
      about: z.enum(['growth', 'limit', 'falling', 'stages', 'warmth']),
      text: z.string(),
      source: z.string(),
    }),
  ),
  cautions: z.array(z.string()),
  species: z.exactOptional(
    z.strictObject({
      id: z.string(),
      name: z.string(),
      temperature: number.describe('[°C]'),
      alone: z.exactOptional(number).describe('Growth rate by itself with ample food [1/d].'),
      overshoot: z.exactOptional(z.strictObject({ most: number, fewest: number, swings: z.boolean() })),
      sentences: z.array(z.string()),
    }),
  ),
  computed: z.exactOptional(
    z.strictObject({
      enclosure: z.string(),
      firstDay: number.describe('Day of the run of the first count.'),
      counts: z.array(
        z.strictObject({
          day: number.describe('Of the run.'),
          counted: number,
          low: number,
          middle: number,
          high: number,
        }),
      ),
      below: number,
      within: number,
      above: number,
      outside: number,
      sentence: z.string(),
    }),
  ),
});
