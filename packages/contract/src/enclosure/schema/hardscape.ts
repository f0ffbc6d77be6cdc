import type { z } from 'zod';
import { measure } from './measured.ts';
import { id, keys, list, text } from './strict.ts';

const { length, mass } = measure;

const pointSchema = keys(
  {
    x: length('Distance from the left pane.', '30 cm', '0 cm', '5 m'),
    z: length('Height of the middle of the piece above the base.', '12 cm', '0 cm', '3 m'),
    thick: length('Thickness of the piece there.', '4 cm', '1 mm', '1 m'),
    y: length(
      'Distance from the front pane; in the middle when left out.',
      '20 cm',
      '0 cm',
      '3 m',
    ).optional(),
  },
  'A point of the course of a piece, as seen from the front.',
);

export const pieceSchema = keys(
  {
    id: id('Name of the piece.'),
    name: text('What you call it; the name of the material when left out.').optional(),
    material: id('Wood, stone, carbonate, litter, or peat, moss or soil of the library.'),
    mass: mass('Dry mass.', '900 g'),
    grain: length(
      'Grain diameter of a carbonate, when it is not that of the library.',
      '4 mm',
      '0.01 mm',
      '30 cm',
    ).optional(),
    thick: length(
      'Mean thickness of wood whose course is not drawn; 4 cm when left out. Thin wood leaches more.',
      '4 cm',
      '0.1 mm',
      '1 m',
    ).optional(),
    course: list(
      pointSchema,
      'Where it runs, from one end to the other; left out when it lies loose in the pool.',
      50,
    ).optional(),
  },
  'A piece of wood or stone, carbonate, litter, or a bag of peat, moss or soil in the water.',
);

export type PieceContent = z.output<typeof pieceSchema>;
