import { expect, it } from 'vitest';
import { convert } from '../../units/convert.ts';
import { isMet } from './miss.ts';

const degrees = (value: number): number => convert(value, '°dGH', 'mol/m³');

it('animals that bear 4 to 18 degrees are served by 6.8, though 6 was aimed at', () => {
  const band = { quantity: 'GH', aim: degrees(6), low: degrees(4), high: degrees(18) } as const;
  expect(isMet(band, degrees(6.8))).toBe(true);
  expect(isMet(band, degrees(3.5))).toBe(false);
  expect(isMet(band, degrees(19))).toBe(false);
  expect(isMet({ quantity: 'GH', aim: degrees(6) }, degrees(6.8))).toBe(false);
  expect(isMet({ quantity: 'GH', aim: degrees(6) }, degrees(6.4))).toBe(true);
});
