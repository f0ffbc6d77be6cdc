import { openEnclosure } from '@shoreglass/contract';
import { library } from '@shoreglass/library';
import { expect, test } from 'vitest';
import { findingLinks } from './finding-links.ts';

const TEXT = library.data.enclosures['beck-bank'] ?? '';
const { findings } = openEnclosure(TEXT, 'beck-bank.yaml');
const linksOf = (path: string, file: string | undefined = 'beck-bank') => {
  const finding = findings.find((each) => each.path === path);
  return finding ? findingLinks(finding, TEXT, file).map(({ href }) => href) : undefined;
};

test('a finding about an entry leads to its page, and to the place that changes it', () => {
  expect(linksOf('animals[0].species')).toEqual(['/life/beck-bank', '/library/organisms/hyalella-azteca']);
  expect(linksOf('plants[0].plant')).toEqual(['/life/beck-bank', '/library/plants/ceratophyllum-demersum']);
  expect(linksOf('zones[2].layers[0].material')).toEqual([
    '/shape/beck-bank',
    '/library/materials/false-bottom',
  ]);
  expect(linksOf('glass')).toEqual(['/shape/beck-bank']);
});

test('a text without a file has no place yet, and every entry that is named stands in the library', () => {
  const finding = findings.find(({ path }) => path === 'animals[0].species');
  expect(finding && findingLinks(finding, TEXT, undefined).map(({ href }) => href)).toEqual([
    '/library/organisms/hyalella-azteca',
  ]);
  for (const each of findings)
    for (const { href } of findingLinks(each, TEXT, undefined)) {
      const [, , list = '', id = ''] = href.split('/');
      expect(Object.keys(library.data[list as 'materials']), href).toContain(id);
    }
});
