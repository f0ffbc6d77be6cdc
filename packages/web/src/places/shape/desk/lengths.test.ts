import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lengthNumber, lengthText, lengthWritten, readTyped, valueWritten } from './lengths.ts';

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
