import { isEnclosureId } from '@shoreglass/contract';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { slugOf } from './slug.ts';

test('a name becomes a file name people recognise', () => {
  expect(slugOf('Alder corner')).toBe('alder-corner');
  expect(slugOf('  Großer Teich, Nº 2 ')).toBe('gro-er-teich-no-2');
  expect(slugOf('Étang')).toBe('etang');
  expect(slugOf('***')).toBe('');
});

test('whatever the name, the file name is one the server takes, or empty', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary' }), (name) => {
      const slug = slugOf(name);
      expect(slug === '' || isEnclosureId(slug)).toBe(true);
    }),
  );
});
