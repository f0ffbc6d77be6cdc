import { expect, test } from 'vitest';
import { AMOUNTS } from './amount-kind.ts';
import { amountRepeated, isAmount, type ReadAmount, readAmount } from './read-amount.ts';

const plain = (text: string) => text.replaceAll('\u00a0', ' ');
const readValue = (read: ReadAmount) => (isAmount(read) ? read.value : Number.NaN);
const wrongOf = (read: ReadAmount) => (read && 'wrong' in read ? read.wrong : '');

// Water hardness tables: 1 German degree = 17.85 mg/L CaCO3 = 0.1783 mmol/L, 0.3567 meq/L of alkalinity.
test.each([
  ['6', 1.07],
  ['6 dGH', 1.07],
  ['6°', 1.07],
  ['6,0 °dH', 1.07],
  ['107 ppm', 1.069],
  ['107 mg/l', 1.069],
  ['2.14 meq/L', 1.07],
  ['1.07 mmol/l', 1.07],
  ['10.7 °fH', 1.069],
  ['6.25 gpg', 1.069],
])('general hardness %s is about %d mmol/L', (text, expected) => {
  expect(Math.abs(readValue(readAmount(text, AMOUNTS.GH)) / expected - 1)).toBeLessThan(2e-3);
});

// Acid capacity in mmol/L and alkalinity in meq/L are the same number; 50.04 mg/L CaCO3 is 1 meq/L.
test.each([
  ['4', 1.427],
  ['71.4 ppm', 1.427],
  ['1.43 mmol/L', 1.43],
  ['1.43 meq', 1.43],
])('carbonate hardness %s is about %d meq/L', (text, expected) => {
  expect(Math.abs(readValue(readAmount(text, AMOUNTS.KH)) / expected - 1)).toBeLessThan(2e-3);
});

test('a nitrate strip counts the ion, a model its nitrogen: 50 mg/L is 11.3 mg N/L', () => {
  expect(readValue(readAmount('50', AMOUNTS.nitrate))).toBeCloseTo(11.29, 1);
  expect(readValue(readAmount('11.3 mg N/L', AMOUNTS.nitrate))).toBe(11.3);
  expect(readValue(readAmount('< 0,05 mg/L', AMOUNTS.nitrite))).toBeCloseTo(0.0152, 3);
});

test('the remembered unit counts where none is written, and is said', () => {
  const read = readAmount('107', AMOUNTS.GH, 'ppm CaCO3');
  expect(readValue(read)).toBeCloseTo(1.069, 2);
  expect(isAmount(read) && plain(amountRepeated(read, AMOUNTS.GH))).toBe(
    '107 ppm CaCO3 = 6 °dGH = 1.07 mmol/L',
  );
});

test('what cannot be read says why', () => {
  expect(readAmount('  ', AMOUNTS.GH)).toBeUndefined();
  expect(wrongOf(readAmount('hard', AMOUNTS.GH))).toMatch(/^Begin with a number/);
  expect(wrongOf(readAmount('6 cups', AMOUNTS.GH))).toMatch(/no unit of general hardness here; write °dGH/);
  expect(wrongOf(readAmount('250 ppm', AMOUNTS.conductivity))).toMatch(/factor/);
  expect(wrongOf(readAmount('700', AMOUNTS.pH))).toMatch(/outside 2 to 12/);
  expect(wrongOf(readAmount('-3 dKH', AMOUNTS.KH))).toMatch(/outside 0 to/);
});

test('degrees Fahrenheit go both ways', () => {
  const read = readAmount('68 F', AMOUNTS.temperature);
  expect(readValue(read)).toBeCloseTo(20, 6);
  expect(isAmount(read) && plain(amountRepeated(read, AMOUNTS.temperature))).toBe('20 °C');
});

test('a word before the number makes it a limit', () => {
  expect(readAmount('at most 20 mg/L', AMOUNTS.sodium)).toMatchObject({ value: 20, limit: 'high' });
  expect(readAmount('>= 4 dKH', AMOUNTS.KH)).toMatchObject({ limit: 'low' });
  expect(readAmount('about 6', AMOUNTS.GH)).not.toHaveProperty('limit');
});
