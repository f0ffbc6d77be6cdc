import type { Library } from '@shoreglass/library';
import { z } from 'zod';

const entry = z.object({
  id: z.string().describe('Name by which enclosure files refer to it.'),
  name: z.string(),
  kind: z.string().describe('Group, use or habitat within its list.'),
  about: z.string().optional(),
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

interface Listed {
  readonly id: string;
  readonly name: string;
  readonly about?: string | undefined;
  readonly cautions?: readonly string[] | undefined;
}

function listed<T extends Listed>(entries: Readonly<Record<string, T>>, kindOf: (entry: T) => string) {
  return Object.values(entries).map((each) => ({
    id: each.id,
    name: each.name,
    kind: kindOf(each),
    ...(each.about === undefined ? {} : { about: each.about }),
    cautions: [...(each.cautions ?? [])],
  }));
}

/** The library as a list to choose from. */
export function listLibrary({ data }: Library): LibraryListing {
  return {
    materials: listed(data.materials, ({ use }) => use),
    plants: listed(data.plants, ({ group }) => group),
    animals: listed(data.organisms, ({ habitat, group }) => `${group}, ${habitat}`),
    feeds: listed(data.feeds, () => 'feed'),
    waters: listed(data.waters, ({ origin }) => origin),
    salts: listed(data.salts, ({ formula }) => formula),
    series: Object.keys(data.series),
  };
}
