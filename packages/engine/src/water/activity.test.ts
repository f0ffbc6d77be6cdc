import { describe, expect, it } from 'vitest';
import { chargeCoefficients, debyeHueckelSlope, dielectricConstant, liquidWaterDensity } from './activity.ts';

describe('water as a solvent', () => {
  // CRC Handbook: density 999.103, 998.207, 997.048 kg/m3 and dielectric constant 80.2 (20 degC), 78.4 (25 degC).
  it.each([
    [15, 999.103],
    [20, 998.207],
    [25, 997.048],
  ])('has the density of the tables at %d degC', (celsius, density) => {
    expect(liquidWaterDensity(celsius)).toBeCloseTo(density, 1);
  });
  it('has the dielectric constant of the tables', () => {
    expect(dielectricConstant(20)).toBeCloseTo(80.1, 0);
    expect(dielectricConstant(25)).toBeCloseTo(78.3, 1);
  });
  // Stumm & Morgan and others: A is about 0.50 at 15 degC and 0.51 at 25 degC.
  it('has the slope of the textbooks', () => {
    expect(debyeHueckelSlope(15)).toBeCloseTo(0.502, 2);
    expect(debyeHueckelSlope(25)).toBeCloseTo(0.51, 2);
  });
});

describe('chargeCoefficients', () => {
  it('is 1 for everything in pure water', () => {
    expect(chargeCoefficients(20, 0)).toEqual({ single: 1, double: 1, neutral: 1 });
  });
  // Davies at 25 degC, worked by hand: I 0.01: log g = -0.5108 (0.1/1.1 - 0.003) = -0.04490, I 0.1: -0.5108 (0.24025 - 0.03).
  it.each([
    [0.01, 10 ** -0.0449],
    [0.1, 10 ** -0.1074],
  ])('is that worked by hand at ionic strength %d', (strength, single) => {
    const found = chargeCoefficients(25, strength);
    expect(Math.abs(found.single / single - 1)).toBeLessThan(1e-3);
    expect(Math.abs(found.double / found.single ** 4 - 1)).toBeLessThan(1e-14);
  });
  it('stays as it is beyond the equation', () => {
    expect(chargeCoefficients(25, 5)).toEqual(chargeCoefficients(25, 0.5));
  });
});
