import {
  editEnclosure,
  openEnclosure,
  shelfCarbonates,
  shelfSalts,
  shelfWaters,
  targetsOfBands,
} from '@shoreglass/contract';
import { compareRecipes, convert, type RecipeRequest, solveRecipe } from '@shoreglass/engine';
import { library } from '@shoreglass/library';
import { describe, expect, test } from 'vitest';
import type { Shelf } from '../../../worker/messages.ts';
import { firstDesk, requestOf } from './recipe-desk.ts';
import { recipeEdits } from './recipe-edits.ts';
import { recipeText } from './recipe-text.ts';
import { recipeInShort } from './recipe-words.ts';

const TEXT = library.enclosure('beck-bank');
const { plan } = openEnclosure(TEXT, 'beck-bank.yaml');
const shelf: Shelf = {
  waters: shelfWaters({}),
  salts: shelfSalts(),
  carbonates: shelfCarbonates(),
  fill: ['hard-tap', 'rain'],
  topOff: ['rain'],
  own: [],
  suited: targetsOfBands(plan?.bands ?? []),
  pieces: [],
  actions: 0,
};
const desk = firstDesk(shelf, 48.2, {});
const request = requestOf({ desk, waters: shelf.waters, shelf, room: undefined }) as RecipeRequest;

describe('the desk', () => {
  test('begins with the waters of the fill, pure water, and what suits those who live there', () => {
    expect(desk.waters).toEqual(['hard-tap', 'rain', 'distilled']);
    expect(desk.volume).toEqual({ text: '48', unit: 'L' });
    expect(request.volume).toBeCloseTo(0.048, 9);
    expect(request.targets.map(({ quantity }) => quantity)).toEqual(['GH', 'KH']);
  });

  test('mixes the rest where part of the enclosure stays, and waits until that water is known', () => {
    const part = { ...desk, kept: { text: '30', unit: 'L' }, keptFrom: 'computed' as const };
    const parts = { desk: part, waters: shelf.waters, shelf, room: undefined };
    expect(requestOf(parts)).toEqual({ waits: expect.stringMatching(/not known yet/) });
    const pool = { name: 'water of the pool', composition: plan?.water.fill ?? {} };
    const asked = requestOf({ ...parts, pool }) as RecipeRequest;
    expect(asked.kept).toMatchObject({ volume: expect.closeTo(0.03, 12), composition: pool.composition });
    const { recipe } = compareRecipes(asked)[0]!;
    // 48 L in all: 18 L are poured
    expect(1000 * recipe.waters.reduce((sum, { volume }) => sum + volume, 0)).toBeCloseTo(18, 6);
  });

  test('reads targets in any unit, limits as limits', () => {
    const targets = {
      GH: { text: '107 ppm', unit: '°dGH' },
      KH: { text: '1.43', unit: 'meq/L' },
      sodium: { text: '10', unit: 'mg/L' },
      calcium: { text: '>= 20 mg/L', unit: 'mmol/L' },
    };
    const asked = requestOf({
      desk: { ...desk, targets },
      waters: shelf.waters,
      shelf,
      room: undefined,
    }) as RecipeRequest;
    const [GH, KH, calcium, sodium] = asked.targets;
    expect(convert(GH?.aim ?? 0, 'mmol/L', '°dGH')).toBeCloseTo(5.995, 2);
    expect(KH?.aim).toBeCloseTo(1.43, 9);
    expect(calcium).toMatchObject({ quantity: 'calcium', low: expect.closeTo(20 / 40.078, 6) });
    expect(sodium).toMatchObject({ quantity: 'sodium', high: expect.closeTo(10 / 22.99, 4) });
  });

  test('says what is missing', () => {
    const ask = (part: Partial<typeof desk>) =>
      requestOf({ desk: { ...desk, ...part }, waters: shelf.waters, shelf, room: undefined });
    expect(ask({ volume: { text: '', unit: 'L' } })).toHaveProperty('waits');
    expect(ask({ waters: [] })).toHaveProperty('waits');
    expect(ask({ targets: {} })).toHaveProperty('waits');
  });
});

describe('the recipe', () => {
  const choices = compareRecipes(request);

  test('as text names every salt in grams, and the steps in order', () => {
    for (const choice of choices) {
      const text = recipeText({ enclosure: 'Beck bank', on: '2026-11-25', choice, units: {} });
      for (const { name } of choice.recipe.salts) expect(text).toContain(name);
      expect(text).toMatch(/^Beck bank: 48.0 L of water/);
      expect(text).toContain('HOW\n  1. ');
      expect(text).not.toMatch(/NaN|undefined/);
      expect(recipeInShort(choice.recipe)).not.toBe('');
    }
  });

  test('put into the file reads back as the same water, and the file stays sound', () => {
    const recipe = solveRecipe(request);
    const { id, edits } = recipeEdits({
      recipe,
      waters: request.waters,
      shelf,
      on: '2026-11-25',
      use: 'fill',
    });
    const text = edits.reduce((so, { path, value }) => editEnclosure(so, path, value), TEXT);
    const opened = openEnclosure(text, 'beck-bank.yaml');
    expect(opened.findings.filter(({ severity }) => severity === 'blocking')).toEqual([]);
    expect(opened.document?.content.water.fill).toBe(id);
    for (const [ion, amount] of Object.entries(recipe.water.composition))
      expect(opened.plan?.water.fill[ion as 'calcium'], ion).toBeCloseTo(amount, 3);
    expect(text).toContain('# a sponge from a running tank');
    expect(text).toMatch(/Recipe of 2026-11-25 for 48.0 L/);
  });
});
