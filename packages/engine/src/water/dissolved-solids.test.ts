import { describe, expect, it } from 'vitest';
import { conductivityAt } from './conductivity.ts';
import { dissolvedSolids, METER_FACTORS, meterSolids } from './dissolved-solids.ts';
import { speciate } from './speciate.ts';

describe('dissolved solids', () => {
  // Baking soda, 84 mg/L: all of it in solution is 84.0 mg/L; dried, half its bicarbonate leaves as CO2 and water and
  // 52.99 mg/L of soda (106 g/mol over two) stay.
  it('by ions and dried', () => {
    const composition = { sodium: 84 / 84.007 };
    const solved = speciate({ temperature: 25, composition, carbon: { kind: 'open', pressure: 3000 } });
    const { sumOfIons, residueAt180 } = dissolvedSolids(composition, solved);
    expect(sumOfIons).toBeCloseTo(84, 0);
    expect(residueAt180).toBeCloseTo(53, 0);
  });

  // 495 mg/kg of sodium chloride conducts about 1000 uS/cm at 25 degC (conductivity standards): a factor of about 0.5.
  it('by a meter that counts table salt', () => {
    const composition = { sodium: 495 / 58.44, chloride: 495 / 58.44 };
    const solved = speciate({ temperature: 25, composition, carbon: { kind: 'open', pressure: 0 } });
    const conductivity = conductivityAt(solved.free, solved.ionicStrength, 25);
    expect(Math.abs(conductivity / 1000 - 1)).toBeLessThan(0.02);
    expect(Math.abs(meterSolids(conductivity, METER_FACTORS[0]) / 495 - 1)).toBeLessThan(0.03);
  });

  it('refuses what a meter cannot show', () => {
    expect(meterSolids(200, 0.64)).toBeCloseTo(128, 12);
    expect(() => meterSolids(-1, 0.5)).toThrow('conductivity');
    expect(() => meterSolids(100, 5)).toThrow('outside 0.3 to 1');
  });
});
