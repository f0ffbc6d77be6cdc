import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { GOOD_WATER, GRAZER } from './life-test-kit.ts';
import { hazardBeyond, killingRate, meanBurden, nextBurden, toleranceHazard } from './water-stress.ts';

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

describe('killingRate', () => {
  // The definition of the 96-hour median lethal concentration, integrated in small steps.
  it('kills half in four days at the median lethal concentration', () => {
    const cases = fc.record({
      lethal: fc.double({ min: 0.3, max: 5, noNaN: true }),
      ratio: fc.double({ min: 0, max: 0.5, noNaN: true }),
      recovery: fc.double({ min: 0.35, max: 3, noNaN: true }),
    });
    fc.assert(
      fc.property(cases, ({ lethal, ratio, recovery }) => {
        const noEffect = ratio * lethal;
        const rate = killingRate(lethal, noEffect, recovery);
        const steps = 4000;
        let hazard = 0;
        for (let i = 0; i < steps; i += 1) {
          const burden = lethal * (1 - Math.exp((-recovery * 4 * (i + 0.5)) / steps));
          hazard += (rate * Math.max(0, burden - noEffect) * 4) / steps;
        }
        expect(Math.exp(-hazard)).toBeCloseTo(0.5, 4);
      }),
      { numRuns: 50 },
    );
  });
  it('refuses a threshold that four days at the lethal concentration do not reach', () => {
    expect(() => killingRate(1, 0.9, 0.35)).toThrow(RangeError);
  });
});

describe('nextBurden', () => {
  it('comes within 0.1 % of the water after ten times its time constant and forgets as fast', () => {
    let burden = 0;
    for (let day = 0; day < 10; day += 1) burden = nextBurden(burden, 0.4, 1);
    expect(burden).toBeCloseTo(0.4, 4);
    expect(nextBurden(0.4, 0, Math.LN2)).toBeCloseTo(0.2, 14);
  });
  it('has the mean of an exponential course over the day: half lost gives (1 - 1/2)/ln 2 of the start', () => {
    expect(meanBurden(0.4, 0, Math.LN2)).toBeCloseTo((0.4 * 0.5) / Math.LN2, 14);
  });
});
