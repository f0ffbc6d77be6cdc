import { describe, expect, it } from 'vitest';
import { alkalinityOf, generalHardness } from './hardness.ts';
import { dissolveSalts, readSalt } from './salts.ts';

describe('readSalt', () => {
  // Molar masses as printed on the bottle (CRC Handbook).
  it.each([
    ['CaSO4.2H2O', 172.17],
    ['CaSO4·2H2O', 172.17],
    ['MgSO4.7H2O', 246.47],
    ['CaCl2.2H2O', 147.01],
    ['CaCl2', 110.98],
    ['MgCl2.6H2O', 203.3],
    ['NaHCO3', 84.007],
    ['KHCO3', 100.115],
    ['K2SO4', 174.26],
    ['CaCO3', 100.09],
    ['Ca(OH)2', 74.09],
    ['Ca(NO3)2.4H2O', 236.15],
    ['NH4Cl', 53.49],
    ['KH2PO4', 136.09],
    ['Na2HPO4', 141.96],
    ['CaMg(CO3)2', 184.4],
    ['NaCl', 58.44],
  ])('%s has %d g/mol', (formula, mass) => {
    expect(Math.abs(readSalt(formula).molarMass - mass)).toBeLessThan(0.02);
  });
  it('counts ions', () => {
    expect(readSalt('Ca(NO3)2.4H2O').ions).toEqual({ calcium: 1, nitrate: 2 });
    expect(readSalt('CaMg(CO3)2')).toMatchObject({ ions: { calcium: 1, magnesium: 1 }, carbon: 2 });
    expect(readSalt('NH4NO3').ions).toEqual({ ammonium: 1, nitrate: 1 });
  });
  it.each(['', 'CaX2', 'Fe2O3', 'Ca(OH', 'CaOH)2', '2', 'Cat', 'CaCl2.', 'Cl)'])('refuses %j', (formula) => {
    expect(() => readSalt(formula)).toThrow(RangeError);
  });
});

describe('dissolveSalts', () => {
  // Keepers' rules: 3.0 g NaHCO3 in 100 L raise KH by 1 dKH (0.357 meq/L); 6.14 g CaSO4 2H2O raise GH by 2 dGH.
  it('gives the hardness of the bottle', () => {
    const { composition, dissolvedInorganicCarbon } = dissolveSalts({ NaHCO3: 30 });
    expect(alkalinityOf(composition)).toBeCloseTo(0.357, 3);
    expect(dissolvedInorganicCarbon).toBeCloseTo(0.357, 3);
    expect(generalHardness(dissolveSalts({ 'CaSO4.2H2O': 61.4 }).composition)).toBeCloseTo(2 * 0.1783, 3);
    expect(alkalinityOf(dissolveSalts({ 'CaSO4.2H2O': 61.4 }).composition)).toBeCloseTo(0, 12);
  });
  it('refuses what cannot be weighed', () => {
    expect(() => dissolveSalts({ NaCl: -1 })).toThrow('NaCl');
    expect(() => dissolveSalts({ NaCl: Number.NaN })).toThrow('NaCl');
  });
});
