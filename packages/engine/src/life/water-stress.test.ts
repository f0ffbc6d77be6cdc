import { describe, expect, it } from 'vitest';
import { GOOD_WATER, GRAZER } from './life-test-kit.ts';
import type { TraitValues } from './traits.ts';
import { hazardBeyond, TOLERANCES, toleranceHazards, type WaterConditions } from './water-stress.ts';

const toleranceHazard = (traits: TraitValues, water: WaterConditions): number =>
  toleranceHazards(traits, water, new Float64Array(TOLERANCES.length));

describe('hazardBeyond', () => {
  it('leaves half alive after four days one margin beyond', () => {
    expect(Math.exp(-4 * hazardBeyond(0.8, 0.8))).toBeCloseTo(0.5, 14);
  });
  it('is nothing within the limit', () => {
    expect(hazardBeyond(0, 1)).toBe(0);
    expect(hazardBeyond(-3, 1)).toBe(0);
  });
});

describe('toleranceHazard', () => {
  it('is nothing in water that suits', () => {
    expect(toleranceHazard(GRAZER, GOOD_WATER)).toBe(0);
  });
  it.each([{ pH: 5 }, { pH: 10 }, { hardness: 0 }, { temperature: 35 }, { temperature: -1 }, { oxygen: 1 }])(
    'is half in four days one margin beyond: %j',
    (change) => {
      const hazard = toleranceHazard(GRAZER, { ...GOOD_WATER, ...change });
      expect(Math.exp(-4 * hazard)).toBeCloseTo(0.5, 12);
    },
  );
});

describe('salt', () => {
  const BRACKISH: TraitValues = {
    ...GRAZER,
    saltLow: 9,
    saltLowMargin: 27,
    saltHigh: 50,
    saltHighMargin: 10,
  };
  it('harms nobody where the conductivity is not told', () => {
    expect(toleranceHazard(BRACKISH, GOOD_WATER)).toBe(0);
  });
  it('kills animals of brackish water in fresh water over weeks, by the shortfall over its own margin', () => {
    const hazard = toleranceHazard(BRACKISH, { ...GOOD_WATER, conductivity: 0 });
    expect(Math.exp(-36 * hazard)).toBeCloseTo(0.5, 12);
  });
  it('kills animals of fresh water in brine: half in four days one margin beyond', () => {
    const fresh = { ...GRAZER, saltHigh: 6, saltHighMargin: 4 };
    const hazard = toleranceHazard(fresh, { ...GOOD_WATER, conductivity: 10 });
    expect(Math.exp(-4 * hazard)).toBeCloseTo(0.5, 12);
    expect(toleranceHazard(fresh, { ...GOOD_WATER, conductivity: 5 })).toBe(0);
  });
});
