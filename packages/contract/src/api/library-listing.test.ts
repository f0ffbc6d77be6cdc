import { library } from '@shoreglass/library';
import { describe, expect, it } from 'vitest';
import { libraryListing, listLibrary } from './library-listing.ts';

describe('the library as a list', () => {
  const listing = listLibrary(library);
  it('fits its schema and holds every entry once', () => {
    expect(libraryListing.parse(listing)).toEqual(listing);
    expect(listing.animals.map(({ id }) => id).sort()).toEqual(Object.keys(library.data.organisms).sort());
    expect(listing.salts.map(({ id }) => id).sort()).toEqual(Object.keys(library.data.salts).sort());
    expect(listing.salts.find(({ id }) => id === 'gypsum')?.kind).toBe('CaSO4.2H2O');
    expect(listing.materials).toHaveLength(Object.keys(library.data.materials).length);
  });
  it('carries the cautions', () => {
    const clay = listing.materials.find(({ id }) => id === 'expanded-clay');
    expect(clay?.cautions.join(' ')).toContain('floats');
  });
});
