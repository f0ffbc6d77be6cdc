import { compareRecipes } from '@shoreglass/engine';
import { describe, expect, it } from 'vitest';
import { recipesDocument } from './recipe-document.ts';
import { recipesDocumentSchema } from './recipe-document-schema.ts';
import { readRecipeRequest } from './recipe-request.ts';

describe('recipes as a document', () => {
  it.each([
    {
      volume: '40 L',
      waters: ['rain', 'hard-tap'],
      targets: { GH: '6 °dGH', KH: '4 °dKH', sodium: 'at most 10 mg/L' },
    },
    { volume: '1 L', waters: ['distilled'], salts: [], targets: { KH: '4 °dKH' } },
    {
      volume: '50 L',
      waters: ['distilled'],
      kept: { water: 'hard-tap', volume: '30 L' },
      targets: { conductivity: '300 to 400 µS/cm' },
    },
  ])('%j fits its schema, also after JSON', (written) => {
    const { request } = readRecipeRequest(written);
    if (!request) throw new Error('not read');
    const document = JSON.parse(JSON.stringify(recipesDocument(compareRecipes(request))));
    expect(recipesDocumentSchema.parse(document)).toEqual(document);
  });

  it('shows amounts in the units of the trade', () => {
    const { request } = readRecipeRequest({
      volume: '40 L',
      waters: ['distilled'],
      salts: ['gypsum'],
      targets: { GH: '6 °dGH' },
    });
    if (!request) throw new Error('not read');
    const [recipe] = recipesDocument(compareRecipes(request)).recipes;
    // 6 x 0.17832 mmol/L x 172.17 g/mol x 40 L, of a purity of 99 %.
    expect(recipe?.salts[0]?.grams).toBeCloseTo(7.368 / 0.99, 2);
    expect(recipe?.targets[0]).toMatchObject({ unit: '°dGH', aim: expect.closeTo(6, 9), met: true });
    // One degree is 17.848 ppm CaCO3, 1.7848 French, 1.2522 Clark, 1.0426 gpg.
    expect(recipe?.water.GH['ppm CaCO3']).toBeCloseTo(107.09, 1);
    expect(recipe?.water.GH['°fH']).toBeCloseTo(10.709, 2);
    expect(recipe?.water.GH['°Clark']).toBeCloseTo(7.513, 2);
    expect(recipe?.water.GH.gpg).toBeCloseTo(6.256, 2);
  });
});
