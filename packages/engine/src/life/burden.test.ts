import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createBurden, killingRate, passBurden } from './burden.ts';

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
        const rate = killingRate({ noEffect, medianLethal: lethal, recovery });
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
    expect(() => killingRate({ noEffect: 0.9, medianLethal: 1, recovery: 0.35 })).toThrow(RangeError);
  });
});

describe('passBurden', () => {
  const after = (recovery: number, level: number, water: number, days: number): number => {
    const burden = createBurden({ noEffect: 0.1, medianLethal: 1, recovery });
    burden.level = level;
    for (let day = 0; day < days; day += 1) passBurden(burden, water);
    return burden.level;
  };
  it('comes within 0.1 % of the water after ten times its time constant and forgets as fast', () => {
    expect(after(1, 0, 0.4, 10)).toBeCloseTo(0.4, 4);
    expect(after(Math.LN2, 0.4, 0, 1)).toBeCloseTo(0.2, 14);
  });
  it('kills by the mean of an exponential course over the day: half lost gives (1 - 1/2)/ln 2 of the start', () => {
    const burden = createBurden({ noEffect: 0, medianLethal: 1, recovery: Math.LN2 });
    burden.level = 0.4;
    expect(passBurden(burden, 0) / burden.killing).toBeCloseTo((0.4 * 0.5) / Math.LN2, 14);
  });
  it('kills nobody at or below the threshold, however long', () => {
    const burden = createBurden({ noEffect: 0.5, medianLethal: 2, recovery: 0.7 });
    for (let day = 0; day < 100; day += 1) expect(passBurden(burden, 0.5)).toBe(0);
  });
});
