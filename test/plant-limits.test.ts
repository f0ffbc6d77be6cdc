import { expectedRun, prepareOutlook, runMembers, summarise } from '@shoreglass/engine';
import { describe, expect, test } from 'vitest';
import { bookReader } from '../packages/engine/src/outlook/book-reader.ts';
import {
  type PlantLimit,
  plantLimitReader,
  splitByLimits,
} from '../packages/engine/src/outlook/plant-limits.ts';
import { VARIABLE_INDEX as V } from '../packages/engine/src/variables/variables.ts';
import { keep, planOfFile } from './kept-files.ts';

const box = (lamp: string, plant = '{ plant: taxiphyllum-barbieri, zone: pool, cover: 15 % }'): string =>
  [
    'shoreglass: 1',
    'name: Moss in a nano',
    'start: 2026-04-01',
    'glass: { length: 40 cm, width: 25 cm, height: 30 cm, thickness: 5 mm }',
    'cover: { open: 5 % }',
    'zones:',
    '  - id: pool',
    '    kind: pool',
    '    from: 0 cm',
    '    to: 40 cm',
    '    ground: { left: 3 cm, right: 3 cm }',
    '    layers: [{ kind: substrate, material: fine-gravel }]',
    'water: { level: 26 cm, fill: hard-tap, top-off: distilled }',
    'room:',
    '  temperature: { mean: 23 °C, season: 0 K, day: 1 K, peak: 07-25 }',
    '  humidity: { mean: 50 %, season: 0 %, day: 0 %, peak: 08-10 }',
    'devices:',
    `  lamps: [{ name: lamp, ${lamp}, on: '10:00', protection: IP44 }]`,
    `plants: [${plant}]`,
  ].join('\n');
const DIM = 'power: 6 W, lumens: 250 lm, lit: 6 h';
const BRIGHT = 'power: 30 W, lumens: 3000 lm, lit: 12 h';

/** Gains in the first ten days of a box, with nitrogen and phosphorus of the water set [mol/m3]. */
function gainsIn(text: string, water: { readonly nitrate: number; readonly phosphate: number }) {
  const { prepared, record } = keep(planOfFile(text), 10);
  const { shape } = bookReader(prepared);
  const row = record.bookRows.slice(0, shape.rowLength);
  const volume = row[shape.volumeOffset]!;
  for (const id of ['ammonium', 'keptBySubmergedPlants', 'keptByFloatingPlants'] as const)
    row[shape.stateOffset + V[id]] = 0;
  // As sodium salts, so that the water turns no more acid by them.
  for (const id of ['nitrate', 'phosphate'] as const) {
    const added = water[id] * volume - row[shape.stateOffset + V[id]]!;
    row[shape.stateOffset + V[id]]! += added;
    row[shape.stateOffset + V.sodium]! += added;
  }
  const group = text.includes('lemna') ? 'floating' : 'submerged';
  return plantLimitReader(prepared, group).gains(row, shape, 23);
}

const worst = (gains: ReadonlyMap<PlantLimit, number>): PlantLimit | undefined =>
  [...gains].sort(([, a], [, b]) => b - a)[0]?.[0];
const RICH = { nitrate: 1, phosphate: 0.05 };

describe('what keeps plants of the water from growing', () => {
  // 250 lm for 6 h over 0.1 m2 are 0.5 mol/m2 a day, a twentieth of the yardstick of bright light.
  test('is light under a dim lamp, whatever the water holds', () => {
    expect(worst(gainsIn(box(DIM), RICH))).toBe('too little light');
  });
  test('is carbon dioxide for moss in bright light and hard water, as no moss uses bicarbonate', () => {
    const gains = gainsIn(box(BRIGHT), RICH);
    expect(worst(gains)).toBe('too little carbon dioxide');
    expect([...gains.keys()].join()).not.toMatch(/nitrogen|phosphate/);
  });
  test('is the one nutrient that is lacking, by its name, or both', () => {
    expect(worst(gainsIn(box(BRIGHT), { ...RICH, phosphate: 1e-6 }))).toBe('too little phosphate');
    expect(worst(gainsIn(box(BRIGHT), { ...RICH, nitrate: 1e-5 }))).toBe('too little nitrogen');
    expect(worst(gainsIn(box(BRIGHT), { nitrate: 1e-5, phosphate: 1e-7 }))).toMatch(
      /^too little (nitrogen|phosphate)/,
    );
  });
  test('is never carbon dioxide for what floats, and crowding where the mat is closed', () => {
    const mat = (cover: number) => box(BRIGHT, `{ plant: lemna-minor, zone: pool, cover: ${cover} % }`);
    expect(gainsIn(mat(10), RICH).has('too little carbon dioxide')).toBe(false);
    expect(gainsIn(mat(95), RICH).get('crowding')).toBeGreaterThan(
      gainsIn(mat(10), RICH).get('crowding') ?? 0,
    );
  });
});

describe('the turning point of moss that dwindles', () => {
  test('says what it lacked, not that it grew too little', () => {
    const prepared = prepareOutlook(planOfFile(box(DIM)), { days: 200, members: 4, seed: 1 });
    const { turningPoints } = summarise(prepared, expectedRun(prepared), [runMembers(prepared, 0, 4)]);
    const failing = turningPoints.find(({ id }) => id === 'plantCover-low');
    expect(failing?.because[0]?.term).toBe('too little light');
    expect(failing?.sentence).toMatch(/Pushed by too little light \d+ %/);
    expect(failing?.sentence).not.toContain('growing too little');
    expect(failing!.because.reduce((sum, { share }) => sum + share, 0)).toBeLessThanOrEqual(1 + 1e-9);
  });
});

describe('a loss split by what was lacking', () => {
  test('keeps its sum, in proportion to the gains', () => {
    const totals = new Map([
      ['submerged plants', -6],
      ['eaten by animals', -2],
    ]);
    splitByLimits(
      totals,
      'submerged plants',
      new Map([
        ['too little light', 2],
        ['crowding', 1],
      ]),
    );
    expect(Object.fromEntries(totals)).toEqual({
      'eaten by animals': -2,
      'too little light': -4,
      crowding: -2,
    });
  });
  test('stays whole where nothing was lacking', () => {
    const totals = new Map([['submerged plants', -6]]);
    splitByLimits(totals, 'submerged plants', new Map());
    expect(totals.get('submerged plants')).toBe(-6);
  });
});
