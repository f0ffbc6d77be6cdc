import { listLibrary } from '@shoreglass/contract';
import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { found, needsAmong } from './find-entries.ts';

const listing = listLibrary(library);
const ANY = { text: '', list: '', habitat: '', need: '' };
const idsOf = (wanted: Partial<typeof ANY>) =>
  found(listing, { ...ANY, ...wanted }).flatMap(({ listed }) => listed.map(({ id }) => id));

describe('finding entries', () => {
  it('finds everything without a wish', () => {
    const { organisms, plants, feeds, materials, salts, waters } = library.data;
    const all = [organisms, plants, feeds, materials, salts, waters].flatMap((list) => Object.keys(list));
    expect(idsOf({}).sort()).toEqual(all.sort());
  });
  it('takes every word from anywhere in the entry, capitals and accents aside', () => {
    expect(idsOf({ text: 'CRAB geosesarma' })).toEqual(['geosesarma-dennerle']);
    expect(idsOf({ text: 'crab daphnia' })).toEqual([]);
  });
  it('keeps to habitat, list and need', () => {
    expect(idsOf({ habitat: 'amphibious', list: 'organisms' })).toContain('bombina-orientalis');
    expect(idsOf({ habitat: 'land', list: 'organisms' })).not.toContain('bombina-orientalis');
    const never = idsOf({ need: 'no young in fresh water' });
    expect(never).toContain('caridina-multidentata');
    expect(never).not.toContain('neocaridina-davidi');
    expect(idsOf({ need: 'forbidden in places' })).toEqual(
      expect.arrayContaining(['procambarus-virginalis', 'pomacea-diffusa', 'pistia-stratiotes']),
    );
    expect(needsAmong(listing)).toContain('tight lid');
  });
});
