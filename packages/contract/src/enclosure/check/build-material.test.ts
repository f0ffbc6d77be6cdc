import { library } from '@shoreglass/library';
import { expect, it } from 'vitest';
import { openEnclosure } from './check-enclosure.ts';

it('what a box is built of is no piece in it, and the finding says so at its place', () => {
  const text = library.enclosure('beck-bank').replace('material: slate', 'material: float-glass');
  const { plan, findings } = openEnclosure(text, 'beck-bank.yaml');
  expect(plan).toBeUndefined();
  const [first] = findings;
  expect(first?.severity).toBe('blocking');
  expect(first?.message).toBe('float glass is for building the box and cannot be used here');
  expect(first?.path).toBe('hardscape[1].material');
});
