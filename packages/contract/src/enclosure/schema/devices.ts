import { timeOfDay } from './clock.ts';
import { measure, measured } from './measured.ts';
import { keys, list, text } from './strict.ts';

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
    on: timeOfDay('When it turns on.'),
    lit: measure.hours('Hours lit each day.', '11 h'),
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

const pumpSchema = keys(
  {
    name: text('What you call it.').optional(),
    power: measure.power('Electrical input.', '4 W'),
    flow: measured('flow', {
      meaning: 'Water it moves, at its real height.',
      example: '200 L/h',
      from: '0 L/h',
      to: '20000 L/h',
    }),
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
);

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
  },
  'The mister.',
);

export const devicesSchema = keys(
  {
    lamps: list(lampSchema, 'Lamps above the cover.', 20).optional(),
    heater: heaterSchema.optional(),
    pump: pumpSchema.optional(),
    mister: misterSchema.optional(),
  },
  'Everything with a plug.',
);
