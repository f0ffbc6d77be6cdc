import type { z } from 'zod';
import { measure } from './measured.ts';
import { said } from './say.ts';
import { id, keys, list, text, word } from './strict.ts';

const { length, share } = measure;

const meshSchema = keys(
  {
    open: share('Free part of its area.', '40 %', '1 %'),
    hole: length('Width of its holes.', '0.5 mm', '0.02 mm', '5 cm'),
  },
  'Woven mesh.',
);

const ventSchema = keys(
  {
    name: text('What you call it.').optional(),
    pane: word(['front', 'back', 'left', 'right'], 'Pane it is in.'),
    height: length('Its lower edge, above the inner base.', '25 cm', '0 cm', '3 m'),
    length: length('Length of the slot.', '40 cm', '1 mm', '5 m'),
    opening: length('Height of the slot.', '2 cm', '0.5 mm', '1 m'),
    mesh: meshSchema.optional(),
  },
  'A slot in a pane through which air passes.',
);

export const glassSchema = keys(
  {
    length: length('Inside length, from the left pane to the right.', '90 cm', '10 cm', '5 m'),
    width: length('Inside width, from front to back.', '45 cm', '10 cm', '3 m'),
    height: length('Inside height.', '60 cm', '10 cm', '3 m'),
    thickness: length('Thickness of the panes.', '8 mm', '2 mm', '40 mm'),
    top: word(
      ['rimless', 'rimmed'],
      'Upper edge of the panes: free, or held by a rim or braces; rimless when left out.',
    ).optional(),
    vents: list(ventSchema, 'Slots in the panes through which air passes.', 12).optional(),
    overflow: keys(
      {
        height: length('Its lower edge, above the inner base.', '20 cm', '0 cm', '3 m'),
        bore: length('Inner diameter.', '25 mm', '5 mm', '20 cm'),
      },
      'Hole or stand-pipe above which water runs off.',
    ).optional(),
    'second-pane': keys(
      {
        gap: length('Still air between the panes.', '10 mm', '1 mm', '10 cm'),
        thickness: length('Thickness of the second pane.', '4 mm', '1 mm', '20 mm'),
      },
      'Second pane before the front glass.',
    ).optional(),
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
    mesh: meshSchema.optional(),
    gap: length(
      'Widest slit between cover and glass, through which animals might leave.',
      '1 mm',
      '0 mm',
      '10 cm',
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

const height = (meaning: string) => length(`${meaning}, above the base.`, '4 cm', '0 cm', '3 m').optional();

const groundSchema = keys(
  {
    left: height('Height of the ground at the left end'),
    right: height('Height of the ground at the right end'),
    front: height('Height of the ground at the front'),
    back: height('Height of the ground at the back'),
  },
  'Height of the ground surface, straight in between: left and right, or front and back, or one of them for level ground.',
);

const cornerSchema = keys(
  {
    x: length('Distance from the left pane.', '30 cm', '0 cm', '5 m'),
    y: length('Distance from the front pane.', '20 cm', '0 cm', '3 m'),
    ground: height('Height of the ground at this corner; all corners have one, or none'),
  },
  'A corner of a zone, seen from above.',
);

interface Placed {
  readonly from?: number | undefined;
  readonly to?: number | undefined;
  readonly outline?: readonly { readonly ground?: number | undefined }[] | undefined;
  readonly ground?: Partial<Record<'left' | 'right' | 'front' | 'back', number | undefined>> | undefined;
}

/** A zone is placed either by its ends or by its corners, and its ground is told once. */
function wherePlaced({ from, to, outline, ground }: Placed, context: z.RefinementCtx<unknown>): void {
  const tell = (path: (string | number)[], message: string, mend: string): void => {
    context.addIssue({ code: 'custom', path, message: said(message, mend) });
  };
  const heights = Object.values(ground ?? {}).filter((one) => one !== undefined).length;
  const alongAndAcross =
    (ground?.left ?? ground?.right) !== undefined && (ground?.front ?? ground?.back) !== undefined;
  if (alongAndAcross)
    tell(
      ['ground'],
      'slopes both ways',
      'Give left and right, or front and back; for more give each corner of an outline its ground.',
    );
  if (!outline) {
    if (from === undefined)
      tell(['from'], 'is missing', 'Add it with its unit, such as 0 cm, or draw an outline.');
    if (to === undefined)
      tell(['to'], 'is missing', 'Add it with its unit, such as 45 cm, or draw an outline.');
    if (heights === 0)
      tell(['ground'], 'is missing', 'Add it with the keys left and right, or front and back.');
    return;
  }
  if (outline.length < 3)
    tell(['outline'], 'has fewer than three corners', 'Add corners, or give from and to.');
  if (from !== undefined || to !== undefined)
    tell(
      [from === undefined ? 'to' : 'from'],
      'stands beside an outline',
      'Remove from and to, or the outline.',
    );
  const own = outline.filter((corner) => corner.ground !== undefined).length;
  if (own > 0 && heights > 0)
    tell(['ground'], 'stands beside corners that have their own ground', 'Remove the one or the other.');
  else if (own > 0 && own < outline.length)
    tell(['outline'], 'gives some of its corners a ground and others none', 'Give every corner its ground.');
  else if (own + heights === 0)
    tell(['ground'], 'is missing', 'Add it with the keys left and right, or give every corner its ground.');
}

export const zoneSchema = keys(
  {
    id: id('Name by which plants and animals refer to the zone.'),
    name: text('What you call it; the id when left out.').optional(),
    kind: word(
      ['pool', 'margin', 'bank', 'stream', 'wall', 'canopy', 'island', 'cave'],
      'What kind of place it is.',
    ),
    from: length(
      'Left end, measured from the left pane; not with an outline.',
      '0 cm',
      '0 cm',
      '5 m',
    ).optional(),
    to: length(
      'Right end, measured from the left pane; not with an outline.',
      '45 cm',
      '0 cm',
      '5 m',
    ).optional(),
    outline: list(
      cornerSchema,
      'Corners in order, seen from above; without it the zone is as wide as the box, between from and to.',
      60,
    ).optional(),
    ground: groundSchema.optional(),
    roof: keys(
      {
        bottom: length('Height of its underside, above the base.', '15 cm', '0 cm', '3 m'),
        top: length('Height of its upper face, above the base.', '18 cm', '0 cm', '3 m'),
        material: id('Stone of the library it is made of; slate when left out.').optional(),
      },
      'A slab above the ground, as over a cave.',
    ).optional(),
    layers: list(layerSchema, 'What the ground is made of, from the base upwards.', 20),
  },
  'A part with one ground build-up.',
).superRefine(wherePlaced);

export type ZoneContent = z.output<typeof zoneSchema>;
