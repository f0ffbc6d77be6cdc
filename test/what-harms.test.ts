import { animalTraitsOf } from '@shoreglass/contract';
import type { Plan, SeriesId, TraitValues } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { describe, expect, test } from 'vitest';
import { airHazard } from '../packages/engine/src/life/air-stress.ts';
import { deathsIn, type Kept, keep, planOfFile } from './kept-files.ts';

interface Given {
  readonly animals: string;
  readonly filter?: string;
  readonly fill?: string;
  readonly waters?: string;
  readonly routines?: string;
  /** Ground of the pool at its right end and of the bank at its left one. */
  readonly shore?: readonly [string, string];
  /** How much of the cover is open, and care that keeps the water up. */
  readonly open?: string;
  readonly topOff?: string;
}

const MATURED = '{ filter: matured, handles: 60 mg }';

/** A bare box of 60 × 40 cm, 36 cm of it pool, without plants. */
function planOf({
  animals,
  filter = MATURED,
  fill = 'hard-tap',
  waters = '',
  routines = '',
  shore = ['6 cm', '16 cm'],
  open = '2 %',
  topOff = '  - { do: top-off, every: 2 d }',
}: Given): Plan {
  const text = `shoreglass: 1
name: Bare box
start: 2026-03-01
glass: { length: 60 cm, width: 40 cm, height: 45 cm, thickness: 6 mm }
cover: { open: ${open}, transmission: 90 %, mesh: { open: 40 %, hole: 0.5 mm } }
zones:
  - { id: pool, name: Pool, kind: pool, from: 0 cm, to: 36 cm, ground: { left: 4 cm, right: ${shore[0]} }, layers: [{ kind: substrate, material: fine-gravel }] }
  - { id: bank, name: Bank, kind: bank, from: 36 cm, to: 60 cm, ground: { left: ${shore[1]}, right: 24 cm }, layers: [{ kind: substrate, material: fine-gravel }] }
${waters}
water: { level: 13 cm, fill: ${fill}, top-off: distilled }
settled: ${filter}
room: { temperature: { mean: 23 °C }, humidity: { mean: 55 % } }
devices:
  lamps: [{ name: LED, power: 8 W, lumens: 700 lm, on: 10:00, lit: 8 h }]
  pump: { name: Sponge filter, power: 3 W, flow: 200 L/h, films: 0.2 m² }
animals:
${animals}
routines:
${topOff}
${routines}`;
  return planOfFile(text);
}

interface Lived extends Kept {
  readonly deaths: ReturnType<typeof deathsIn>;
}

function live(given: Given, days: number): Lived {
  const kept = keep(planOf(given), days);
  return { ...kept, deaths: deathsIn(kept) };
}

const GUPPIES = (after: string, adults = 12): string =>
  `  - { species: poecilia-wingei, zone: pool, adults: ${adults}, after: ${after} }`;
const FED = (amount: string, after: string): string =>
  `  - { do: feed, feed: flake, amount: ${amount}, every: 1 d, after: ${after} }`;

// Common practice, no source: fish put into bare glass on the first day die while the filter runs in; those that come few
// and late, after it was fed in, do not.
describe('a filter that is not run in', () => {
  const bare = live(
    { animals: GUPPIES('0 d'), filter: '{ filter: new }', routines: FED('0.35 g', '0 d') },
    60,
  );
  const slow = live(
    { animals: GUPPIES('60 d', 4), filter: '{ filter: new }', routines: FED('0.06 g', '2 d') },
    120,
  );
  test('kills most fish of the first day by ammonia and nitrite, named as such', () => {
    expect(bare.deaths.nitrite + bare.deaths.ammonia).toBeGreaterThan(6);
    expect(bare.deaths.nitrite).toBeGreaterThan(1);
  });
  test('kills nobody where few come after it was fed in for two months', () => {
    expect(slow.deaths.nitrite + slow.deaths.ammonia).toBeLessThan(0.05);
    expect(slow.course('population:poecilia-wingei')?.at(-1)).toBeGreaterThan(3);
  });
});

describe('copper from pipes', () => {
  const SOFT = (copper: string): string =>
    `waters: [{ id: house, calcium: 20 mg/L, magnesium: 3 mg/L, sodium: 10 mg/L, potassium: 2 mg/L, chloride: 12 mg/L, sulfate: 20 mg/L, alkalinity: 3 °dKH${copper} }]`;
  const shrimps = '  - { species: hyalella-azteca, zone: pool, adults: 40 }';
  const piped = live({ animals: shrimps, waters: SOFT(', copper: 60 µg/L'), fill: 'house' }, 20);
  const clean = live({ animals: shrimps, waters: SOFT(''), fill: 'house' }, 20);
  test('stays in the water, is concentrated by evaporation alone, and closes', () => {
    const course = piped.course('copper');
    expect(course?.[0]).toBeCloseTo(60, 0);
    expect(Math.abs(piped.record.closure.copper)).toBeLessThan(1e-10);
  });
  test('kills amphipods in soft water within days, and is not recorded where no water names it', () => {
    expect(piped.deaths.copper).toBeGreaterThan(25);
    expect(clean.deaths.copper).toBe(0);
    expect(clean.course('copper')).toBeUndefined();
  });
});

describe('salt', () => {
  // Common practice, no source: mangrove crabs last in fresh water for weeks and fade.
  test('too little of it fades mangrove crabs over weeks', () => {
    const crabs = '  - { species: parasesarma-bidens, zone: bank, adults: 4 }';
    const week = live({ animals: crabs, routines: FED('0.05 g', '0 d') }, 7);
    const months = live({ animals: crabs, routines: FED('0.05 g', '0 d') }, 90);
    expect(week.deaths['wrong salt']).toBeLessThan(1);
    expect(months.deaths['wrong salt']).toBeGreaterThan(2);
  });
});

describe('drowning', () => {
  const woodlice = '  - { species: porcellio-scaber, zone: bank, adults: 100 }';
  test('takes woodlice at a wall and nobody where the bank slopes gently', () => {
    const steep = live({ animals: woodlice, shore: ['4 cm', '20 cm'] }, 30);
    const gentle = live({ animals: woodlice, shore: ['12 cm', '13 cm'] }, 30);
    expect(steep.deaths.drowned).toBeGreaterThan(3);
    expect(gentle.deaths.drowned).toBe(0);
  });
});

describe('a pool that nobody tops up', () => {
  const dried = live(
    {
      animals: '  - { species: physella-acuta, zone: pool, adults: 6 }',
      waters:
        'waters: [{ id: house, calcium: 20 mg/L, magnesium: 3 mg/L, sodium: 10 mg/L, potassium: 2 mg/L, chloride: 12 mg/L, sulfate: 20 mg/L, alkalinity: 3 °dKH }]',
      fill: 'house',
      open: '60 %',
      topOff: '  - { do: feed, feed: flake, amount: 0.02 g, every: 3 d }',
    },
    150,
  );
  test('dries out; who lives in it is dead by the end, some of lying dry, and every element closes', () => {
    expect(dried.course('waterLevel')?.at(-1)).toBeLessThan(4);
    expect(dried.course('population:physella-acuta')?.at(-1)).toBeLessThan(0.5);
    expect(dried.deaths['left dry']).toBeGreaterThan(0);
    for (const [element, error] of Object.entries(dried.record.closure))
      expect(Math.abs(error), element).toBeLessThan(1e-9);
  });
  test('tells of a litre of water what the last of it held', () => {
    const last = (id: SeriesId): number => dried.course(id)!.at(-1)!;
    expect(last('waterVolume')).toBeLessThan(1e-3);
    expect(last('oxygen')).toBeLessThan(20);
    expect(last('pH')).toBeGreaterThan(5);
    expect(last('pH')).toBeLessThan(10);
    for (const id of ['oxygen', 'pH', 'KH', 'nitrate', 'suspendedAlgae'] as const) {
      const course = dried.course(id)!;
      expect([id, course.at(-1)]).toEqual([id, course.at(-2)]);
      expect(course.every((each) => Number.isFinite(each))).toBe(true);
    }
  });
});

describe('dry air', () => {
  const traitsOf = (id: string): TraitValues => {
    const { priors } = animalTraitsOf(library.organism(id)).traits;
    return Object.fromEntries(
      Object.entries(priors).map(([trait, { median }]) => [trait, median]),
    ) as unknown as TraitValues;
  };
  /** Hours until half are dead of it. */
  const halfLife = (id: string, humidity: number, groundWetness: number): number =>
    (24 * Math.LN2) / airHazard(traitsOf(id), { temperature: 20, humidity, groundWetness });

  // Edney 1951 (recalled): a woodlouse of 60 mg loses 1.5 % of its mass an hour at 75 % and 20 degC and dies of a third.
  test('kills woodlice within about a day at 75 % with nothing moist to creep into', () => {
    expect(halfLife('porcellio-scaber', 75, 0)).toBeGreaterThan(12);
    expect(halfLife('porcellio-scaber', 75, 0)).toBeLessThan(48);
  });
  // Bayley and Holmstrup 1999: springtails survive less than 90 % for hours, and stay active at 98.9 %.
  test('kills springtails within hours below 90 %, none at the wilting point', () => {
    expect(halfLife('folsomia-candida', 88, 0)).toBeLessThan(12);
    expect(halfLife('folsomia-candida', 98.9, 0)).toBe(Number.POSITIVE_INFINITY);
  });
  test('spares animals of the ground as long as it is moist', () => {
    for (const id of ['folsomia-candida', 'porcellio-scaber', 'enchytraeus-albidus', 'trichorhina-tomentosa'])
      expect([id, halfLife(id, 60, 0.5)]).toEqual([id, Number.POSITIVE_INFINITY]);
  });
  // Common practice, no source: land crabs last in the dry air of a room for a day or two.
  test('leaves land crabs a day or two in the air of a room', () => {
    expect(halfLife('geosesarma-dennerle', 40, 0)).toBeGreaterThan(20);
    expect(halfLife('geosesarma-dennerle', 40, 0)).toBeLessThan(72);
  });
});
