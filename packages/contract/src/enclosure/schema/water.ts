import {
  DISSOLVED_IDS,
  DISSOLVED_MASS,
  type DissolvedId,
  readQuantity,
  toPlanUnit,
  unitsOf,
} from '@shoreglass/engine';
import { z } from 'zod';
import { measure, measured } from './measured.ts';
import { said } from './say.ts';
import { id, keys, list, text, word } from './strict.ts';

const NITROGEN: readonly DissolvedId[] = ['ammonium', 'nitrite', 'nitrate'];

/** Concentration of one dissolved substance [mol/m3] from a value in mg/L, mmol/L, mg N/L or mg P/L. */
export function concentrationOf(substance: DissolvedId, value: number, unit: string): number | undefined {
  const measures = (dimension: Parameters<typeof unitsOf>[0]) =>
    unitsOf(dimension).some((each) => each === unit);
  if (unit.startsWith('°d') || unit.includes('CaCO3'))
    return substance === 'calcium' ? toPlanUnit(value, unit, 'amount concentration') : undefined;
  if (measures('amount concentration')) return toPlanUnit(value, unit, 'amount concentration');
  if (measures('mass concentration'))
    return (toPlanUnit(value, unit, 'mass concentration') * 1000) / DISSOLVED_MASS[substance];
  if (measures('nitrogen concentration') && NITROGEN.includes(substance))
    return toPlanUnit(value, unit, 'nitrogen concentration');
  if (measures('phosphorus concentration') && substance === 'phosphate')
    return toPlanUnit(value, unit, 'phosphorus concentration');
  return undefined;
}

const MOST = 200;

function ion(substance: DissolvedId, name: string) {
  const units = NITROGEN.includes(substance)
    ? `mg/L of ${name} itself, mg N/L or mmol/L`
    : substance === 'phosphate'
      ? 'mg/L of phosphate itself, mg P/L or mmol/L'
      : 'mg/L or mmol/L';
  const hint = `Write it in ${units}, such as 12 mg/L.`;
  return z
    .string({
      error: (issue) =>
        said(typeof issue.input === 'number' ? 'has no unit' : 'must be a number with a unit', hint),
    })
    .meta({ description: `Dissolved ${name}. A number with its unit: ${units}.`, examples: ['12 mg/L'] })
    .transform((written, context) => {
      const refuse = (message: string) => {
        context.issues.push({ code: 'custom', message: said(message, hint), input: written });
        return z.NEVER;
      };
      const quantity = readQuantity(written);
      if ('wrong' in quantity) return refuse(quantity.wrong);
      const value = concentrationOf(substance, quantity.value, quantity.unit);
      if (value === undefined) return refuse(`${quantity.unit} does not measure ${name}`);
      if (value < 0) return refuse(`is outside 0 to ${MOST} mmol/L: no water holds less than no ${name}`);
      return value <= MOST ? value : refuse(`is outside 0 to ${MOST} mmol/L`);
    })
    .optional();
}

const NAMES: Readonly<Record<DissolvedId, string>> = {
  calcium: 'calcium',
  magnesium: 'magnesium',
  sodium: 'sodium',
  potassium: 'potassium',
  chloride: 'chloride',
  sulfate: 'sulfate',
  ammonium: 'ammonium',
  nitrite: 'nitrite',
  nitrate: 'nitrate',
  phosphate: 'phosphate',
  dissolvedOrganicCarbon: 'organic carbon',
};

const ions = Object.fromEntries(DISSOLVED_IDS.map((each) => [each, ion(each, NAMES[each])])) as Record<
  DissolvedId,
  ReturnType<typeof ion>
>;
const { dissolvedOrganicCarbon, ...mineral } = ions;

/** A water analysis: the ions one by one, or hardness and alkalinity alone. */
export const ownWaterSchema = keys(
  {
    id: id('Name by which the file refers to this water.'),
    name: text('What you call it; the id when left out.').optional(),
    source: text('Where the figures come from: report, place, date.', 600).optional(),
    origin: word(
      ['tap', 'rain', 'pure'],
      'Where it comes from: tap (also a well), rain, or pure (distilled, reverse osmosis); tap when left out.',
    ).optional(),
    ...mineral,
    'organic-carbon': dissolvedOrganicCarbon,
    alkalinity: measured('charge concentration', {
      meaning:
        'Alkalinity (carbonate hardness, KH). Follows from the ions; when given it is checked against them.',
      example: '6 °dKH',
      from: '-2 meq/L',
      to: '50 meq/L',
    }).optional(),
    bicarbonate: measured('mass concentration', {
      meaning: 'Bicarbonate, read as alkalinity.',
      example: '250 mg/L',
      from: '0 mg/L',
      to: '3000 mg/L',
    }).optional(),
    hardness: measured('amount concentration', {
      meaning: 'General hardness (GH), for waters of which calcium and magnesium are not known one by one.',
      example: '8 °dGH',
      from: '0 mmol/L',
      to: '50 mmol/L',
    }).optional(),
    copper: measured('mass concentration', {
      meaning:
        'Dissolved copper, as of copper pipes, plant fertiliser or a remedy against snails; none when left out. It harms crustaceans and snails, more so in soft water.',
      example: '15 µg/L',
      from: '0 µg/L',
      to: '5 mg/L',
    }).optional(),
    conductivity: measured('conductivity', {
      meaning: 'Conductivity at 25 °C, when measured.',
      example: '450 µS/cm',
      from: '0 µS/cm',
      to: '10000 µS/cm',
    }).optional(),
  },
  'A water of your own.',
);

const partSchema = keys(
  {
    water: id('Water of the library, or one of your own from `waters`.'),
    share: measure.share('Part of the whole by volume.', '50 %'),
  },
  'One part of a blend.',
);

/** A single water by name, or a blend. */
export const blendSchema = z
  .union(
    [
      id('Water of the library, or one of your own from `waters`.'),
      list(partSchema, 'A blend of waters.', 10),
    ],
    {
      error: (issue) =>
        issue.input === undefined
          ? said('is missing', 'Name a water, such as rain, or list the parts of a blend.')
          : said(
              'is neither the name of a water nor a blend',
              'Write a name such as rain, or a list of parts, each with the keys water and share.',
            ),
    },
  )
  .describe('A water by name, or a blend given as a list of parts.');

export const waterSchema = keys(
  {
    level: measure.length('Height of the water surface above the base, inside.', '17 cm', '1 cm', '3 m'),
    fill: blendSchema,
    'top-off': blendSchema,
  },
  'Water: level, what it is filled with, and what replaces evaporation.',
);

/** What already lives in the water on the first day. */
export const settledSchema = keys(
  {
    filter: word(
      ['new', 'matured'],
      'new: a trace of bacteria; matured: filter or sponge from a running tank.',
    ),
    handles: measured('mass', {
      meaning: 'Ammonia nitrogen the matured filter oxidises in a day.',
      example: '20 mg',
      from: '0.1 mg',
      to: '50 g',
    }).optional(),
    algae: measured('mass per area', {
      meaning: 'Dry mass of algae on the submerged surfaces.',
      example: '0.1 g/m²',
      from: '0 g/m²',
      to: '200 g/m²',
    }).optional(),
    detritus: measure.mass('Dry mass of detritus in the water.', '1 g', '0 g', '5 kg').optional(),
  },
  'What already lives and lies in the water on the first day.',
);

export type OwnWater = z.output<typeof ownWaterSchema>;
export type Blend = z.output<typeof blendSchema>;
