import { libraryEntry, libraryListing } from '@shoreglass/contract';
import { library } from '@shoreglass/library';
import { describe, expect, test } from 'vitest';
import { appUnderTest } from '../app-test-kit.ts';

const { get } = appUnderTest();

describe('the library', () => {
  test('lists its animals with where they live and what they need', async () => {
    const { animals } = libraryListing.parse((await get('/api/library')).json());
    expect(animals).toHaveLength(Object.keys(library.data.organisms).length);
    const crab = animals.find(({ id }) => id === 'geosesarma-dennerle');
    expect(crab).toMatchObject({ habitat: 'amphibious', known: 'poorly' });
    expect(crab?.needs).toContain('tight lid');
  });
  test('gives the page of an entry of any list', async () => {
    for (const path of [
      'organisms/daphnia-magna',
      'plants/lemna-minor',
      'materials/float-glass',
      'salts/gypsum',
    ]) {
      const page = libraryEntry.parse((await get(`/api/library/${path}`)).json());
      expect(`${page.kind}/${page.id}`).toBe(path);
      expect(page.sections.length).toBeGreaterThan(0);
    }
  });
  test('tells of an animal what becomes of it by itself with ample food', async () => {
    const page = libraryEntry.parse((await get('/api/library/organisms/neocaridina-davidi')).json());
    expect(page.alone).toMatch(/^By itself with ample food at 24 °C: first young after \d+ days/);
    const plant = libraryEntry.parse((await get('/api/library/plants/lemna-minor')).json());
    expect(plant.alone).toBeUndefined();
  });
  test('says what it does not hold', async () => {
    const unknown = await get('/api/library/plants/__proto__');
    expect(unknown.statusCode).toBe(404);
    expect(unknown.json().message).toContain('no plants');
    expect((await get('/api/library/parameters/grazing')).statusCode).toBe(400);
  });
});
