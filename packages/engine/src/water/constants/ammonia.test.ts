import { describe, expect, it } from 'vitest';
import { unionisedFraction } from './ammonia.ts';

describe('unionisedFraction', () => {
  // Emerson et al. 1975: 5.37 % at pH 8 and 25 degC, 3.8 % at 20 degC, infinite dilution.
  it('is that of the published table', () => {
    expect(unionisedFraction(25, 8, 0)).toBeCloseTo(0.0537, 4);
    expect(unionisedFraction(20, 8, 0)).toBeCloseTo(0.038, 3);
  });
  it('rises with pH and warmth and falls with ionic strength', () => {
    expect(unionisedFraction(25, 8.1, 0.005)).toBeGreaterThan(unionisedFraction(25, 8, 0.005));
    expect(unionisedFraction(26, 8, 0.005)).toBeGreaterThan(unionisedFraction(25, 8, 0.005));
    expect(unionisedFraction(25, 8, 0.02)).toBeLessThan(unionisedFraction(25, 8, 0.005));
  });
  it('refuses what is not a water', () => {
    expect(() => unionisedFraction(25, Number.NaN, 0)).toThrow(RangeError);
    expect(() => unionisedFraction(25, 8, -1)).toThrow(RangeError);
  });
});
