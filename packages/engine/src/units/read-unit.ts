import { type Dimension, type Meaning, UNITS, type Unit } from './units.ts';

/** Other spellings people use, in lower case without blanks, and the unit they stand for. */
const SPELLINGS: Readonly<Record<string, Unit>> = {
  m2: 'm²',
  cm2: 'cm²',
  in2: 'in²',
  m3: 'm³',
  cm3: 'cm³',
  'm3/s': 'm³/s',
  'm3/h': 'm³/h',
  l: 'L',
  litre: 'L',
  litres: 'L',
  liter: 'L',
  liters: 'L',
  ml: 'mL',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  um: 'µm',
  usgal: 'gal',
  gallon: 'gal',
  gallons: 'gal',
  impgal: 'imp gal',
  day: 'd',
  days: 'd',
  hour: 'h',
  hours: 'h',
  hr: 'h',
  weeks: 'week',
  minute: 'min',
  minutes: 'min',
  c: '°C',
  degc: '°C',
  f: '°F',
  degf: '°F',
  percent: '%',
  'l/h': 'L/h',
  'l/min': 'L/min',
  'l/d': 'L/d',
  'l/day': 'L/d',
  'g/day': 'g/d',
  gph: 'gal/h',
  'umol/s': 'µmol/s',
  'umol/m2/s': 'µmol/m²/s',
  'umol/j': 'µmol/J',
  'umol/mol': 'µmol/mol',
  'umol/l': 'µmol/L',
  'mmol/l': 'mmol/L',
  'mol/m3': 'mol/m³',
  'mol/m2': 'mol/m²',
  'meq/l': 'meq/L',
  'mg/l': 'mg/L',
  'ug/l': 'µg/L',
  'g/l': 'g/L',
  'mgn/l': 'mg N/L',
  'mgp/l': 'mg P/L',
  dgh: '°dGH',
  dkh: '°dKH',
  dh: '°dH',
  eh: '°Clark',
  e: '°Clark',
  grainspergallon: 'gpg',
  ppmcaco3: 'ppm CaCO3',
  'mg/lcaco3': 'mg/L CaCO3',
  'us/cm': 'µS/cm',
  'kg/m3': 'kg/m³',
  'g/cm3': 'g/cm³',
  'kg/m2': 'kg/m²',
  'g/m2': 'g/m²',
  'm2/m3': 'm²/m³',
};

const plain = (text: string): string =>
  text
    .replaceAll(/[μµ]/g, 'u')
    .replaceAll('²', '2')
    .replaceAll('³', '3')
    .replaceAll('₃', '3')
    .replaceAll(/[°º\s]/g, '')
    .toLowerCase();

/** Units whose spelling differs only by case from another are matched exactly first; the rest by their plain form. */
const BY_PLAIN_FORM: ReadonlyMap<string, Unit> = new Map([
  ...(Object.keys(UNITS) as Unit[]).map((unit): [string, Unit] => [plain(unit), unit]),
  ...Object.entries(SPELLINGS).map(([spelling, unit]): [string, Unit] => [plain(spelling), unit]),
]);

/** The unit a text stands for, or undefined: 'us/cm', 'uS/cm' and 'µS/cm' are the same. */
export function readUnit(text: string): Unit | undefined {
  const trimmed = text.trim();
  if (Object.hasOwn(UNITS, trimmed)) return trimmed as Unit;
  return BY_PLAIN_FORM.get(plain(trimmed));
}

/** What a unit may mean: most have one meaning, 'ppm' has several. */
export function meaningsOf(unit: Unit): readonly Meaning[] {
  return UNITS[unit];
}

/** The units in which a dimension may be written, in the table's order. */
export function unitsOf(dimension: Dimension): Unit[] {
  return (Object.keys(UNITS) as Unit[]).filter((unit) =>
    meaningsOf(unit).some((meaning) => meaning.dimension === dimension),
  );
}
