import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { convert, toPlanUnit } from './convert.ts';
import { readQuantity } from './quantity.ts';
import { meaningsOf, readUnit, unitsOf } from './read-unit.ts';
import { PLAN_UNITS, UNITS, type Unit } from './units.ts';

const ALL = Object.keys(UNITS) as Unit[];

describe('convert', () => {
  // Exact by definition: inch 2.54 cm, US gallon 231 cubic inches, imperial gallon 4.54609 L, pound 0.45359237 kg.
  it.each([
    [1, 'in', 'cm', 2.54],
    [1, 'gal', 'L', 3.785411784],
    [1, 'imp gal', 'L', 4.54609],
    [1, 'lb', 'g', 453.59237],
    [212, '°F', '°C', 100],
    [-40, '°F', '°C', -40],
    [20, '°C', '°F', 68],
    [9, '°F', 'K', 5],
    [100, 'L/h', 'gal/h', 26.41720523581484],
    [1, 'week', 'h', 168],
  ])('%d %s is %d %s', (value, from, to, expected) => {
    expect(convert(value, from, to as string)).toBeCloseTo(expected as number, 10);
  });

  // water chemistry textbooks: 1 dGH = 0.1783 mmol/L = 17.85 mg/L CaCO3; 1 dKH = 0.3567 meq/L = 17.85 mg/L CaCO3.
  it.each([
    [1, '°dGH', 'mmol/L', 0.1783],
    [1, '°dGH', 'ppm CaCO3', 17.85],
    [1, '°dKH', 'meq/L', 0.3567],
    [1, '°dKH', 'ppm CaCO3', 17.85],
    [50.04, 'ppm CaCO3', 'meq/L', 1],
    [100.09, 'ppm CaCO3', 'mmol/L', 1],
    // Water hardness tables: 1 German degree is 1.785 French and 1.252 English degrees; 1 gpg is 17.12 ppm.
    [1, '°dGH', '°fH', 1.7848],
    [1, '°dGH', '°Clark', 1.2521],
    [1, 'gpg', 'ppm CaCO3', 17.118],
  ])('%d %s is about %d %s', (value, from, to, expected) => {
    const found = convert(value, from, to as string);
    expect(Math.abs(found / (expected as number) - 1)).toBeLessThan(4e-4);
  });

  it('refuses what cannot be meant', () => {
    expect(() => convert(1, 'cm', 'L')).toThrow('cannot be converted');
    expect(() => convert(1, 'furlong', 'm')).toThrow('not a unit');
    expect(() => convert(1, '°dGH', '°dKH')).toThrow('cannot be converted');
    expect(() => convert(Number.NaN, 'cm', 'm')).toThrow('finite');
    expect(() => toPlanUnit(5, '°dGH', 'charge concentration')).toThrow('does not measure');
  });

  it('goes there and back between all units of a dimension', () => {
    const pairs = ALL.flatMap((from) =>
      ALL.filter((to) =>
        meaningsOf(from).some((a) => meaningsOf(to).some((b) => a.dimension === b.dimension)),
      ).map((to) => [from, to] as const),
    );
    fc.assert(
      fc.property(fc.constantFrom(...pairs), fc.double({ min: -1e6, max: 1e6, noNaN: true }), ([a, b], x) => {
        const back = convert(convert(x, a, b), b, a);
        expect(Math.abs(back - x)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(x)));
      }),
    );
  });
});

describe('the table', () => {
  it('has for each dimension a unit of the plan with factor 1 and no offset', () => {
    for (const [dimension, unit] of Object.entries(PLAN_UNITS)) {
      const meaning = meaningsOf(unit).find((candidate) => candidate.dimension === dimension);
      expect(meaning, dimension).toMatchObject({ factor: 1, offset: 0 });
    }
  });
  it('finds each unit by its own name and lists it under its dimensions', () => {
    for (const unit of ALL) {
      expect(readUnit(unit)).toBe(unit);
      for (const { dimension } of meaningsOf(unit)) expect(unitsOf(dimension)).toContain(unit);
    }
  });
});

describe('readQuantity', () => {
  it.each([
    ['13 cm', 13, 'cm'],
    ['18.5°C', 18.5, '°C'],
    ['1,5 l', 1.5, 'L'],
    ['-2 °C', -2, '°C'],
    ['300 uS/cm', 300, 'µS/cm'],
    ['300 μS/cm', 300, 'µS/cm'],
    ['5 dKH', 5, '°dKH'],
    ['90 ppm CaCO₃', 90, 'ppm CaCO3'],
    ['2e3 L/h', 2000, 'L/h'],
    ['0.3 m2', 0.3, 'm²'],
  ])('%s', (text, value, unit) => {
    expect(readQuantity(text)).toEqual({ value, unit });
  });
  it.each([
    ['13', 'no unit'],
    ['cm', 'start with a number'],
    ['13 parsec', 'not known'],
    ['1e999 cm', 'too large'],
    ['13 cm and a bit', 'not known'],
    ['', 'start with a number'],
    ['1'.repeat(80), 'too long'],
  ])('%s is refused', (text, wrong) => {
    expect(readQuantity(text)).toMatchObject({ wrong: expect.stringContaining(wrong) });
  });
  it('never throws', () => {
    fc.assert(fc.property(fc.string(), (text) => void readQuantity(text)));
  });
});
