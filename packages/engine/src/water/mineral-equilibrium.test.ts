import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { equilibriumWithMineral } from './mineral-equilibrium.ts';
import type { WaterState } from './speciate.ts';

const open = (atmospheres: number) => ({ kind: 'open', pressure: atmospheres * 101325 }) as const;

describe('equilibriumWithMineral', () => {
  // Textbook values for pure water (Appelo & Postma; Stumm & Morgan): calcite open to 10^-3.5 atm, 25 degC: pH 8.28,
  // Ca 0.49 mmol/L; closed without CO2: pH 9.91, Ca 0.123 mmol/L. Gypsum: 15.2 mmol/L (CRC, 2.6 g/L dihydrate), at
  // an ionic strength of 0.04 mol/kg, the edge of Davies' equation: within 7 %.
  it('has the textbook values', () => {
    const inAir = equilibriumWithMineral(
      { temperature: 25, composition: {}, carbon: open(10 ** -3.5) },
      'calcite',
    );
    expect(inAir.speciation.pH).toBeCloseTo(8.28, 1.7);
    expect(inAir.dissolved).toBeCloseTo(0.494, 2);
    const sealed = {
      temperature: 25,
      composition: {},
      carbon: { kind: 'closed', dissolvedInorganicCarbon: 0 },
    } as const;
    const closed = equilibriumWithMineral(sealed, 'calcite');
    expect(closed.speciation.pH).toBeCloseTo(9.91, 1.7);
    expect(closed.dissolved).toBeCloseTo(0.123, 2);
    expect(Math.abs(equilibriumWithMineral(sealed, 'gypsum').dissolved / 15.2 - 1)).toBeLessThan(0.07);
  });

  it('ends at saturation from either side and dissolves more aragonite than calcite', () => {
    const water = fc.record({
      calcium: fc.double({ min: 0.01, max: 8, noNaN: true }),
      pressure: fc.double({ min: 1e-4, max: 0.05, noNaN: true }),
    });
    fc.assert(
      fc.property(water, ({ calcium, pressure }) => {
        const start: WaterState = {
          temperature: 20,
          composition: { calcium, chloride: calcium },
          carbon: open(pressure),
        };
        const calcite = equilibriumWithMineral(start, 'calcite');
        expect(Math.abs(calcite.speciation.saturationIndex.calcite)).toBeLessThan(1e-6);
        expect(equilibriumWithMineral(start, 'aragonite').dissolved).toBeGreaterThan(calcite.dissolved);
      }),
      { numRuns: 30 },
    );
  });

  it('refuses what has no answer', () => {
    const water = { temperature: 20, composition: {}, carbon: open(0.0004) };
    expect(() => equilibriumWithMineral({ ...water, pH: 7 }, 'calcite')).toThrow('given pH');
    expect(() => equilibriumWithMineral({ ...water, carbon: open(0) }, 'calcite')).toThrow('does not reach');
  });
});
