import { z } from 'zod';
import { sheetSchema } from './sheet-schema.ts';

const numbers = z.array(z.number()).readonly();
const spread = z.strictObject({ mean: z.number(), low: z.number(), high: z.number() });

const month = z
  .strictObject({
    month: z.int().min(0).max(12).describe('1 to 12; 0 for the whole year.'),
    air: spread,
    water: spread,
    frontGlass: spread,
    dewPoint: spread,
    humidity: spread.describe('[0..1]'),
    dryDay: z.number().describe('Mean humidity of the driest day in twenty [0..1].'),
    fog: z.number().describe('Hours a day on which the front pane is fogged.'),
    foggyDay: z.number().describe('On the foggiest day in twenty [h].'),
    evaporated: z.number().describe('From the open water [m3/day].'),
    lost: z.number().describe('Carried into the room [m3/day].'),
    topOff: z.number().describe('[m3/day], negative where mist and fog bring more than the box gives off'),
    landWetness: z.number().describe('1 when soaked.'),
    dryHours: z.number().describe('Share of hours in which the land holds less than a third.'),
    heaterPower: z.number().describe('[W]'),
  })
  .describe('Temperatures in °C.');

const climate = z.strictObject({
  months: z.array(month).readonly(),
  days: z
    .array(
      z.strictObject({
        month: z.int(),
        air: numbers,
        water: numbers,
        frontGlass: numbers,
        dewPoint: numbers,
        humidity: numbers,
        fogged: numbers.describe('Part of each hour.'),
      }),
    )
    .readonly()
    .describe('Mean day of each month, 24 values each.'),
  year: month,
  closure: z.strictObject({ heat: z.number(), water: z.number() }),
});

const option = z.strictObject({
  name: z.string(),
  range: z.exactOptional(z.strictObject({ from: z.number(), to: z.number() })),
  open: z.number(),
  humidity: z.number(),
  fog: z.number(),
  topOff: z.number().describe('[m3/day], negative where mist and fog bring more than the box gives off'),
});

const cover = z.strictObject({
  goal: z.strictObject({ humidity: z.number(), fog: z.number() }),
  asDrawn: option,
  curve: z.strictObject({ open: numbers, humidity: numbers, fog: numbers }),
  alternatives: z.array(option).readonly(),
  sentence: z.string(),
});

/** What a plan's shape tells, as `shape --json` prints it. */
export const shapeDocumentSchema = z
  .strictObject({
    enclosure: z.strictObject({ id: z.string(), name: z.string(), startDate: z.iso.date() }),
    engineVersion: z.string(),
    sheet: sheetSchema,
    climate,
    cover: z.exactOptional(cover.describe('How far the cover may be open; when asked for.')),
  })
  .describe('Shape, structure, flow, light and climate of an enclosure, in SI units.');
