import type { LibraryListed, LibraryListing } from '@shoreglass/contract';

/** Lists in the order they are shown; the kind is the one of the entry's address. */
export const LISTS = [
  { kind: 'organisms', name: 'Animals', from: 'animals' },
  { kind: 'plants', name: 'Plants', from: 'plants' },
  { kind: 'feeds', name: 'Feeds', from: 'feeds' },
  { kind: 'materials', name: 'Materials', from: 'materials' },
  { kind: 'salts', name: 'Salts', from: 'salts' },
  { kind: 'waters', name: 'Waters', from: 'waters' },
] as const satisfies readonly {
  readonly kind: string;
  readonly name: string;
  readonly from: keyof LibraryListing;
}[];

export const HABITATS = [
  ['water', 'water'],
  ['amphibious', 'water and land'],
  ['land', 'land'],
] as const;

/** What is looked for; empty words stand for anything. */
export interface Wanted {
  readonly text: string;
  readonly list: string;
  readonly habitat: string;
  readonly need: string;
}

export interface Found {
  readonly kind: string;
  readonly name: string;
  readonly listed: readonly LibraryListed[];
}

const plain = (text: string): string => text.toLowerCase().normalize('NFD').replaceAll(/\p{M}/gu, '');

function fits(entry: LibraryListed, { text, habitat, need }: Wanted): boolean {
  if (habitat !== '' && entry.habitat !== habitat) return false;
  if (need !== '' && !entry.needs.includes(need)) return false;
  const { name, scientificName = '', about = '', kind, id, needs } = entry;
  const all = plain([name, scientificName, about, kind, id, ...needs].join(' '));
  return plain(text)
    .split(/\s+/)
    .every((word) => all.includes(word));
}

/** What fits, list by list. Every word must be found somewhere in the entry. */
export function found(library: LibraryListing, wanted: Wanted): Found[] {
  return LISTS.filter(({ kind }) => wanted.list === '' || wanted.list === kind).map(
    ({ kind, name, from }) => ({
      kind,
      name,
      listed: library[from]
        .filter((entry) => fits(entry, wanted))
        .sort((a, b) => a.name.localeCompare(b.name, 'en')),
    }),
  );
}

/** Every need that some entry has, in alphabetical order. */
export function needsAmong(library: LibraryListing): string[] {
  const all = LISTS.flatMap(({ from }) => library[from].flatMap(({ needs }) => needs));
  return [...new Set(all)].sort((a, b) => a.localeCompare(b, 'en'));
}
