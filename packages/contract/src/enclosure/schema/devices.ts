import { timeOfDay } from './clock.ts';
import { measure, measured } from './measured.ts';
import { said } from './say.ts';
import { count, keys, list, text, word } from './strict.ts';
import { blendSchema } from './water.ts';

const { length } = measure;

const protection = () =>
  text('Degree of protection against water, such as IP65.', 8)
    .regex(/^IP[0-6X][0-9X]K?$/, said('is not a degree of protection', 'Write it like IP65.'))
    .optional();

const lampSchema = keys(
  {
    name: text('What you call it.').optional(),
    power: measure.power('Electrical input.', '28 W'),
    photons: measured('photon flux', {
      meaning: 'Photons of 400 to 700 nm that reach the cover each second, from the maker’s sheet.',
      example: '50 µmol/s',
      from: '0 µmol/s',
      to: '5000 µmol/s',
    }).optional(),
    lumens: measured('luminous flux', {
      meaning: 'Luminous flux, when photons are not known.',
      example: '2800 lm',
      from: '0 lm',
      to: '300000 lm',
    }).optional(),
    colour: measured('temperature difference', {
      meaning: 'Colour temperature, for turning lumens into photons.',
      example: '4000 K',
      from: '1500 K',
      to: '20000 K',
    }).optional(),
    on: timeOfDay('When it turns on.'),
    lit: measure.hours('Hours lit each day.', '11 h'),
    dim: measure.share('Part of its full power at which it runs.', '70 %').optional(),
    panel: keys(
      {
        x: length('Its middle, from the left pane.', '45 cm', '0 cm', '5 m'),
        y: length('Its middle, from the front pane.', '22 cm', '0 cm', '3 m'),
        z: length('Its underside, above the inner base.', '65 cm', '0 cm', '5 m'),
        length: length('Length of the part that shines, along the box.', '80 cm', '1 mm', '5 m'),
        breadth: length('Breadth of the part that shines, front to back.', '5 cm', '1 mm', '3 m'),
      },
      'Where the part that shines hangs; over the whole cover when left out.',
    ).optional(),
    protection: protection(),
  },
  'A lamp above the cover.',
);

const heaterSchema = keys(
  {
    power: measure.power('Electrical input.', '50 W'),
    setpoint: measured('temperature', {
      meaning: 'Water temperature it keeps.',
      example: '22 °C',
      from: '5 °C',
      to: '40 °C',
    }),
  },
  'A heater in the water.',
);

const curveSchema = keys(
  {
    head: length('Height to which it just lifts water, from its label.', '80 cm', '1 cm', '20 m'),
    flow: measured('flow', {
      meaning: 'Water it moves without any height, from its label.',
      example: '400 L/h',
      from: '1 L/h',
      to: '20000 L/h',
    }),
    exponent: measured('share', {
      meaning: 'Shape of the curve: 200 % for ordinary pumps, 100 % for very weak ones.',
      example: '200 %',
      from: '50 %',
      to: '400 %',
    }).optional(),
  },
  'What the label of a pump tells.',
);

const hoseSchema = keys(
  {
    length: length('Length.', '80 cm', '0 cm', '50 m'),
    bore: length('Inner diameter.', '12 mm', '1 mm', '10 cm'),
    elbows: count('Elbows and other sharp bends.', 50).optional(),
    valves: count('Valves.', 20).optional(),
  },
  'Hose or pipe behind the pump.',
);

const filterSchema = keys(
  {
    kind: word(['foam', 'gravel'], 'What the water passes: foam or gravel.'),
    area: measured('area', {
      meaning: 'Cross-section the water passes.',
      example: '80 cm²',
      from: '1 cm²',
      to: '10 m²',
    }),
    thickness: length('Way through it.', '5 cm', '1 mm', '2 m'),
    pores: count('Pores per inch of a foam; 20 when left out.', 100).optional(),
    grain: length('Grain diameter of gravel; 4 mm when left out.', '4 mm', '0.1 mm', '5 cm').optional(),
  },
  'Foam or gravel that all the pumped water passes.',
);

const pumpSchema = keys(
  {
    name: text('What you call it.').optional(),
    power: measure.power('Electrical input.', '4 W'),
    flow: measured('flow', {
      meaning: 'Water it moves, at its real height; worked out from the curve when left out.',
      example: '200 L/h',
      from: '0 L/h',
      to: '20000 L/h',
    }).optional(),
    curve: curveSchema.optional(),
    outlet: length('Height of its outlet, above the inner base.', '30 cm', '0 cm', '5 m').optional(),
    hose: hoseSchema.optional(),
    lip: length('Width of the lip or bed over which the water returns.', '20 cm', '1 mm', '5 m').optional(),
    filter: filterSchema.optional(),
    fall: measure
      .length(
        'Free fall of the returning water; 0 cm when it enters below the surface.',
        '8 cm',
        '0 cm',
        '2 m',
      )
      .optional(),
    films: measured('area', {
      meaning: 'Surface for bacteria inside the filter.',
      example: '0.3 m²',
      from: '0 m²',
      to: '1000 m²',
    }).optional(),
  },
  'The pump that moves the water.',
).superRefine(({ flow, curve }, context) => {
  if (flow === undefined && curve === undefined)
    context.addIssue({
      code: 'custom',
      path: ['flow'],
      message: said('is missing', 'Add it with its unit, such as 200 L/h, or give the curve of the label.'),
    });
});

const misterSchema = keys(
  {
    name: text('What you call it.').optional(),
    amount: measured('volume', {
      meaning: 'Water sprayed in a day.',
      example: '100 mL',
      from: '0 mL',
      to: '20 L',
    }),
    at: list(timeOfDay('When it sprays.'), 'Times of day at which it sprays, equal shares.', 48),
    water: blendSchema
      .optional()
      .describe('What it sprays, by name or as a blend; free of salts when left out.'),
  },
  'The mister.',
);

const foggerSchema = keys(
  {
    name: text('What you call it.').optional(),
    power: measure.power('Electrical input.', '20 W'),
    rate: measured('flow', {
      meaning: 'Water it turns into fog while it runs.',
      example: '0.2 L/h',
      from: '0 L/h',
      to: '20 L/h',
    }),
    from: word(['pool', 'reservoir'], 'Where it takes its water from.'),
    at: list(timeOfDay('When it starts.'), 'Times of day at which it starts.', 48),
    runs: measure.hours('How long it runs each time.', '0.25 h'),
  },
  'An ultrasonic fogger.',
);

const fanSchema = keys(
  {
    name: text('What you call it.').optional(),
    power: measure.power('Electrical input.', '2 W'),
    flow: measured('flow', {
      meaning: 'Air it moves, in place.',
      example: '5 m³/h',
      from: '0 m³/h',
      to: '500 m³/h',
    }),
    moves: word(
      ['room', 'inside'],
      'room: draws room air through the box; inside: stirs the air along the front glass.',
    ),
    on: timeOfDay('When it turns on; all day when left out.').optional(),
    runs: measure.hours('Hours it runs each day; all day when left out.', '24 h').optional(),
    above: measure.share('Runs only while the air in the box is more humid than this.', '90 %').optional(),
  },
  'A fan.',
);

const matSchema = keys(
  {
    name: text('What you call it.').optional(),
    power: measure.power('Electrical input.', '15 W'),
    under: word(['water', 'land', 'all'], 'What it warms: the water, the land, or all of the base.'),
    setpoint: measured('temperature', {
      meaning: 'Temperature above which its thermostat turns it off; always on in its hours when left out.',
      example: '24 °C',
      from: '5 °C',
      to: '40 °C',
    }).optional(),
    on: timeOfDay('When it turns on; all day when left out.').optional(),
    runs: measure.hours('Hours it runs each day; all day when left out.', '24 h').optional(),
  },
  'A heat mat.',
);

export const devicesSchema = keys(
  {
    lamps: list(lampSchema, 'Lamps above the cover.', 20).optional(),
    heater: heaterSchema.optional(),
    pump: pumpSchema.optional(),
    mister: misterSchema.optional(),
    fogger: foggerSchema.optional(),
    fans: list(fanSchema, 'Fans.', 12).optional(),
    mats: list(matSchema, 'Heat mats.', 12).optional(),
  },
  'Everything with a plug.',
);
