import type { AheadDocument, QuantileSeries, SeriesId, TurningPoint } from '@shoreglass/engine';

/** An invented outlook for previews and tests; its numbers were made up, not computed. */

const DAYS = 300;
const days = Array.from({ length: DAYS + 1 }, (_, day) => day);

interface Invented {
  readonly name: string;
  readonly unit: string;
  readonly course: (day: number) => number;
  /** Half width of the 5-95 % interval on the last day. */
  readonly spread: number;
  readonly floor?: number;
  readonly band?: QuantileSeries['band'];
}

function invent({ name, unit, course, spread, floor = 0, band }: Invented): QuantileSeries {
  const at = (share: number) =>
    days.map((day) => {
      const width = spread * (0.04 + 0.96 * Math.max(0, (day - 118) / (DAYS - 118)) ** 0.6);
      return Math.max(floor, course(day) + share * width * (share > 0 ? 1.25 : 1));
    });
  const series = {
    name,
    unit,
    days,
    expected: at(0.06),
    q05: at(-1),
    q25: at(-0.41),
    q50: at(0),
    q75: at(0.41),
    q95: at(1),
  };
  return band ? { ...series, band } : series;
}

const season = (day: number, peak = 240) => Math.cos((2 * Math.PI * (day - peak)) / 365.25);
const grow = (day: number, from: number, to: number, half: number) =>
  from + (to - from) / (1 + Math.exp(-(day - half) / 26));

const INVENTED: Record<string, Invented> = {
  pH: {
    name: 'pH',
    unit: '',
    course: (d) => 7.05 - 0.0011 * d + 0.04 * Math.sin(d / 11),
    spread: 0.28,
    band: { low: 6.6, high: 7.6, lowOwner: 'ramshorn snails', highOwner: 'moss' },
  },
  KH: {
    name: 'carbonate hardness',
    unit: '°dKH',
    course: (d) => 5.4 - 0.0098 * d + 0.08 * Math.sin(d / 17),
    spread: 0.9,
    band: { low: 3, high: 10, lowOwner: 'amphipods', highOwner: 'keeper' },
  },
  waterTemperature: {
    name: 'water temperature',
    unit: '°C',
    course: (d) => 18.6 + 1.9 * season(d),
    spread: 1.1,
    band: { high: 21, highOwner: 'amphipods' },
  },
  airTemperature: { name: 'air temperature', unit: '°C', course: (d) => 19.4 + 2.2 * season(d), spread: 1.3 },
  relativeHumidity: {
    name: 'relative humidity',
    unit: '%',
    course: (d) => 84 - 4 * season(d),
    spread: 6,
    band: { low: 75, lowOwner: 'woodlice' },
  },
  glassFog: {
    name: 'fog on the front glass',
    unit: 'h/d',
    course: (d) => 4.1 - 2.6 * season(d),
    spread: 1.8,
  },
  waterVolume: { name: 'water volume', unit: 'L', course: (d) => 25.2 - 0.9 * Math.sin(d / 6), spread: 0.8 },
  waterLevel: { name: 'water level', unit: 'cm', course: (d) => 13.6 - 0.5 * Math.sin(d / 6), spread: 0.4 },
  attachedAlgae: {
    name: 'attached algae',
    unit: 'g dry/m²',
    course: (d) => 1.9 + 1.4 * season(d, 160),
    spread: 1,
  },
  plantCover: {
    name: 'cover of submerged plants',
    unit: '%',
    course: (d) => grow(d, 31, 78, 150),
    spread: 12,
  },
  detritus: { name: 'detritus', unit: 'g dry', course: (d) => 2.2 + 0.006 * d, spread: 1.1 },
  litter: {
    name: 'leaf litter in the water',
    unit: 'g dry',
    course: (d) => 21 * Math.exp(-d / 190),
    spread: 3,
  },
  carbonateSolid: { name: 'solid carbonate left', unit: 'g', course: (d) => 29 - 0.05 * d, spread: 3 },
  'population:amphipods': {
    name: 'amphipods',
    unit: 'animals',
    course: (d) => grow(d, 16, 290, 165),
    spread: 110,
    band: { high: 300, highOwner: 'keeper' },
  },
  'population:amphipods:juvenile': {
    name: 'amphipods, young',
    unit: 'animals',
    course: (d) => grow(d, 2, 150, 160),
    spread: 60,
  },
  'population:ramshorns': {
    name: 'ramshorn snails',
    unit: 'animals',
    course: (d) => grow(d, 6, 54, 150),
    spread: 22,
  },
  'population:woodlice': {
    name: 'woodlice',
    unit: 'animals',
    course: (d) => grow(d, 10, 34, 130),
    spread: 15,
  },
  'population:springtails': {
    name: 'springtails',
    unit: 'animals',
    course: (d) => grow(d, 80, 1350, 110),
    spread: 700,
  },
};

function turning(
  subject: SeriesId,
  kind: TurningPoint['kind'],
  window: TurningPoint['window'],
  sentence: string,
): TurningPoint {
  return {
    id: `${subject} ${kind}`,
    subject,
    kind,
    probability: 0.7,
    window,
    band: { low: 3, unit: '', owner: 'amphipods', source: 'invented' },
    because: [
      { term: 'organic acids from alder wood', share: 0.58 },
      { term: 'nitrification', share: 0.27 },
      { term: 'growth of shells', share: 0.1 },
    ],
    sentence,
  };
}

export const ALDER_YEAR: AheadDocument = {
  enclosure: { id: 'alder-corner', name: 'Alder corner', startDate: '2025-11-24' },
  run: { days: DAYS, members: 200, seed: 7, engineVersion: '0.1.0' },
  series: Object.fromEntries(Object.entries(INVENTED).map(([id, invented]) => [id, invent(invented)])),
  turningPoints: [
    turning(
      'KH',
      'falls below',
      { early: 162, median: 179, late: 201 },
      'Carbonate hardness falls below 3 °dKH.',
    ),
    turning(
      'population:amphipods',
      'rises above',
      { early: 205, median: 231, late: 262 },
      'More than 300 amphipods.',
    ),
    turning(
      'population:woodlice',
      'first young',
      { early: 46, median: 58, late: 77 },
      'First young woodlice.',
    ),
    turning(
      'waterTemperature',
      'rises above',
      { early: 214, median: 238, late: 251 },
      'The water rises above 21 °C.',
    ),
  ],
  handsOffHorizon: {
    q10: 44,
    q50: 61,
    q90: 83,
    unbroken: 0.04,
    limitedBy: [{ subject: 'KH', kind: 'falls below', owner: 'amphipods', share: 0.72 }],
  },
  closure: {
    nitrogen: 1e-13,
    phosphorus: 1e-13,
    carbon: 1e-13,
    oxygen: 1e-13,
    calcium: 1e-13,
    alkalinity: 1e-13,
    water: 1e-13,
  },
  budgets: [],
  notModelled: [],
};
