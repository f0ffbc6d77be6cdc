import type { ChangeLimit, ChangeQuantity } from '@shoreglass/engine';
import type { Library } from '@shoreglass/library';
import type { EnclosureContent } from '../schema/enclosure.ts';

/** The library gives the conductivity in per cent of what it was. */
const FACTOR: Readonly<Record<ChangeQuantity, number>> = {
  pH: 1,
  KH: 1,
  conductivity: 0.01,
  waterTemperature: 1,
};

/** How fast the water may be changed for each species of which the library knows it, each species once. */
export function changeLimitsOf({ animals = [] }: EnclosureContent, library: Library): ChangeLimit[] {
  const species = [...new Set(animals.map((each) => each.species))].map(library.organism);
  return species.flatMap(({ name, fastestChange = {} }) =>
    (Object.keys(FACTOR) as ChangeQuantity[]).flatMap((quantity) => {
      const limit = fastestChange[quantity];
      if (!limit) return [];
      const { value, basis, source } = limit;
      return [{ quantity, perDay: value * FACTOR[quantity], owner: name, basis, source }];
    }),
  );
}
