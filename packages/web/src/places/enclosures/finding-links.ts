import type { LocatedFinding } from '@shoreglass/contract';

export interface FindingLink {
  readonly words: string;
  readonly href: string;
}

/** Places of the app where what stands under a key of the file is changed. */
const PLACES: Readonly<Record<string, readonly [place: string, name: string]>> = {
  glass: ['shape', 'Shape'],
  cover: ['shape', 'Shape'],
  zones: ['shape', 'Shape'],
  hardscape: ['shape', 'Shape'],
  devices: ['shape', 'Shape'],
  water: ['water', 'Water'],
  waters: ['water', 'Water'],
  settled: ['water', 'Water'],
  animals: ['life', 'Life'],
  plants: ['life', 'Life'],
  routines: ['life', 'Life'],
};

/** Lists of the library by the key that names an entry in the file. */
const LISTS: Readonly<Record<string, string>> = {
  species: 'organisms',
  plant: 'plants',
  material: 'materials',
  feed: 'feeds',
};

/**
 * Where a finding can be mended or read about: the place of the app that changes it, and the page of the library entry
 * that its line names.
 * @param file id of the saved file; nothing for a text that has none yet
 */
export function findingLinks(
  { path, line, column }: Pick<LocatedFinding, 'path' | 'line' | 'column'>,
  text: string,
  file: string | undefined,
): FindingLink[] {
  const place = PLACES[/^[a-z-]+/.exec(path)?.[0] ?? ''];
  const written = (text.split('\n')[line - 1] ?? '').slice(column - 1);
  const [, key = '', entry] = /^([a-z-]+):\s*['"]?([a-z0-9]+(?:-[a-z0-9]+)*)/.exec(written) ?? [];
  const list = LISTS[key];
  return [
    ...(place && file !== undefined ? [{ words: `In ${place[1]}`, href: `/${place[0]}/${file}` }] : []),
    ...(list && entry ? [{ words: 'In the library', href: `/library/${list}/${entry}` }] : []),
  ];
}
