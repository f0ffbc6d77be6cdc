import { expect, test } from 'vitest';
import { placesInRow } from './row-of-places.ts';

test('a narrow row holds what can be hit with a finger, the others stand behind its button', () => {
  // A phone: four places of today and the button; of eight, five and the button.
  expect(placesInRow(4, 390)).toBe(4);
  expect(placesInRow(8, 390)).toBe(5);
  expect(placesInRow(4, 320)).toBe(4);
  expect(placesInRow(8, 320)).toBe(4);
  for (let width = 130; width < 800; width += 7)
    expect(width / (placesInRow(8, width) + 1)).toBeGreaterThanOrEqual(44);
  expect(placesInRow(8, 1400)).toBe(8);
  expect(placesInRow(4, 0)).toBe(4);
});
