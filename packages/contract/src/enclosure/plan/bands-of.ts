import type { Band, SeriesId } from '@shoreglass/engine';
import type { Library, Quantity, Tolerances } from '@shoreglass/library';
import type { EnclosureContent } from '../schema/enclosure.ts';

type Bound = Pick<Quantity, 'value' | 'basis' | 'source'>;

/** One band where both bounds come from the same place, else one for each. */
function bandsFrom(
  series: SeriesId,
  owner: string,
  { low, high }: { low?: Bound | undefined; high?: Bound | undefined },
): Band[] {
  const shared = low && high && low.basis === high.basis && low.source === high.source;
  if (shared)
    return [{ series, low: low.value, high: high.value, owner, basis: low.basis, source: low.source }];
  return [
    ...(low ? [{ series, low: low.value, owner, basis: low.basis, source: low.source }] : []),
    ...(high ? [{ series, high: high.value, owner, basis: high.basis, source: high.source }] : []),
  ];
}

function bandsOfOwner(owner: string, tolerances: Tolerances | undefined): Band[] {
  return Object.entries(tolerances ?? {}).flatMap(([series, range]) =>
    range ? bandsFrom(series as SeriesId, owner, range) : [],
  );
}

/** First day on which any of a species is there. */
function arrivalOf(species: string, animals: NonNullable<EnclosureContent['animals']>): number {
  return Math.min(...animals.flatMap((each) => (each.species === species ? [each.after ?? 0] : [])));
}

/**
 * The bands of everyone who lives in the enclosure, each species once; those of animals from the day they arrive. Nobody
 * keeps the water for what came along by accident.
 */
export function bandsOf(content: EnclosureContent, library: Library): Band[] {
  const wanted = ({ chance }: { readonly chance?: number | undefined }): boolean => chance === undefined;
  const animals = (content.animals ?? []).filter(wanted);
  const plants = (content.plants ?? []).filter(wanted);
  const species = [...new Set(animals.map((each) => each.species))];
  const planted = [...new Set(plants.map((each) => each.plant))].map(library.plant);
  return [
    ...species.flatMap((id) => {
      const { name, tolerances } = library.organism(id);
      const fromDay = arrivalOf(id, animals);
      return bandsOfOwner(name, tolerances).map((band) => ({ ...band, fromDay }));
    }),
    ...planted.flatMap(({ name, tolerances }) => bandsOfOwner(name, tolerances)),
  ];
}
