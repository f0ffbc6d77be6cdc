import { describe, expect, it } from 'vitest';
import type { WaterComposition } from '../plan/water-composition.ts';
import { compensatedTo25, conductivityAt } from './conductivity.ts';
import { dissolvedSolids } from './dissolved-solids.ts';
import { speciate } from './speciate.ts';

const closed = (dissolvedInorganicCarbon: number) => ({ kind: 'closed', dissolvedInorganicCarbon }) as const;

function conductivityOf(composition: Partial<WaterComposition>, temperature: number): number {
  const { free, ionicStrength } = speciate({ temperature: 25, composition, carbon: closed(0) });
  return conductivityAt(free, ionicStrength, temperature);
}

describe('conductivityAt', () => {
  // KCl standard solutions at 25 degC: 0.001 mol/L 147 uS/cm, 0.01 mol/L 1412 uS/cm (ISO 7888).
  it.each([
    [1, 147],
    [10, 1412],
  ])('is that of the potassium chloride standard of %d mol/m3', (amount, expected) => {
    const found = conductivityOf({ potassium: amount, chloride: amount }, 25);
    expect(Math.abs(found / expected - 1)).toBeLessThan(0.015);
  });
  // Equivalent conductances at 25 degC, 0.001 eq/L (CRC Handbook; recalled): NaCl 123.7, CaCl2 130.3, MgCl2 124.1,
  // Na2SO4 124.1 S cm2/eq.
  it.each([
    ['NaCl', { sodium: 1, chloride: 1 }, 123.7],
    ['CaCl2', { calcium: 0.5, chloride: 1 }, 130.3],
    ['MgCl2', { magnesium: 0.5, chloride: 1 }, 124.1],
    ['Na2SO4', { sodium: 1, sulfate: 0.5 }, 124.1],
  ])('is that of %s within 3 %%', (_salt, composition, expected) => {
    expect(Math.abs(conductivityOf(composition, 25) / expected - 1)).toBeLessThan(0.03);
  });
  // Pure water at 25 degC, theory: 0.055 uS/cm.
  it('is next to nothing in pure water', () => {
    expect(conductivityOf({}, 25)).toBeCloseTo(0.055, 2);
  });
  it('rises by about two per cent per kelvin, as meters compensate', () => {
    const salt = { sodium: 2, chloride: 2 };
    const at20 = conductivityOf(salt, 20);
    expect(Math.abs(compensatedTo25(at20, 20) / conductivityOf(salt, 25) - 1)).toBeLessThan(0.015);
    expect(compensatedTo25(100, 25)).toBe(100);
  });
});

describe('dissolvedSolids', () => {
  // Weighed in: 84.006 mg/L NaHCO3 dry at 180 degC to 53.0 mg/L Na2CO3 (molar masses).
  it('is the mass of the salts, and of what drying leaves', () => {
    const composition = { sodium: 1 };
    const solved = speciate({ temperature: 25, composition, carbon: closed(1.02) });
    const { sumOfIons, residueAt180 } = dissolvedSolids(composition, solved);
    expect(sumOfIons).toBeCloseTo(84, 0);
    expect(residueAt180).toBeCloseTo(53, 0);
  });
});
