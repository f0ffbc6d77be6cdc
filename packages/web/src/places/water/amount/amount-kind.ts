import { convert, MOLAR_MASS } from '@shoreglass/engine';

/** What a field asks for, and every way in which keepers write it. */
export interface AmountKind {
  readonly name: string;
  /** Unit in which the value is handed on. */
  readonly unit: string;
  /** Unit meant when none is written, until the keeper writes another. */
  readonly usual: string;
  readonly digits: number;
  /** Units of the engine's table in which it may be written, and how one of them reads in `unit`. */
  readonly from: Readonly<Record<string, (value: number) => number>>;
  /** Words that mean one of these units here and nowhere else: "ppm" of hardness is ppm CaCO3. */
  readonly words: Readonly<Record<string, string>>;
  /** Words that cannot be read, with the reason. */
  readonly unreadable?: Readonly<Record<string, string>>;
  readonly least: number;
  readonly most: number;
  /** Units in which what was read is repeated, so that a slip shows. */
  readonly repeated: readonly string[];
}

type Table = Record<string, (value: number) => number>;

/** Units that the engine converts into `unit`. */
function through(unit: string, units: readonly string[]): Table {
  return Object.fromEntries(units.map((each) => [each, (value: number) => convert(value, each, unit)]));
}

/** Mass concentration of one ion into another unit by its molar mass [g/mol]. */
function ofMass(unit: string, molarMass: number, scale: number): Table {
  return { [unit]: (value) => (value * scale) / molarMass };
}

const DEGREES = ['°fH', '°Clark', 'gpg', 'ppm CaCO3', 'mg/L CaCO3'];
const IN_CARBONATE = { ppm: 'ppm CaCO3', 'mg/l': 'mg/L CaCO3', '°d': '°dH', d: '°dH', '°': '°dH', f: '°fH' };
const IN_AMOUNT = { mmol: 'mmol/L', meq: 'meq/L' };
const IN_MASS = { ppm: 'mg/L', mg: 'mg/L', ...IN_AMOUNT };

const GENERAL_HARDNESS: AmountKind = {
  name: 'general hardness',
  unit: 'mmol/L',
  usual: '°dGH',
  digits: 1,
  from: {
    ...through('mmol/L', ['°dGH', '°dH', ...DEGREES, 'mmol/L', 'µmol/L']),
    // Two charges an ion: calcium and magnesium.
    'meq/L': (value) => value / 2,
  },
  words: { ...IN_CARBONATE, ...IN_AMOUNT, gh: '°dGH' },
  least: 0,
  most: 20,
  repeated: ['°dGH', 'ppm CaCO3', 'mmol/L'],
};

const CARBONATE_HARDNESS: AmountKind = {
  name: 'carbonate hardness',
  unit: 'meq/L',
  usual: '°dKH',
  digits: 1,
  // Acid capacity to pH 4.3 is printed in mmol/L of acid: the same number as meq/L.
  from: {
    ...through('meq/L', ['°dKH', '°dH', ...DEGREES, 'meq/L']),
    'mmol/L': (value) => value,
  },
  words: { ...IN_CARBONATE, ...IN_AMOUNT, kh: '°dKH' },
  least: 0,
  most: 40,
  repeated: ['°dKH', 'ppm CaCO3', 'meq/L'],
};

function ion(name: string, molarMass: number, charge: number, most: number): AmountKind {
  return {
    name,
    unit: 'mg/L',
    usual: 'mg/L',
    digits: 1,
    from: {
      ...through('mg/L', ['mg/L', 'µg/L', 'g/L']),
      'mmol/L': (value) => value * molarMass,
      'meq/L': (value) => (value * molarMass) / charge,
    },
    words: IN_MASS,
    least: 0,
    most,
    repeated: ['mg/L', 'mmol/L'],
  };
}

const IN_NITROGEN = { 'mg/l n': 'mg N/L', 'mg/ln': 'mg N/L', 'mg n/l': 'mg N/L', 'ppm n': 'mg N/L' };

/** A nitrogen species: strips are printed in mg/L of the ion, models count nitrogen. */
function nitrogen(name: string, ionMass: number, most: number): AmountKind {
  return {
    name,
    unit: 'mg N/L',
    usual: 'mg/L',
    digits: 2,
    from: {
      'mg N/L': (value) => value,
      ...ofMass('mg/L', ionMass, MOLAR_MASS.nitrogen),
      ...ofMass('µg/L', ionMass, MOLAR_MASS.nitrogen / 1000),
      'mmol/L': (value) => value * MOLAR_MASS.nitrogen,
    },
    words: { ...IN_MASS, ...IN_NITROGEN },
    least: 0,
    most,
    repeated: ['mg/L', 'mg N/L'],
  };
}

const CONDUCTIVITY: AmountKind = {
  name: 'conductivity',
  unit: 'µS/cm',
  usual: 'µS/cm',
  digits: 0,
  from: through('µS/cm', ['µS/cm', 'mS/cm', 'mS/m']),
  words: { us: 'µS/cm', µs: 'µS/cm', ms: 'mS/cm', ec: 'µS/cm' },
  unreadable: {
    ppm: 'A meter works ppm out from µS/cm with a factor of its own, mostly 0.5 or 0.7. Switch it to µS/cm, or divide by its factor.',
  },
  least: 0,
  most: 20_000,
  repeated: ['µS/cm', 'mS/cm'],
};

const plain = (name: string, unit: string, more: Partial<AmountKind>): AmountKind => ({
  name,
  unit,
  usual: unit,
  digits: 1,
  from: through(unit, [unit]),
  words: {},
  least: 0,
  most: Number.POSITIVE_INFINITY,
  repeated: [],
  ...more,
});

export const AMOUNTS = {
  GH: GENERAL_HARDNESS,
  KH: CARBONATE_HARDNESS,
  calcium: ion('calcium', MOLAR_MASS.calcium, 2, 800),
  magnesium: ion('magnesium', MOLAR_MASS.magnesium, 2, 500),
  sodium: ion('sodium', MOLAR_MASS.sodium, 1, 2000),
  conductivity: CONDUCTIVITY,
  volume: plain('water', 'L', {
    from: through('L', ['L', 'mL', 'gal', 'imp gal', 'm³', 'cm³']),
    least: 0.1,
    most: 5000,
    repeated: ['L', 'gal'],
  }),
  pH: plain('pH', 'pH', { digits: 2, least: 2, most: 12 }),
  temperature: plain('water temperature', '°C', {
    from: through('°C', ['°C', '°F']),
    least: 0,
    most: 45,
    repeated: ['°C', '°F'],
  }),
  oxygen: plain('dissolved oxygen', 'mg/L', {
    from: through('mg/L', ['mg/L']),
    words: IN_MASS,
    most: 25,
    unreadable: { '%': 'Per cent of saturation depends on warmth and height; write mg/L.' },
  }),
  totalAmmonia: nitrogen('total ammonia', MOLAR_MASS.ammonium, 20),
  nitrite: nitrogen('nitrite', MOLAR_MASS.nitrite, 20),
  nitrate: nitrogen('nitrate', MOLAR_MASS.nitrate, 200),
  phosphate: {
    ...plain('phosphate', 'mg P/L', { digits: 2, most: 20, repeated: ['mg/L', 'mg P/L'] }),
    usual: 'mg/L',
    from: {
      'mg P/L': (value: number) => value,
      ...ofMass('mg/L', MOLAR_MASS.phosphate, MOLAR_MASS.phosphorus),
    },
    words: IN_MASS,
  },
  days: plain('days', 'd', { digits: 0, from: through('d', ['d', 'week']), least: 1, most: 1000 }),
} satisfies Record<string, AmountKind>;

export type AmountId = keyof typeof AMOUNTS;

/** How a value in the kind's own unit reads in another of its units; these are all straight lines. */
export function inUnit(kind: AmountKind, value: number, unit: string): number {
  const read = kind.from[unit];
  if (!read || unit === kind.unit) return value;
  const offset = read(0);
  return (value - offset) / (read(1) - offset);
}
