import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  ANSWERS,
  BY_CONDENSING,
  BY_FOG,
  BY_HEATER,
  KNOWN,
  solveBalance,
  TERM,
  TERMS,
} from './balance-system.ts';

const LATENT = 2.44e6;
const part = fc.double({ min: 0.01, max: 50, noNaN: true });

/** Random stores that exchange heat and vapour, each with a capacity and a loss to the room of its own. */
const balance = fc.array(part, { minLength: 24, maxLength: 24 }).map((values) => {
  const terms = new Float64Array(TERMS);
  const at = (i: number): number => values[i] as number;
  const couplings = [
    TERM.airWater,
    TERM.airGround,
    TERM.airGlass,
    TERM.waterGround,
    TERM.waterGlass,
    TERM.groundGlass,
  ];
  for (const [i, position] of couplings.entries()) terms[position] = at(i);
  terms[TERM.waterToRatio] = 1e3 * at(6);
  terms[TERM.groundToRatio] = 1e3 * at(7);
  terms[TERM.ratioByWater] = at(8);
  terms[TERM.ratioByGround] = at(9);
  const sum = (...positions: readonly number[]) =>
    positions.reduce((total, p) => total + (terms[p] as number), 0);
  terms[TERM.air] = sum(TERM.airWater, TERM.airGround, TERM.airGlass) + at(10);
  terms[TERM.ratio] = sum(TERM.waterToRatio, TERM.groundToRatio) + 1e3 * at(11);
  terms[TERM.water] = sum(TERM.airWater, TERM.waterGround, TERM.waterGlass, TERM.ratioByWater) + at(12);
  terms[TERM.ground] = sum(TERM.airGround, TERM.waterGround, TERM.groundGlass, TERM.ratioByGround) + at(13);
  terms[TERM.glass] = sum(TERM.airGlass, TERM.waterGlass, TERM.groundGlass) + at(14);
  for (let i = 0; i < 5; i++) terms[TERM.knownAir + i] = 20 * at(15 + i);
  return terms;
});

/** Left sides of the five equations for one answer. */
function leftSides(terms: Float64Array, answers: Float64Array, side: number): number[] {
  const [a, v, w, g, s] = answers.subarray(side, side + 5) as unknown as [
    number,
    number,
    number,
    number,
    number,
  ];
  const t = (name: keyof typeof TERM): number => terms[TERM[name]] as number;
  return [
    t('air') * a - t('airWater') * w - t('airGround') * g - t('airGlass') * s,
    t('ratio') * v - t('ratioByWater') * w - t('ratioByGround') * g,
    t('water') * w - t('airWater') * a - t('waterToRatio') * v - t('waterGround') * g - t('waterGlass') * s,
    t('ground') * g -
      t('airGround') * a -
      t('groundToRatio') * v -
      t('waterGround') * w -
      t('groundGlass') * s,
    t('glass') * s - t('airGlass') * a - t('waterGlass') * w - t('groundGlass') * g,
  ];
}

describe('the five equations', () => {
  it('hold when the answers are put back, for each right-hand side', () => {
    fc.assert(
      fc.property(balance, (terms) => {
        const answers = new Float64Array(ANSWERS);
        solveBalance(terms, LATENT, answers);
        const known = [...terms.subarray(TERM.knownAir, TERM.knownAir + 5)];
        const sides: readonly (readonly [number, readonly number[]])[] = [
          [KNOWN, known],
          [BY_CONDENSING, [0, -LATENT, 0, 0, LATENT]],
          [BY_FOG, [LATENT, -LATENT, 0, 0, 0]],
          [BY_HEATER, [0, 0, 1, 0, 0]],
        ];
        for (const [side, right] of sides) {
          const scale = Math.max(...right.map(Math.abs));
          for (const [i, left] of leftSides(terms, answers, side).entries()) {
            expect(Math.abs(left - (right[i] as number)) / scale).toBeLessThan(1e-9);
          }
        }
      }),
    );
  });

  it('answer 1 W of heater with warmth everywhere', () => {
    fc.assert(
      fc.property(balance, (terms) => {
        const answers = new Float64Array(ANSWERS);
        solveBalance(terms, LATENT, answers);
        for (let i = 0; i < 5; i++) expect(answers[BY_HEATER + i]).toBeGreaterThan(0);
      }),
    );
  });
});
