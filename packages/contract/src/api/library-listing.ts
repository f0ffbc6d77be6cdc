import type { Library } from '@shoreglass/library';
import { z } from 'zod';
import { needsOfAnimal, needsOfPlant } from './library-needs.ts';

const entry = z.object({
  id: z.string().describe('Name by which enclosure files refer to it.'),
  name: z.string(),
  kind: z.string().describe('Group, use or habitat within its list.'),
  scientificName: z.string().optional(),
  about: z.string().optional(),
  known: z.enum(['well', 'fairly', 'poorly']).optional().describe('How well its numbers are known.'),
  habitat: z
    .enum(['water', 'amphibious', 'land'])
    .optional()
    .describe('Where it lives, for animals and plants.'),
  needs: z.array(z.string()).describe('Words to find it by: soft water, cool, tight lid.'),
  cautions: z.array(z.string()),
});

/** What enclosure files can refer to, by list. */
export const libraryListing = z.object({
  materials: z.array(entry),
  plants: z.array(entry),
  animals: z.array(entry),
  feeds: z.array(entry),
  waters: z.array(entry),
  salts: z.array(entry).describe('Salts to mix water with; the kind is the formula.'),
  series: z.array(z.string()).describe('Names of the measured rooms.'),
});

export type LibraryListing = z.infer<typeof libraryListing>;

export type LibraryListed = z.infer<typeof entry>;

interface Listed {
  readonly id: string;
  readonly name: string;
  readonly scientificName?: string | undefined;
  readonly about?: string | undefined;
  readonly known?: { readonly level: 'well' | 'fairly' | 'poorly' } | undefined;
  readonly cautions?: readonly string[] | undefined;
}

type Facets = Pick<LibraryListed, 'habitat' | 'needs'>;

function listed<T extends Listed>(
  entries: Readonly<Record<string, T>>,
  kindOf: (entry: T) => string,
  facetsOf: (entry: T) => Facets = () => ({ needs: [] }),
): LibraryListed[] {
  return Object.values(entries).map((each) => {
    const { id, name, scientificName, about, known, cautions = [] } = each;
    return {
      id,
      name,
      kind: kindOf(each),
      ...(scientificName === undefined ? {} : { scientificName }),
      ...(about === undefined ? {} : { about }),
      ...(known === undefined ? {} : { known: known.level }),
      ...facetsOf(each),
      cautions: [...cautions],
    };
  });
}

const PLANT_HABITAT = {
  submerged: 'water',
  floating: 'water',
  emersed: 'amphibious',
  moss: 'land',
  land: 'land',
} as const;

/** The library as a list to choose from. */
export function listLibrary({ data }: Library): LibraryListing {
  return {
    materials: listed(data.materials, ({ use }) => use),
    plants: listed(
      data.plants,
      ({ group }) => group,
      (plant) => ({ habitat: PLANT_HABITAT[plant.group], needs: needsOfPlant(plant) }),
    ),
    animals: listed(
      data.organisms,
      ({ habitat, group }) => `${group}, ${habitat}`,
      (animal) => ({ habitat: animal.habitat, needs: needsOfAnimal(animal) }),
    ),
    feeds: listed(data.feeds, () => 'feed'),
    waters: listed(data.waters, ({ origin }) => origin),
    salts: listed(data.salts, ({ formula }) => formula),
    series: Object.keys(data.series),
  };
}
