import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convert } from '../../units/convert.ts';
import { alkalinityOf } from '../hardness.ts';
import { speciate } from '../speciate.ts';
import { requestProblems } from './check-request.ts';
import { fitDoses } from './fit-doses.ts';
import { CHALK, GH, grams, KH, PURE, request, SHELF, TAP } from './recipe-test-kit.ts';
import { RECIPE_QUANTITIES, type RecipeSalt, type RecipeTarget, type SourceWater } from './request.ts';
import { solveRecipe } from './solve-recipe.ts';

describe('for any request', () => {
  const amount = fc.double({ min: 0.1, max: 3, noNaN: true });
  const asked = fc.record({
    gh: amount,
    kh: amount,
    sodium: fc.double({ min: 0.05, max: 2, noNaN: true }),
    share: fc.double({ min: 0, max: 1, noNaN: true }),
    salts: fc.subarray(SHELF),
  });
  const built = ({
    gh,
    kh,
    sodium,
    salts,
  }: {
    gh: number;
    kh: number;
    sodium: number;
    salts: RecipeSalt[];
  }) =>
    request(
      [
        { quantity: 'GH', aim: gh },
        { quantity: 'KH', aim: kh },
        { quantity: 'sodium', high: sodium },
      ],
      { waters: [PURE, TAP], salts },
    );
  const runs = { numRuns: 40 };

  it('shares add up to one, nothing is negative, and charges balance', () => {
    fc.assert(
      fc.property(asked, (one) => {
        const recipe = solveRecipe(built(one));
        expect(recipe.waters.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
        for (const { mass } of recipe.salts) expect(mass).toBeGreaterThan(0);
        const { composition, pH } = recipe.water;
        for (const value of Object.values(composition)) expect(value).toBeGreaterThanOrEqual(0);
        // What strong ions leave over is what the weak ones carry at this pH.
        const carbon = { kind: 'alkalinity', alkalinity: alkalinityOf(composition) } as const;
        const again = speciate({ temperature: 20, composition, carbon, pH });
        expect(again.bicarbonate).toBeCloseTo(recipe.water.bicarbonate, 6);
        expect(recipe.water.KH).toBeCloseTo(Math.max(0, alkalinityOf(composition)), 9);
      }),
      runs,
    );
  });

  it('twice the volume takes twice the salts', () => {
    fc.assert(
      fc.property(asked, (one) => {
        const small = grams(solveRecipe(built(one)));
        const large = grams(solveRecipe({ ...built(one), volume: 0.08 }));
        for (const [id, mass] of Object.entries(small)) expect(large[id]! / mass).toBeCloseTo(2, 6);
      }),
      runs,
    );
  });

  it('one more salt never fits worse', () => {
    fc.assert(
      fc.property(asked, fc.constantFrom(...SHELF), (one, more) => {
        const before = fitDoses(built(one)).misfit;
        const salts = one.salts.includes(more) ? one.salts : [...one.salts, more];
        expect(fitDoses(built({ ...one, salts })).misfit).toBeLessThanOrEqual(before + 2e-3);
      }),
      runs,
    );
  });

  it('whatever is sound is answered with finite numbers, reasons for what is missed and nothing negative', () => {
    const maybe = fc.option(fc.double({ min: 0, max: 5, noNaN: true }), { nil: undefined });
    const target = fc
      .tuple(fc.constantFrom(...RECIPE_QUANTITIES), maybe, maybe, maybe)
      .map(([quantity, aim, low, high]) => {
        const unit = quantity === 'conductivity' ? 200 : 1;
        const ends = {
          ...(aim === undefined ? {} : { aim }),
          ...(low === undefined ? {} : { low }),
          ...(high === undefined ? {} : { high }),
        };
        return {
          quantity,
          ...Object.fromEntries(Object.entries(ends).map(([key, value]) => [key, value * unit])),
        } as RecipeTarget;
      });
    const acid: SourceWater = {
      ...PURE,
      id: 'acid',
      composition: { chloride: 0.1, nitrate: 0.05, ammonium: 0.02 },
    };
    const brown: SourceWater = {
      ...TAP,
      id: 'brown',
      composition: { calcium: 0.2, dissolvedOrganicCarbon: 2 },
    };
    fc.assert(
      fc.property(
        fc.array(target, { maxLength: 5 }),
        fc.subarray([PURE, TAP, acid, brown]),
        fc.subarray([...SHELF, CHALK]),
        fc.double({ min: 0, max: 0.04, noNaN: true }),
        (targets, waters, salts, stays) => {
          const one = request(targets, {
            waters,
            salts,
            kept: { name: 'tank', composition: TAP.composition, volume: stays },
          });
          if (requestProblems(one).length > 0) return;
          const recipe = solveRecipe(one);
          for (const { value, valueBySpoon, met, why } of recipe.targets) {
            expect(Number.isFinite(value) && Number.isFinite(valueBySpoon)).toBe(true);
            expect(met).toBe(why.length === 0);
          }
          for (const { mass } of recipe.salts) expect(mass).toBeGreaterThan(0);
          for (const { share } of recipe.waters) expect(share).toBeGreaterThan(0);
          expect(recipe.water.pH).toBeGreaterThan(3);
          expect(recipe.water.pH).toBeLessThan(11);
        },
      ),
      { numRuns: 150 },
    );
  });

  it('the order of salts and waters does not matter', () => {
    fc.assert(
      fc.property(asked, (one) => {
        const straight = fitDoses(built(one));
        const turned = built({ ...one, salts: [...one.salts].reverse() });
        const other = fitDoses({ ...turned, waters: [TAP, PURE] });
        expect(other.misfit).toBeCloseTo(straight.misfit, 6);
        expect(other.water.composition.calcium).toBeCloseTo(straight.water.composition.calcium, 5);
      }),
      runs,
    );
  });

  it('the same amounts in other units make the same recipe', () => {
    const degrees = solveRecipe(request([GH(5), KH(3)]));
    const ppm = solveRecipe(
      request([
        { quantity: 'GH', aim: convert(convert(5, '°dGH', 'ppm CaCO3'), 'ppm CaCO3', 'mol/m³') },
        { quantity: 'KH', aim: convert(convert(3, '°dKH', '°fH'), '°fH', 'meq/L') },
      ]),
    );
    expect(ppm.salts.map(({ mass }) => mass.toPrecision(9))).toEqual(
      degrees.salts.map(({ mass }) => mass.toPrecision(9)),
    );
  });
});
