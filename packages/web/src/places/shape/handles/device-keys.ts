import { label, lengthKey, type NumberKey, type PartKey, type SayingKey } from './part-keys.ts';

const power = {
  at: 'power',
  name: 'Electrical input',
  dimension: 'power',
  limits: [0, 3000],
} as const satisfies NumberKey;
const on = { at: 'on', name: 'Turns on at', said: 'time', fresh: '08:00' } as const satisfies SayingKey;
const runs = (fresh?: string) =>
  ({
    at: 'runs',
    name: 'Hours it runs each day',
    dimension: 'hours',
    limits: [0, 24],
    ...(fresh === undefined ? {} : { fresh }),
  }) as const satisfies NumberKey;
const warmth = (at: string, name: string) =>
  ({ at, name, dimension: 'temperature', limits: [5, 40] }) as const satisfies NumberKey;

/** Litres an hour in the plan's unit [m3/s]. */
const LITRES_PER_HOUR = 1e-3 / 3600;
const CUBIC_METRES_PER_HOUR = 1 / 3600;

export const LAMP_KEYS: readonly PartKey[] = [
  power,
  { at: 'photons', name: 'Photons', dimension: 'photon flux', limits: [0, 5000], fresh: '60 µmol/s' },
  { at: 'lumens', name: 'Light', dimension: 'luminous flux', limits: [0, 300_000], fresh: '2800 lm' },
  {
    at: 'colour',
    name: 'Colour temperature',
    dimension: 'colour temperature',
    limits: [1500, 20_000],
    fresh: '4000 K',
  },
  { at: 'lit', name: 'Hours lit each day', dimension: 'hours', limits: [0, 24] },
  { at: 'dim', name: 'Dimmed to', dimension: 'share', limits: [0, 1], fresh: '80 %' },
  { at: 'on', name: 'Turns on at', said: 'time' },
  { at: 'protection', name: 'Protection against water', said: 'text', fresh: 'IP65' },
  label,
];

export const HEATER_KEYS: readonly PartKey[] = [power, warmth('setpoint', 'Keeps the water at')];

/** Of a pump whose outlet, when it gets one, lies at a height as it is written: "20 cm". */
export const pumpKeys = (outlet: string): readonly PartKey[] => [
  power,
  {
    at: 'flow',
    name: 'Flow, at its real height',
    dimension: 'water flow',
    limits: [0, 20_000 * LITRES_PER_HOUR],
    fresh: '200 L/h',
  },
  { at: 'curve', name: 'Curve of its label', group: true, fresh: { head: '80 cm', flow: '400 L/h' } },
  lengthKey('curve.head', 'Highest lift on its label', [0.01, 20]),
  {
    at: 'curve.flow',
    name: 'Flow on its label, without height',
    dimension: 'water flow',
    limits: [LITRES_PER_HOUR, 20_000 * LITRES_PER_HOUR],
  },
  { at: 'curve.exponent', name: 'Shape of the curve', dimension: 'share', limits: [0.5, 4], fresh: '200 %' },
  { ...lengthKey('outlet', 'Outlet, above the base', [0, 5]), fresh: outlet },
  { at: 'hose', name: 'Hose', group: true, fresh: { length: '80 cm', bore: '12 mm' } },
  lengthKey('hose.length', 'Hose, length', [0, 50]),
  lengthKey('hose.bore', 'Hose, inner diameter', [0.001, 0.1]),
  { at: 'hose.elbows', name: 'Elbows in the hose', dimension: 'count', limits: [0, 50], fresh: 2 },
  { at: 'hose.valves', name: 'Valves in the hose', dimension: 'count', limits: [0, 20], fresh: 1 },
  {
    at: 'filter',
    name: 'Filter',
    group: true,
    fresh: { kind: 'foam', area: '80 cm²', thickness: '5 cm' },
  },
  { at: 'filter.kind', name: 'Filter of', words: { foam: 'foam', gravel: 'gravel' } },
  { at: 'filter.area', name: 'Filter, cross-section', dimension: 'small area', limits: [1e-4, 10] },
  lengthKey('filter.thickness', 'Filter, way through it', [0.001, 2]),
  { at: 'filter.pores', name: 'Foam, pores per inch', dimension: 'count', limits: [1, 100], fresh: 20 },
  { ...lengthKey('filter.grain', 'Gravel, grain', [0.0001, 0.05]), fresh: '4 mm' },
  { ...lengthKey('fall', 'Free fall of the return', [0, 2]), fresh: '5 cm' },
  { ...lengthKey('lip', 'Lip it returns over', [0.001, 5]), fresh: '10 cm' },
  {
    at: 'films',
    name: 'Surface for films in the filter',
    dimension: 'large area',
    limits: [0, 1000],
    fresh: '0.3 m²',
  },
  label,
];

export const MISTER_KEYS: readonly PartKey[] = [
  { at: 'amount', name: 'Water sprayed a day', dimension: 'volume', limits: [0, 0.02] },
  { at: 'at', name: 'Sprays at', said: 'times' },
  label,
];

export const FOGGER_KEYS: readonly PartKey[] = [
  power,
  { at: 'rate', name: 'Water it turns to fog', dimension: 'water flow', limits: [0, 20 * LITRES_PER_HOUR] },
  { at: 'runs', name: 'Hours it runs each time', dimension: 'hours', limits: [0, 24] },
  { at: 'from', name: 'Takes its water from', words: { pool: 'the pool', reservoir: 'a reservoir' } },
  { at: 'at', name: 'Starts at', said: 'times' },
  label,
];

export const FAN_KEYS: readonly PartKey[] = [
  power,
  { at: 'flow', name: 'Air it moves', dimension: 'air flow', limits: [0, 500 * CUBIC_METRES_PER_HOUR] },
  runs('12 h'),
  { at: 'above', name: 'Runs only when more humid than', dimension: 'share', limits: [0, 1], fresh: '90 %' },
  {
    at: 'moves',
    name: 'What it does',
    words: { inside: 'stirs the air along the front glass', room: 'draws room air through the box' },
  },
  on,
  label,
];

export const MAT_KEYS: readonly PartKey[] = [
  power,
  { ...warmth('setpoint', 'Its thermostat turns off at'), fresh: '24 °C' },
  runs('12 h'),
  { at: 'under', name: 'Warms', words: { water: 'the water', land: 'the land', all: 'all of the base' } },
  on,
  label,
];
