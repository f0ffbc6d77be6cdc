import type { LibraryListed } from '@shoreglass/contract';
import type { SoundLife } from '../../../worker/life-orders.ts';
import type { Draft } from './draft.ts';

/** Kinds of zone in which to begin, the best first. */
const FITTING = {
  water: ['pool', 'stream', 'margin'],
  amphibious: ['margin', 'bank', 'island', 'stream', 'pool'],
  land: ['bank', 'island', 'canopy', 'wall', 'cave', 'margin'],
} as const;

/** Where one of a habitat is placed at first: the first zone of the most fitting kind, else the first. */
export function firstZone(zones: SoundLife['zones'], habitat: LibraryListed['habitat']): string {
  for (const kind of FITTING[habitat ?? 'water']) {
    const zone = zones.find((each) => each.kind === kind);
    if (zone) return zone.id;
  }
  return zones[0]?.id ?? '';
}

export type NewcomerList = 'animals' | 'plants';

/** A common number to begin with, so that the sheet can say at once whether it is too few. */
const FIRST_ADULTS = '10';
const FIRST_COVER = '10';

/** The draft with one more from the library. */
export function withNewcomer(
  draft: Draft,
  list: NewcomerList,
  entry: LibraryListed,
  zones: SoundLife['zones'],
): Draft {
  const { id, name, habitat } = entry;
  const zone = firstZone(zones, habitat);
  if (list === 'animals') {
    const row = { species: id, name, zone, adults: FIRST_ADULTS, juveniles: '', after: '28', chance: '' };
    return { ...draft, animals: [...draft.animals, row] };
  }
  return {
    ...draft,
    plants: [...draft.plants, { plant: id, name, zone, cover: FIRST_COVER, fragments: false, chance: '' }],
  };
}

/** Whether the draft has it already. */
export function isIn({ animals, plants }: Draft, list: NewcomerList, id: string): boolean {
  return list === 'animals'
    ? animals.some(({ species }) => species === id)
    : plants.some(({ plant }) => plant === id);
}
