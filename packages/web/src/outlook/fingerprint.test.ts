import { expect, test } from 'vitest';
import { fingerprint } from './fingerprint.ts';
import { inventedOutlook, inventedSeries } from './testdata/invented-outlook.ts';

const of = (...expected: number[]) =>
  fingerprint({ ...inventedOutlook({}), series: { a: { ...inventedSeries('a', ''), expected } } });

test('it is FNV-1a over the bytes of the numbers', () => {
  // The offset basis itself, and the eight bytes of 1.0, hashed by a separate program.
  expect(of()).toBe('811c9dc501234567');
  expect(of(1)).toBe('8c6a98783a088db6');
});

test('the last bit of a number, its sign and its place all count', () => {
  const prints = [of(1, 2), of(2, 1), of(1 + Number.EPSILON, 2), of(0), of(-0)];
  expect(new Set(prints).size).toBe(prints.length);
});
