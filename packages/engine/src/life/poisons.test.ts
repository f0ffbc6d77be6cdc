import { describe, expect, it } from 'vitest';
import { GOOD_WATER } from './life-test-kit.ts';
import { actingCopper, actingNitrite } from './poisons.ts';

describe('actingNitrite', () => {
  it('is the nitrite itself at 20 mg/L chloride', () => {
    expect(actingNitrite({ ...GOOD_WATER, nitrite: 3, chloride: 20 }, 15)).toBeCloseTo(3, 14);
  });
  it('lets what is borne rise in a line with chloride, twice as much at the chloride that doubles it', () => {
    const borne = (chloride: number): number =>
      1 / actingNitrite({ ...GOOD_WATER, nitrite: 1, chloride }, 15);
    expect(borne(15) / borne(0)).toBeCloseTo(2, 12);
    expect(borne(60) / borne(0)).toBeCloseTo(5, 12);
  });
  it('is not held back by chloride in animals without such gills', () => {
    const acting = actingNitrite({ ...GOOD_WATER, nitrite: 3, chloride: 200 }, 1e5);
    expect(acting).toBeGreaterThan(2.98);
  });
});

describe('actingCopper', () => {
  // US EPA 1996, acute criterion for copper: exp(0.9422 ln H - 1.700) µg/L, hardness H in mg/L calcium carbonate.
  it('falls with hardness as the acute criterion rises with it', () => {
    const criterion = (hardness: number): number => Math.exp(0.9422 * Math.log(hardness) - 1.7);
    for (const asCarbonate of [25, 50, 100, 200, 400]) {
      const acting = actingCopper({ ...GOOD_WATER, copper: 10, hardness: asCarbonate / 17.85 });
      expect(acting).toBeCloseTo((10 * criterion(50)) / criterion(asCarbonate), 9);
    }
  });
  it('is nothing without copper and finite in water without hardness', () => {
    expect(actingCopper({ ...GOOD_WATER, hardness: 0 })).toBe(0);
    expect(actingCopper({ ...GOOD_WATER, copper: 10, hardness: 0 })).toBeCloseTo(10 * 10 ** 0.9422, 6);
  });
});
