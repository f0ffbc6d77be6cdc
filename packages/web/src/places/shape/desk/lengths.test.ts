import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lengthNumber, lengthText, lengthWritten, readTyped, stepOf, valueWritten } from './lengths.ts';

test('lengths are written without needless zeros, in either unit', () => {
  expect(lengthText(0.165, 'cm')).toBe('16.5\u00a0cm');
  expect(lengthWritten(0.08, 'cm')).toBe('8 cm');
  expect(lengthNumber(0.001, 'cm')).toBe('0.1');
  expect(lengthWritten(0.1651, 'in')).toBe('6.5 in');
});

test('what is written reads back, to a tenth of a millimetre', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 5, noNaN: true }), fc.constantFrom('cm', 'in'), (metres, unit) => {
      const back = readTyped(lengthWritten(metres, unit), 'length', unit);
      expect(Math.abs(Number(back) - metres)).toBeLessThan(unit === 'cm' ? 5.1e-5 : 1.28e-4);
    }),
  );
});

test('a bare number is of the unit beside the field; another unit may be typed', () => {
  expect(readTyped('17', 'length', 'cm')).toBeCloseTo(0.17, 12);
  expect(readTyped('17', 'length', 'in')).toBeCloseTo(0.4318, 12);
  expect(readTyped('6,5 in', 'length', 'cm')).toBeCloseTo(0.1651, 12);
  expect(readTyped('8', 'share', 'cm')).toBeCloseTo(0.08, 12);
  expect(readTyped('2 lb', 'mass', 'cm')).toBeCloseTo(0.90718474, 8);
});

test('what is no length is answered by a sentence with the mend', () => {
  expect(readTyped('', 'length', 'cm')).toEqual({
    wrong: 'This does not start with a number. Write a number, such as 12.5 cm.',
  });
  expect(readTyped('5 L', 'length', 'cm')).toEqual({ wrong: 'L does not measure a length. Write it in cm.' });
});

test('masses of a kilogram and more are written in kg', () => {
  expect(valueWritten(3.2, 'mass', 'cm')).toBe('3.2 kg');
  expect(valueWritten(0.42, 'mass', 'in')).toBe('420 g');
});

test('power, flow, warmth, hours and counts stand in units of the trade, and step by what suits their size', () => {
  const LITRE_AN_HOUR = 1e-3 / 3600;
  expect(valueWritten(400 * LITRE_AN_HOUR, 'water flow', 'cm')).toBe('400 L/h');
  expect(valueWritten(400 * LITRE_AN_HOUR, 'water flow', 'in')).toBe('105.669 gal/h');
  expect(valueWritten(22, 'temperature', 'in')).toBe('71.6 °F');
  expect(readTyped('75 F', 'temperature', 'cm')).toBeCloseTo((75 - 32) / 1.8, 9);
  expect(valueWritten((75 - 32) / 1.8, 'temperature', 'cm')).toBe('23.89 °C');
  expect(readTyped('90 min', 'hours', 'cm')).toBeCloseTo(1.5, 12);
  expect(valueWritten(0.25, 'hours', 'cm')).toBe('0.25 h');
  expect(readTyped('2', 'count', 'cm')).toBe(2);
  expect(readTyped('2.5', 'count', 'cm')).toEqual({ wrong: 'Write a whole number, such as 2.' });
  expect(stepOf({ dimension: 'water flow', value: 400 * LITRE_AN_HOUR }, 'cm')).toBeCloseTo(
    10 * LITRE_AN_HOUR,
    15,
  );
  expect(stepOf({ dimension: 'water flow', value: 0.2 * LITRE_AN_HOUR }, 'cm')).toBeCloseTo(
    0.01 * LITRE_AN_HOUR,
    15,
  );
  expect(stepOf({ dimension: 'power', value: 0 }, 'cm')).toBe(1);
});
