import { dayOfYear } from './clock.ts';
import { measure, measured } from './measured.ts';
import { keys, text } from './strict.ts';

const temperatureSchema = keys(
  {
    mean: measured('temperature', {
      meaning: 'Mean of the year.',
      example: '18 °C',
      from: '-10 °C',
      to: '45 °C',
    }),
    season: measured('temperature difference', {
      meaning: 'How far the warmest time of year lies above the mean, and the coldest below it.',
      example: '3 K',
      from: '0 K',
      to: '20 K',
    }).optional(),
    day: measured('temperature difference', {
      meaning: 'How far the afternoon lies above the mean of the day, and the small hours below it.',
      example: '1 K',
      from: '0 K',
      to: '15 K',
    }).optional(),
    peak: dayOfYear('Day with the highest daily mean.').optional(),
  },
  'Temperature of the room.',
);

const humiditySchema = keys(
  {
    mean: measure.share('Mean relative humidity of the year.', '55 %'),
    season: measure
      .share('How far the most humid time of year lies above the mean.', '5 %', '0 %', '50 %')
      .optional(),
    day: measure
      .share(
        'How far the afternoon lies above the mean of the day; usually negative.',
        '-4 %',
        '-40 %',
        '40 %',
      )
      .optional(),
    peak: dayOfYear('Day with the highest daily mean.').optional(),
  },
  'Relative humidity of the room.',
);

export const roomSchema = keys(
  {
    temperature: temperatureSchema.optional(),
    humidity: humiditySchema.optional(),
    series: text(
      'Measured hourly series instead of temperature and humidity: a name of the library, or the path of a CSV file beside this one.',
      300,
    ).optional(),
    'carbon-dioxide': measured('mole fraction', {
      meaning: 'Carbon dioxide in the air of the room.',
      example: '600 ppm',
      from: '250 ppm',
      to: '10000 ppm',
    }).optional(),
    pressure: measured('pressure', {
      meaning: 'Air pressure as it is, not reduced to sea level.',
      example: '1010 hPa',
      from: '500 hPa',
      to: '1100 hPa',
    }).optional(),
  },
  'The room around the glass: a course over the year, or a measured series.',
);
