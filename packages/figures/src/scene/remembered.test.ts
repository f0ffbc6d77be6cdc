import { expect, test } from 'vitest';
import { remembered } from './remembered.ts';

test('the same owner and key give the same object, another key or owner a new one', () => {
  const memory = remembered<object, { readonly of: string }>();
  const [first, second] = [{}, {}];
  const made = memory(first, 'a', () => ({ of: 'first a' }));
  expect(memory(first, 'a', () => ({ of: 'again' }))).toBe(made);
  expect(memory(second, 'a', () => ({ of: 'second a' })).of).toBe('second a');
  expect(memory(first, 'b', () => ({ of: 'first b' })).of).toBe('first b');
  expect(memory(first, 'a', () => ({ of: 'made anew' })).of).toBe('made anew');
});
