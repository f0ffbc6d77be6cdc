import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { alkalinityOf, readSalt } from '@shoreglass/engine';
import { describe, expect, it } from 'vitest';
import { bundleText } from '../build/bundle.ts';
import { readData } from '../build/read-data.ts';
import { library, UnknownEntry } from './index.ts';
import { nearest } from './nearest.ts';

const root = join(import.meta.dirname, '..');

describe('the data folder', () => {
  it('holds only sound files, and the bundle is made from it', () => {
    const fresh = bundleText(readData(join(root, 'data')));
    const kept = readFileSync(join(root, 'src', 'generated', 'library.ts'), 'utf8');
    expect(kept === fresh, 'run: npm run build, and commit the bundle').toBe(true);
  });
});

describe('lookups', () => {
  it('find what is there', () => {
    expect(library.material('alder-wood').use).toBe('wood');
    expect(library.organism('porcellio-scaber').habitat).toBe('land');
    expect(library.feed('shrimp-pellet').nitrogen.unit).toBe('%');
  });
  it('suggest near names for what is not', () => {
    expect(() => library.organism('hyalela-azteca')).toThrow("Did you mean 'hyalella-azteca'?");
    expect(() => library.water('Hard Tap')).toThrow("Did you mean 'hard-tap'");
    expect(() => library.plant('x')).toThrow(UnknownEntry);
    expect(() => library.feed('__proto__')).toThrow(UnknownEntry);
    expect(() => library.feed('toString')).toThrow(UnknownEntry);
  });
});

describe('nearest', () => {
  it('puts the fewest edits first and leaves strangers out', () => {
    expect(nearest('lenght', ['width', 'height', 'length'])).toEqual(['length', 'height']);
    expect(nearest('zzzz', ['length', 'width', 'height'])).toEqual([]);
    expect(nearest('zz', ['calcium-chloride-hexahydrate'])).toEqual([]);
    expect(nearest('top_off', ['top-off', 'fill'])).toEqual(['top-off']);
  });
});

describe('salts', () => {
  it('are found under every name they are sold under', () => {
    expect(library.salt('epsom').id).toBe('epsom-salt');
    expect(library.salt('gypsum').formula).toBe('CaSO4.2H2O');
    expect(() => library.salt('gipsum')).toThrow("'gypsum'");
    const names = Object.values(library.data.salts).flatMap(({ id, alsoCalled = [] }) => [id, ...alsoCalled]);
    expect(new Set(names).size).toBe(names.length);
  });
  it('have formulas the engine reads, and a balance of charges', () => {
    for (const { formula } of Object.values(library.data.salts)) {
      const { ions, carbon } = readSalt(formula);
      // What strong ions leave over is carried by bicarbonate, carbonate or hydroxide: 0, 1 or 2 charges.
      const left = alkalinityOf(ions);
      const anions = Number(/HCO3/.test(formula)) + 2 * Number(/(^|[^H])CO3/.test(formula));
      expect(left).toBe(formula === 'Ca(OH)2' ? 2 : anions);
      expect(carbon).toBe(Number(/CO3/.test(formula)));
    }
  });
});
