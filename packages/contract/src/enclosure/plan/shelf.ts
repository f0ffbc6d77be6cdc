import type { BufferOffer, RecipeSalt, SourceWater } from '@shoreglass/engine';
import { library as bundled, type Library, type MaterialOf } from '@shoreglass/library';
import type { EnclosureContent } from '../schema/enclosure.ts';
import type { OwnWater } from '../schema/water.ts';
import { ownWater } from './analysis.ts';
import { carbonateContents } from './pieces.ts';
import { plain } from './plain.ts';
import { libraryWater } from './water-of.ts';

/** A water that can be mixed from. */
export interface ShelfWater extends SourceWater {
  /** Of the file's own `waters`, or of the library. */
  readonly from: 'file' | 'library';
  readonly cautions: readonly string[];
}

/** A salt that can be weighed, and what it is used for. */
export interface ShelfSalt extends RecipeSalt {
  readonly use: string;
}

/** A carbonate that can be put in as a buffer. */
export interface ShelfCarbonate extends BufferOffer {
  /** Sizes it is sold in: smallest, usual, largest grain diameter [m]. */
  readonly usualGrain: number;
  readonly cautions: readonly string[];
}

/** An own water as one to mix from. */
export function ownSource(own: OwnWater): ShelfWater {
  const { name, origin, composition, assumed } = ownWater(own);
  return { id: own.id, name, composition, assumed, kind: origin, from: 'file', cautions: [] };
}

/** The waters a file can be mixed from: its own first, then those of the library that it does not name itself. */
export function shelfWaters(
  { waters = [] }: Pick<EnclosureContent, 'waters'>,
  library: Library = bundled,
): ShelfWater[] {
  const own = waters.map(ownSource);
  const others = Object.values(library.data.waters)
    .filter(({ id }) => own.every((water) => water.id !== id))
    .map((water): ShelfWater => {
      const { name, origin, composition, assumed } = libraryWater(water);
      const { id, cautions = [] } = water;
      return { id, name, composition, assumed, kind: origin, from: 'library', cautions };
    });
  return [...own, ...others];
}

/** The library's salts in the plan's units. */
export function shelfSalts(library: Library = bundled): ShelfSalt[] {
  return Object.values(library.data.salts).map((salt) => ({
    id: salt.id,
    name: salt.name,
    formula: salt.formula,
    purity: plain(salt.purity, 'share'),
    solubility: plain(salt.solubility, 'mass concentration'),
    bulkDensity: plain(salt.bulkDensity, 'density'),
    dissolving: salt.dissolving,
    cautions: salt.cautions ?? [],
    use: salt.use,
  }));
}

/** The library's carbonates as what one kilogram of each would be in the water. */
export function shelfCarbonates(library: Library = bundled): ShelfCarbonate[] {
  return Object.values(library.data.materials)
    .filter((material): material is MaterialOf<'carbonate'> => material.use === 'carbonate')
    .map((material) => {
      const grain = plain(material.grain, 'length');
      return {
        material: material.id,
        name: material.name,
        perKilogram: {
          id: `${material.id}-buffer`,
          name: material.name,
          kind: 'carbonate',
          material: material.id,
          mass: 1,
          volume: 1 / plain(material.density, 'density'),
          course: [],
          contents: carbonateContents(material, 1),
          grain,
        },
        grains: [grain],
        usualGrain: grain,
        cautions: material.cautions ?? [],
      };
    });
}
