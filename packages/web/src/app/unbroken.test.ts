import { expect, test } from 'vitest';
import { unbroken } from './unbroken.ts';

test('a number and its unit keep to one line, other words break as they like', () => {
  expect(unbroken('at least 24 °C for the first, 1 °C apart')).toBe(
    'at least 24\u00a0°C for the first, 1\u00a0°C apart',
  );
  expect(unbroken('1800 cm² of land, 50 %, 5 mg/L')).toBe('1800\u00a0cm² of land, 50\u00a0%, 5\u00a0mg/L');
  expect(unbroken('take 5 more, 3 mature animals and 2 glasses')).toBe(
    'take 5 more, 3 mature animals and 2 glasses',
  );
});
