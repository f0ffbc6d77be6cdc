import { z } from 'zod';
import { actionSchema, routineSchema } from './care.ts';
import { date } from './clock.ts';
import { devicesSchema } from './devices.ts';
import { coverSchema, glassSchema, zoneSchema } from './glass.ts';
import { pieceSchema } from './hardscape.ts';
import { animalsSchema, plantingSchema } from './life.ts';
import { roomSchema } from './room.ts';
import { said } from './say.ts';
import { keys, list, text } from './strict.ts';
import { ownWaterSchema, settledSchema, waterSchema } from './water.ts';

/** Version of the file's format that this program reads and writes. */
export const FORMAT_VERSION = 1;

const versionMend = `Write shoreglass: ${FORMAT_VERSION}. A higher number needs a newer program.`;

export const enclosureSchema = keys(
  {
    shoreglass: z
      .literal(FORMAT_VERSION, {
        error: () => said('is not a version of the format that can be read', versionMend),
      })
      .describe('Version of the format of this file.'),
    name: text('Name of the enclosure.', 80),
    about: text('What it is, for people.', 4000).optional(),
    start: date('First day of the plan; sets the season.'),
    glass: glassSchema,
    cover: coverSchema,
    zones: list(zoneSchema, 'Parts of the enclosure from left to right.', 40),
    waters: list(ownWaterSchema, 'Waters of your own, by analysis.', 20).optional(),
    water: waterSchema,
    settled: settledSchema.optional(),
    room: roomSchema,
    devices: devicesSchema.optional(),
    hardscape: list(pieceSchema, 'Wood, stone, carbonate, and litter in the water.', 100).optional(),
    plants: list(plantingSchema, 'Plantings.', 100).optional(),
    animals: list(animalsSchema, 'Founders, one entry per species.', 40).optional(),
    routines: list(routineSchema, 'Care that repeats.', 50).optional(),
    actions: list(actionSchema, 'Care done once.', 500).optional(),
  },
  'An enclosure: half land, half water, in one glass box.',
);

/** What the file says, every quantity in the plan's unit (m, kg, s, days where it says so, degC, mol/m3). */
export type EnclosureContent = z.output<typeof enclosureSchema>;
