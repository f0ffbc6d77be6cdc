import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { ChangeLimit } from '../plan/change-limit.ts';
import type { Plan } from '../plan/plan.ts';
import { DISSOLVED_IDS, type WaterComposition } from '../plan/water-composition.ts';
import { COMMON_CHANGE_LIMITS, changeLimits } from './animal-change-limits.ts';
import type { HeldWater } from './change-limits.ts';
import { shareOfLimit, splitChange } from './split-change.ts';

const NONE = Object.fromEntries(DISSOLVED_IDS.map((id) => [id, 0])) as unknown as WaterComposition;
/** Calcium bicarbonate with a little salt: hardness and alkalinity in equal charges [mol/m3]. */
const hard = (calcium: number): WaterComposition => ({ ...NONE, calcium, sodium: 0.2, chloride: 0.2 });
const held = (composition: WaterComposition, temperature = 20): HeldWater => ({ composition, temperature });

const PLACE: Pick<Plan, 'room' | 'populations'> = {
  room: {
    temperature: { mean: 20, yearAmplitude: 0, peakDay: 200, dayAmplitude: 0 },
    humidity: { mean: 0.5, yearAmplitude: 0, peakDay: 200, dayAmplitude: 0 },
    carbonDioxide: 500,
    pressure: 101325,
  },
  populations: [],
};

describe('a water change spread over days', () => {
  test('no step exceeds any limit, and together they end where the whole would', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        fc.double({ min: 0.2, max: 3, noNaN: true }),
        fc.double({ min: 0.05, max: 0.9, noNaN: true }),
        (from, to, fraction) => {
          const { steps, limits, before } = splitChange(PLACE, held(hard(from)), {
            kind: 'water change',
            fraction,
            water: held(hard(to), 18),
          });
          let last = before;
          let left = 1;
          for (const { amount, after } of steps) {
            for (const limit of limits)
              expect(shareOfLimit(last, after, limit)).toBeLessThanOrEqual(1 + 1e-9);
            expect(amount).toBeLessThanOrEqual(0.5 + 1e-9);
            last = after;
            left *= 1 - amount;
          }
          expect(left).toBeCloseTo(1 - fraction, 9);
          // 1 mmol/L is 5.6077 °dGH.
          expect(last.GH).toBeCloseTo(5.6077 * (fraction * to + (1 - fraction) * from), 2);
        },
      ),
      { numRuns: 40 },
    );
  });
  test('water that hardly differs goes in at once', () => {
    const { steps, sentence } = splitChange(PLACE, held(hard(1)), {
      kind: 'water change',
      fraction: 0.3,
      water: held(hard(1.1)),
    });
    expect(steps).toHaveLength(1);
    expect(sentence).toMatch(/one day/);
  });
  test('a warmer pool is cooled by no more than two degrees a day', () => {
    const { steps, decidedBy } = splitChange(PLACE, held(hard(1), 26), {
      kind: 'water change',
      fraction: 0.5,
      water: held(hard(1), 14),
    });
    // Six degrees in all.
    expect(steps.length).toBeGreaterThanOrEqual(3);
    expect(decidedBy?.quantity).toBe('waterTemperature');
  });
  test('refuses to empty the enclosure', () => {
    const all = { kind: 'water change', fraction: 1, water: held(hard(1)) } as const;
    expect(() => splitChange(PLACE, held(hard(1)), all)).toThrow(/move the animals out/);
  });
});

describe('a dose spread over days', () => {
  test('sodium bicarbonate to raise KH by 4 °dKH takes at least four days, and the masses add up', () => {
    const { steps } = splitChange(PLACE, held(hard(1)), {
      kind: 'dose',
      name: 'baking soda',
      mass: 0.006,
      // 1 °dKH is 0.35665 meq/L.
      adds: { sodium: 4 * 0.35665 },
    });
    expect(steps.length).toBeGreaterThanOrEqual(4);
    expect(steps.reduce((sum, { amount }) => sum + amount, 0)).toBeCloseTo(0.006, 12);
    expect((steps.at(-1)?.after.KH ?? 0) - (steps[0]?.after.KH ?? 0)).toBeGreaterThan(2.9);
  });
  test('says so when even a hundredth is too much', () => {
    const salt = { kind: 'dose', name: 'salt', mass: 1, adds: { sodium: 500, chloride: 500 } } as const;
    expect(() => splitChange(PLACE, held(hard(1)), salt)).toThrow(/even a hundredth of salt a day/);
  });
});

describe('the narrowest limits', () => {
  const own = (perDay: number): ChangeLimit => ({
    quantity: 'waterTemperature',
    perDay,
    owner: 'a scud',
    basis: 'published',
    source: 'test',
  });
  const species = (...ids: string[]) =>
    ids.map((id) => ({ species: id, traits: {} })) as unknown as Plan['populations'];
  const ofTemperature = (limits: readonly ChangeLimit[]) =>
    limits.find(({ quantity }) => quantity === 'waterTemperature')?.perDay;
  test('common practice where nothing is known', () => {
    expect(changeLimits({ populations: [] })).toEqual(COMMON_CHANGE_LIMITS);
  });
  test('a narrower one of anybody counts at once, a wider one only when everybody has one', () => {
    expect(ofTemperature(changeLimits({ populations: species('a', 'b'), changeLimits: [own(1)] }))).toBe(1);
    expect(ofTemperature(changeLimits({ populations: species('a', 'b'), changeLimits: [own(4)] }))).toBe(2);
    expect(ofTemperature(changeLimits({ populations: species('a'), changeLimits: [own(4)] }))).toBe(4);
  });
});
