import { describe, expect, it } from 'vitest';
import { requestProblems } from './check-request.ts';
import { compareRecipes } from './compare-recipes.ts';
import type { RecipeRequest } from './request.ts';
import { solveRecipe } from './solve-recipe.ts';

const SOUND: RecipeRequest = {
  volume: 0.04,
  waters: [{ id: 'pure', name: 'pure', composition: {}, kind: 'pure' }],
  salts: [
    { id: 'soda', name: 'soda', formula: 'NaHCO3', solubility: 96, bulkDensity: 900, dissolving: 'quick' },
    {
      id: 'potash',
      name: 'potash',
      formula: 'KHCO3',
      solubility: 330,
      bulkDensity: 1000,
      dissolving: 'quick',
    },
    {
      id: 'lime',
      name: 'lime',
      formula: 'CaCl2.2H2O',
      solubility: 900,
      bulkDensity: 800,
      dissolving: 'quick',
    },
  ],
  targets: [
    { quantity: 'GH', aim: 1 },
    { quantity: 'KH', aim: 1 },
  ],
  temperature: 20,
  air: { carbonDioxide: 420, pressure: 101_325 },
};

describe('requests that cannot be', () => {
  it('a sound one has no problem', () => expect(requestProblems(SOUND)).toEqual([]));

  it.each<[Partial<RecipeRequest>, string, string]>([
    [{ volume: 0 }, 'volume', 'a volume of 0 L'],
    [{ volume: Number.NaN }, 'volume', 'cannot be mixed'],
    [{ volume: 1e4 }, 'volume', 'cannot be mixed'],
    [{ waters: [] }, 'waters', 'no water is named'],
    [
      { waters: [{ id: 'x', name: 'x', kind: 'tap', composition: { calcium: -1 } }] },
      'waters.0',
      'holds -1 mmol/L of calcium',
    ],
    [
      { waters: [{ id: 'x', name: 'x', kind: 'tap', composition: { chloride: 3 } }] },
      'waters.0',
      'would be an acid',
    ],
    [{ waters: [SOUND.waters[0]!, SOUND.waters[0]!] }, 'waters', 'is there twice'],
    [{ waters: [{ ...SOUND.waters[0]!, least: 0.6, most: 0.4 }] }, 'waters.0', 'limited to 0.6 to 0.4'],
    [{ waters: [{ ...SOUND.waters[0]!, most: 0.4 }] }, 'waters', 'add up to 0.40 only'],
    [{ kept: { name: 'tank', composition: {}, volume: 0.05 } }, 'kept.volume', '50 L of tank'],
    [{ salts: [{ ...SOUND.salts[0]!, formula: 'PbI2' }] }, 'salts.0', 'not an ion'],
    [{ salts: [{ ...SOUND.salts[0]!, bulkDensity: 0 }] }, 'salts.0', 'not positive'],
    [{ targets: [{ quantity: 'GH' }] }, 'targets.0', 'nothing is asked'],
    [{ targets: [{ quantity: 'GH', aim: -1 }] }, 'targets.0', 'is to be'],
    [{ targets: [{ quantity: 'GH', aim: 1e6 }] }, 'targets.0', 'more than sea water holds'],
    [{ targets: [{ quantity: 'KH', low: 2, high: 1 }] }, 'targets.0', 'above 5.6 °dKH and below 2.8 °dKH'],
    [{ targets: [{ quantity: 'KH', aim: 3, high: 1 }] }, 'targets.0', 'outside its own limits'],
    [
      {
        targets: [
          { quantity: 'KH', aim: 1 },
          { quantity: 'KH', high: 2 },
        ],
      },
      'targets.1',
      'asked for twice',
    ],
    [
      {
        targets: [
          { quantity: 'GH', high: 1 },
          { quantity: 'calcium', low: 2 },
        ],
      },
      'targets',
      'calcium and magnesium together come to 11.2 °dGH at least',
    ],
    [
      {
        targets: [
          { quantity: 'GH', low: 3 },
          { quantity: 'calcium', high: 1 },
          { quantity: 'magnesium', high: 1 },
        ],
      },
      'targets',
      'GH is to be 16.8 °dGH at least',
    ],
    [{ temperature: 60 }, 'temperature', '60 °C'],
    [{ air: { carbonDioxide: 0, pressure: 101_325 } }, 'air', '0 ppm'],
  ])('%j', (change, path, message) => {
    const [first] = requestProblems({ ...SOUND, ...change });
    expect(first?.path.join('.')).toBe(path);
    expect(first?.message).toContain(message);
    expect(first?.mend.length).toBeGreaterThan(10);
    expect(() => solveRecipe({ ...SOUND, ...change })).toThrow(RangeError);
  });
});

describe('several ways', () => {
  const tap = {
    id: 'tap',
    name: 'tap',
    kind: 'tap',
    composition: { calcium: 2.5, sodium: 1, sulfate: 0.5 },
  } as const;
  it('differ from each other, and the closest comes first', () => {
    const choices = compareRecipes({ ...SOUND, waters: [...SOUND.waters, tap] });
    expect(choices[0]?.id).toBe('closest');
    expect(new Set(choices.map(({ id }) => id)).size).toBe(choices.length);
    expect(choices.length).toBeGreaterThan(1);
    const [closest] = choices;
    for (const { recipe } of choices)
      expect(recipe.misfit).toBeGreaterThanOrEqual((closest?.recipe.misfit ?? 0) - 1e-3);
  });
  it('the one without sodium adds none, the one of the purest water holds no tap', () => {
    const choices = compareRecipes({ ...SOUND, waters: [...SOUND.waters, tap] });
    for (const { id, recipe } of choices) {
      if (id === 'no-sodium') expect(recipe.salts.map((dose) => dose.id)).not.toContain('soda');
      if (id === 'purest-water') expect(recipe.waters.map((part) => part.id)).toEqual(['pure']);
    }
    const alone = compareRecipes(SOUND);
    expect(alone.find(({ id }) => id === 'no-sodium')?.recipe.water.composition.sodium).toBe(0);
    const fewest = alone.find(({ id }) => id === 'fewest-salts')?.recipe;
    expect(fewest?.salts.length).toBe(2);
  });
});
