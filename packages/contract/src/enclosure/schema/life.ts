import { z } from 'zod';
import { measure } from './measured.ts';
import { said } from './say.ts';
import { count, id, keys, text } from './strict.ts';

const chance = (meaning: string) => measure.share(meaning, '15 %').optional();

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
    chance: chance('Chance that it comes along by accident; surely there when left out.'),
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
    chance: chance('Chance that they come along with plants by accident; surely there when left out.'),
  },
  'Founders of one population.',
).refine(({ after = 0, chance: likely }) => likely === undefined || after === 0, {
  path: ['chance'],
  error: () =>
    said(
      'is given beside a day on which they move in',
      'Leave out `after`: what comes along by accident is there from the start.',
    ),
});

export type PlantingContent = z.output<typeof plantingSchema>;
export type AnimalsContent = z.output<typeof animalsSchema>;
