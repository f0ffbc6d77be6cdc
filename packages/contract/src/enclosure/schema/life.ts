import { z } from 'zod';
import { measure } from './measured.ts';
import { count, id, keys, text } from './strict.ts';

export const plantingSchema = keys(
  {
    plant: id('Plant of the library.'),
    name: text('What you call it; the name of the plant when left out.').optional(),
    zone: id('Zone it grows in.'),
    cover: measure.share('Part of the ground of the zone it covers at the start.', '20 %'),
    start: z
      .enum(['plants', 'fragments'])
      .describe('Set as plants or mats, or sprinkled or painted on as fragments; as plants when left out.')
      .optional(),
  },
  'A planting.',
);

export const animalsSchema = keys(
  {
    species: id('Animal of the library.'),
    name: text('What you call them; the name of the species when left out.').optional(),
    zone: id('Zone they mostly use.'),
    adults: count('Adults brought in.', 10_000).optional(),
    juveniles: count('Young brought in.', 10_000).optional(),
    after: measure.days('When they move in, after the start.', '28 d').optional(),
  },
  'Founders of one population.',
);

export type PlantingContent = z.output<typeof plantingSchema>;
export type AnimalsContent = z.output<typeof animalsSchema>;
