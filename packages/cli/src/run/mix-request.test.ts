import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { stripVTControlCharacters } from 'node:util';
import { compareRecipes, convert } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { afterAll, describe, expect, it } from 'vitest';
import { comparisonText, recipeText } from '../print/mix.ts';
import { type MixOptions, mixRequest } from './mix-request.ts';

const folder = mkdtempSync(join(tmpdir(), 'shoreglass-mix-'));
afterAll(() => rmSync(folder, { recursive: true }));
function file(name: string, text: string): string {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
}
const read = (options: Record<string, string>) => mixRequest({ json: false, ...options } as MixOptions);

describe('options', () => {
  it('waters, salts, amounts in any unit', () => {
    const { request } = read({
      from: 'rain, hard-tap at most 50 %',
      salts: 'gypsum,epsom',
      gh: '107.1 ppm',
      maxSodium: '10 mg/L',
      volume: '10 gal',
    });
    expect(request.volume).toBeCloseTo(0.0378541, 6);
    expect(request.waters.map(({ id, most }) => [id, most])).toEqual([
      ['rain', undefined],
      ['hard-tap', 0.5],
    ]);
    expect(request.targets).toEqual([
      { quantity: 'GH', aim: expect.closeTo(107.1 / 100.0869, 4) },
      { quantity: 'sodium', high: expect.closeTo(10 / 22.99, 6) },
    ]);
  });

  it('an enclosure gives volume, air, waters and what its animals need', () => {
    const { request, owners } = read({ for: 'beck-bank' });
    expect(request.volume).toBeGreaterThan(0.02);
    expect(request.air.carbonDioxide).toBe(600);
    expect(request.temperature).toBe(19);
    expect(request.waters.map(({ id }) => id)).toEqual(['hard-tap', 'rain', 'distilled']);
    expect(owners.map(({ target }) => target.quantity)).toContain('GH');
    const own = read({ for: 'beck-bank', kh: '6 °dKH', volume: '20 L' });
    expect(own.request.targets.find(({ quantity }) => quantity === 'KH')).toEqual({
      quantity: 'KH',
      aim: expect.closeTo(convert(6, '°dKH', 'meq/L'), 9),
    });
    expect(own.request.volume).toBeCloseTo(0.02, 12);
  });

  it('a change of water keeps what the enclosure is filled with', () => {
    const { request } = read({ for: 'beck-bank', keep: '20 L', from: 'distilled' });
    expect(request.kept?.volume).toBeCloseTo(0.02, 12);
    // Half hard tap of 100 mg/L of calcium, half rain of 0.4.
    expect((request.kept?.composition.calcium ?? 0) * 40.078).toBeCloseTo(50.2, 1);
  });

  it('waters of a file of its own, named after the file', () => {
    const path = file('My Tap.yaml', 'calcium: 90 mg/L\nmagnesium: 8 mg/L\nalkalinity: 4.39 meq/L\n');
    const { request } = read({ own: path, from: 'my-tap,rain', kh: '4 dKH', volume: '20 L' });
    expect(request.waters[0]).toMatchObject({ id: 'my-tap', kind: 'tap' });
    expect(request.waters[0]?.assumed?.[0]).toContain('chloride');
  });
});

describe('what cannot be', () => {
  const GOOD = { volume: '4 L', gh: '6 dGH' };
  it.each<[Record<string, string>, RegExp]>([
    [{ gh: '6 dGH' }, /--volume is missing/],
    [{ volume: '4 L' }, /Nothing is asked of the water/],
    [{ ...GOOD, volume: '0 L' }, /--volume: is outside 0\.1 L/],
    [{ ...GOOD, gh: '6 dKH' }, /--gh: °dKH does not measure GH/],
    [{ ...GOOD, gh: '-6 dGH' }, /--gh: .*below none/],
    [{ ...GOOD, from: 'rian' }, /--from: there is no water 'rian'\. Did you mean 'rain'\?/],
    [{ ...GOOD, salts: 'gipsum' }, /--salts: .*'gypsum'/],
    [{ ...GOOD, sodium: '1 mg/L', maxSodium: '2 mg/L' }, /--sodium and --max-sodium are both given/],
    [{ volume: '4 L', gh: '2 dGH', calcium: '60 mg/L' }, /GH is calcium plus magnesium/],
    [{ ...GOOD, keep: '9 L' }, /--keep: '9 L' does not say of which water/],
    [{ ...GOOD, keep: '9 L of rain' }, /--keep: 9 L of clean rain, inland are to stay in a volume of 4 L/],
    [{ ...GOOD, own: 'nowhere.yaml' }, /no file nowhere\.yaml/],
  ])('%j', (options, message) => {
    expect(() => read(options)).toThrow(message);
  });

  it.each([
    [
      'calcium: -90 mg/L\nalkalinity: 4 meq/L\n',
      /own\.yaml:1:10 calcium .*no water holds less than no calcium/,
    ],
    [
      'calcium: 90 mg/L\nsodium: 1 mg/L\npotassium: 1 mg/L\nalkalinity: 20 dKH\n',
      /own\.yaml:4:1 alkalinity the KH of own is above what its ions allow/,
    ],
    [
      '- id: a\n  calcium: 90 mg/L\n  chlorine: 3 mg/L\n',
      /own\.yaml:3:3 .*'chlorine' is not known.*'chloride'/,
    ],
    ['waters: []\n', /holds no water/],
    ['calcium: [\n', /own\.yaml:\d+:\d+/],
  ])('an analysis such as %j is told with its place', (text, message) => {
    const own = file('own.yaml', text);
    expect(() => read({ ...GOOD, own })).toThrow(message);
  });

  it('an enclosure that cannot be planned is told as by check', () => {
    const path = file(
      'bad.yaml',
      library.enclosure('beck-bank').replace('species: hyalella-azteca', 'species: hyalela'),
    );
    expect(() => read({ for: path })).toThrow(/bad\.yaml:\d+:\d+ .*hyalela/);
  });
});

describe('on the terminal', () => {
  it('a recipe fits its width and tells all it has to', () => {
    const { request } = read({ for: 'beck-bank', maxSodium: '10 mg/L' });
    const [closest] = compareRecipes(request);
    if (!closest) throw new Error('no recipe');
    const text = stripVTControlCharacters(recipeText(closest, request.temperature, 80));
    for (const part of [
      'Take',
      'What is wanted',
      'pH',
      '°fH',
      'gpg',
      'TDS meter',
      'In this order',
      'To mind',
      'chloramine',
      'Copper',
    ])
      expect(text).toContain(part);
    for (const line of text.split('\n').filter((each) => !each.includes('°d') && !each.includes('level')))
      expect(line.length).toBeLessThanOrEqual(82);
  });
  it('several are set side by side', () => {
    const { request } = read({ from: 'distilled,hard-tap', gh: '8 dGH', kh: '4 dKH', volume: '40 L' });
    const lines = comparisonText(compareRecipes(request)).split('\n');
    expect(lines[0]).toContain('closest');
    expect(lines.some((line) => line.trim().startsWith('targets reached'))).toBe(true);
  });
});
