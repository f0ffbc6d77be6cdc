import { describe, expect, it } from 'vitest';
import { GOOD_WATER, GRAZER } from './life-test-kit.ts';
import {
  actingAmmonia,
  partLost,
  type SlowedPopulation,
  satiety,
  setSlowing,
  unslowed,
} from './sublethal.ts';
import type { TraitValues } from './traits.ts';
import type { WaterConditions } from './water-stress.ts';

const TRAITS: TraitValues = {
  ...GRAZER,
  oxygenSlowing: 3,
  ammoniaSlowing: 20,
  nitriteSlowing: 1,
  nitrateSlowing: 30,
  copperSlowing: 10,
};

function slowedIn(
  change: Partial<WaterConditions>,
  { levels = [0, 0, 0], inWater = 1 }: { levels?: readonly number[]; inWater?: number } = {},
): SlowedPopulation['slowing'] {
  const population = {
    slowing: unslowed('crustaceans'),
    traits: TRAITS,
    burdens: levels.map((level) => ({ level })),
    inWater,
  };
  setSlowing(population, { ...GOOD_WATER, ...change });
  return population.slowing;
}

describe('partLost', () => {
  it('is a fifth at the dose that takes a fifth, a half at 1.6 times that', () => {
    expect(partLost(1)).toBeCloseTo(0.2, 12);
    expect(partLost(1.6)).toBeCloseTo(0.5, 2);
  });
  it('is nothing below 0.44 of it and all above 5.8 times', () => {
    expect(partLost(0)).toBe(0);
    expect(partLost(0.44)).toBe(0);
    expect(partLost(0.46)).toBeGreaterThan(0);
    expect(partLost(5.8)).toBe(1);
    expect(partLost(Number.POSITIVE_INFINITY)).toBe(1);
  });
  it('never falls as the dose rises, and does not jump', () => {
    let before = 0;
    for (let times = 0.4; times < 7; times *= 1.01) {
      const lost = partLost(times);
      expect(lost).toBeGreaterThanOrEqual(before);
      expect(lost - before).toBeLessThan(0.01);
      before = lost;
    }
  });
});

describe('actingAmmonia', () => {
  // US EPA 2013, chronic criterion 1.9 mg N/L at pH 7 and 20 °C and its table by pH and temperature, as recalled:
  // 0.78 at pH 8 and 20 °C, 0.37 at pH 8.5 and 20 °C, 1.4 at pH 7 and 25 °C.
  it('is one at pH 7 and 20 °C', () => {
    expect(actingAmmonia(7, 20, true)).toBeCloseTo(1, 3);
  });
  it.each([
    [8, 20, 0.78],
    [7, 25, 1.4],
    [8.5, 20, 0.37],
  ])('meets the criterion at pH %f and %f °C', (pH, temperature, criterion) => {
    expect(1.9 / actingAmmonia(pH, temperature, true)).toBeCloseTo(criterion, 1);
  });
  it('does not change with warmth for fish, nor beyond the pH it was found for', () => {
    expect(actingAmmonia(8, 28, false)).toBe(actingAmmonia(8, 12, false));
    expect(actingAmmonia(5, 20, true)).toBe(actingAmmonia(6.5, 20, true));
    expect(actingAmmonia(11, 20, true)).toBe(actingAmmonia(9, 20, true));
  });
});

describe('setSlowing', () => {
  it('leaves all their appetite in good water, and where nothing is told of it', () => {
    expect(slowedIn({}).kept).toBe(1);
    expect(slowedIn({ nitrate: 5, totalAmmonia: 0.5 }).kept).toBe(1);
  });
  it('takes a fifth at the oxygen that does so, by the mean of the day', () => {
    const slowed = slowedIn({ oxygen: 0.5, oxygenMean: 3 });
    expect(slowed.kept).toBeCloseTo(0.8, 12);
    expect(slowed.lost[0]).toBeCloseTo(0.2, 12);
  });
  it('leaves nothing where there is no oxygen, and those that breathe air theirs', () => {
    expect(slowedIn({ oxygen: 0 }).kept).toBe(0);
    const air = {
      slowing: unslowed('snails'),
      traits: GRAZER,
      burdens: [0, 0, 0].map((level) => ({ level })),
    };
    setSlowing({ ...air, inWater: 1 }, { ...GOOD_WATER, oxygen: 0 });
    expect(air.slowing.kept).toBe(1);
  });
  it.each([
    ['ammonia', 1, { totalAmmonia: 20, pH: 7, temperature: 20 }, [0, 0, 0]],
    ['nitrite', 2, {}, [0, 1, 0]],
    ['nitrate', 3, { nitrate: 30 }, [0, 0, 0]],
    ['copper', 4, {}, [0, 0, 10]],
  ] as const)('takes by %s what leaves a fifth less mass', (_, cause, change, levels) => {
    const slowed = slowedIn(change, { levels });
    expect(slowed.kept ** 3).toBeCloseTo(0.8, 3);
    expect(slowed.lost[cause]).toBeCloseTo(1 - slowed.kept, 12);
  });
  it('multiplies causes and shares out what they take, no more and no less', () => {
    const slowed = slowedIn({ oxygen: 2.5, nitrate: 60 }, { levels: [0, 2, 12] });
    const lost = slowed.lost.reduce((sum, each) => sum + each, 0);
    expect(slowed.kept + lost).toBeCloseTo(1, 12);
    expect(slowed.lost[0]! + slowed.lost[2]! + slowed.lost[3]! + slowed.lost[4]!).toBeCloseTo(lost, 12);
    expect(slowed.lost[1]).toBeCloseTo(0, 12);
  });
  it('counts for the part of their feeding that happens in the water only', () => {
    expect(1 - slowedIn({ oxygen: 3 }, { inWater: 0.25 }).kept).toBeCloseTo(0.05, 12);
  });
  it('is over when the water is good again', () => {
    const population = {
      slowing: unslowed('fish'),
      traits: TRAITS,
      burdens: [0, 0, 0].map((level) => ({ level })),
      inWater: 1,
    };
    setSlowing(population, { ...GOOD_WATER, oxygen: 1 });
    expect(population.slowing.kept).toBeLessThan(0.2);
    setSlowing(population, GOOD_WATER);
    expect(population.slowing.kept).toBe(1);
    expect(Math.max(...population.slowing.lost)).toBe(0);
  });
});

describe('eggs', () => {
  it('are lost with growth, and no more, where nothing else is told', () => {
    expect(slowedIn({ nitrate: 60 }).eggsKept).toBe(1);
  });
  it('are lost at lower doses where they are: a fifth of the young at half the dose', () => {
    const population = {
      slowing: unslowed('snails'),
      traits: { ...TRAITS, eggSensitivity: 2 },
      burdens: [0, 0, 0].map((level) => ({ level })),
      inWater: 1,
    };
    setSlowing(population, { ...GOOD_WATER, nitrate: 15 });
    const { kept, eggsKept, eggsLost } = population.slowing;
    expect(kept ** 3 * eggsKept).toBeCloseTo(0.8, 12);
    expect(eggsLost[3]).toBeCloseTo(1 - eggsKept, 12);
    setSlowing(population, GOOD_WATER);
    expect(population.slowing.eggsKept).toBe(1);
  });
});

describe('satiety', () => {
  it('is that of what is left to them: no hunger for want of appetite', () => {
    const slowing = unslowed('crustaceans');
    slowing.kept = 0.6;
    expect(satiety({ fullness: 0.6, slowing })).toBeCloseTo(1, 12);
    expect(satiety({ fullness: 0.3, slowing })).toBeCloseTo(0.5, 12);
    slowing.kept = 0;
    expect(satiety({ fullness: 0, slowing })).toBe(1);
  });
});
