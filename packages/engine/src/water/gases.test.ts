import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exp10 } from '../numerics/elementary.ts';
import {
  carbonDioxidePressure,
  dissolvedCarbonDioxide,
  oxygenSaturation,
  vapourPressureOverWater,
} from './gases.ts';

const OXYGEN_MASS = 31.998;

describe('oxygenSaturation', () => {
  // APHA 4500-O, table for fresh water at 1 atm [mg/L].
  it.each([
    [0, 14.621],
    [10, 11.288],
    [15, 10.084],
    [20, 9.092],
    [25, 8.263],
    [30, 7.559],
  ])('is that of the table at %d degC', (celsius, mass) => {
    expect(oxygenSaturation(celsius, 101325) * OXYGEN_MASS).toBeCloseTo(mass, 2);
  });
  it('falls with height in the weather and is nothing without air', () => {
    expect(oxygenSaturation(20, 90_000)).toBeLessThan(oxygenSaturation(20, 100_000));
    expect(oxygenSaturation(20, 0)).toBe(0);
    expect(oxygenSaturation(20, 1000)).toBe(0);
  });
});

describe('carbon dioxide', () => {
  // Plummer & Busenberg 1982: log KH = -1.468 at 25 degC, so 10^-3.5 atm give 1.07e-5 mol/kg.
  it('dissolves by Henry', () => {
    expect(dissolvedCarbonDioxide(25, exp10(-3.5) * 101325)).toBeCloseTo(0.01076, 4);
  });
  // Vapour over water at 25 degC 3169 Pa (steam tables).
  it('has its pressure in the moist film', () => {
    expect(carbonDioxidePressure(25, { carbonDioxide: 400, pressure: 101325 })).toBeCloseTo(39.26, 1);
    expect(vapourPressureOverWater(25) * 101325).toBeCloseTo(3169, -1.3);
  });
  it('scales with the air', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.double({ min: 1, max: 1e4, noNaN: true }),
        (t, x) => {
          const once = carbonDioxidePressure(t, { carbonDioxide: x, pressure: 1e5 });
          expect(carbonDioxidePressure(t, { carbonDioxide: 2 * x, pressure: 1e5 })).toBeCloseTo(2 * once, 8);
        },
      ),
    );
  });
});
