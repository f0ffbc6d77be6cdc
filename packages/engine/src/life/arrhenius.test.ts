import { describe, expect, it } from 'vitest';
import { arrheniusFactor, warmPart, workingPart } from './arrhenius.ts';

describe('arrheniusFactor', () => {
  // Rate 0.05 at 20 degC, E = 0.65 eV, k = 8.617333262e-5 eV/K; reference values computed with NumPy 2.4.6 from
  // exp(-E/k (1/T - 1/T20)), the form of Brown et al. 2004.
  it.each([
    [15, 0.03199382985],
    [25, 0.07697863635],
    [30, 0.1168392223],
  ])('carries a rate from 20 to %d degC', (temperature, rate) => {
    expect(0.05 * arrheniusFactor(temperature, 20, 0.65)).toBeCloseTo(rate, 10);
  });
});

describe('workingPart', () => {
  it('is one half at the limit, whole far below it and nothing far above', () => {
    expect(workingPart(34, 34)).toBe(0.5);
    expect(workingPart(10, 34)).toBeGreaterThan(0.999);
    expect(workingPart(60, 34)).toBeLessThan(0.001);
  });
});

describe('warmPart', () => {
  it('is one half at the limit, nothing far below it and whole far above', () => {
    expect(warmPart(15, 15)).toBe(0.5);
    expect(warmPart(-5, 15)).toBeLessThan(0.001);
    expect(warmPart(35, 15)).toBeGreaterThan(0.999);
  });
});
