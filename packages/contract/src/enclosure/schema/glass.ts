import type { z } from 'zod';
import { measure } from './measured.ts';
import { id, keys, list, text, word } from './strict.ts';

const { length, share } = measure;

export const glassSchema = keys(
  {
    length: length('Inside length, from the left pane to the right.', '90 cm', '10 cm', '5 m'),
    width: length('Inside width, from front to back.', '45 cm', '10 cm', '3 m'),
    height: length('Inside height.', '60 cm', '10 cm', '3 m'),
    thickness: length('Thickness of the panes.', '8 mm', '2 mm', '40 mm'),
  },
  'The glass box, measured inside.',
);

export const coverSchema = keys(
  {
    open: share('Part of the top that is open to the room.', '8 %'),
    transmission: share(
      'Part of the light that the closed part of the cover lets through.',
      '90 %',
    ).optional(),
  },
  'The cover on top of the glass.',
);

const layerSchema = keys(
  {
    kind: word(
      ['false bottom', 'drainage', 'foam', 'mesh', 'substrate', 'litter'],
      'What the layer is for: false bottom, drainage, foam, mesh, substrate or litter.',
    ),
    material: id('Material of the library the layer is made of.'),
    name: text('What you call it; the name of the material when left out.').optional(),
    thickness: length(
      'Thickness. The topmost layer reaches the ground surface and needs none.',
      '5 cm',
      '0.2 mm',
      '2 m',
    ).optional(),
  },
  'One layer of the ground.',
);

export const zoneSchema = keys(
  {
    id: id('Name by which plants and animals refer to the zone.'),
    name: text('What you call it; the id when left out.').optional(),
    kind: word(['pool', 'margin', 'bank', 'stream', 'wall', 'canopy'], 'What kind of place it is.'),
    from: length('Left end, measured from the left pane.', '0 cm', '0 cm', '5 m'),
    to: length('Right end, measured from the left pane.', '45 cm', '0 cm', '5 m'),
    ground: keys(
      {
        left: length('Height of the ground at the left end, above the base.', '4 cm', '0 cm', '3 m'),
        right: length('Height of the ground at the right end, above the base.', '6 cm', '0 cm', '3 m'),
      },
      'Height of the ground surface; straight between its two ends.',
    ),
    layers: list(layerSchema, 'What the ground is made of, from the base upwards.', 20),
  },
  'A part with one ground build-up, as wide as the box.',
);

export type ZoneContent = z.output<typeof zoneSchema>;
