import { DISSOLVED_IDS, MOLAR_MASS, toPlanUnit, type WaterComposition } from '@shoreglass/engine';
import type { Library, Water } from '@shoreglass/library';
import type { EnclosureContent } from '../schema/enclosure.ts';
import { type Blend, concentrationOf } from '../schema/water.ts';
import { type Analysed, analysed, ownWater } from './analysis.ts';

export type { Analysed } from './analysis.ts';

const NONE = Object.fromEntries(DISSOLVED_IDS.map((id) => [id, 0])) as unknown as WaterComposition;

/** Copper of a water of the library [mol/m3]. */
function copperOf({ value, unit }: NonNullable<Water['copper']>): number {
  return (toPlanUnit(value, unit, 'mass concentration') * 1000) / MOLAR_MASS.copper;
}

/** A water of the library. @throws Error when a concentration is in a unit that does not measure it. */
export function libraryWater(water: Water): Analysed {
  const ions = Object.fromEntries(
    DISSOLVED_IDS.map((id) => {
      const { value, unit } = water.ions[id];
      const concentration = concentrationOf(id, value, unit);
      if (concentration === undefined) throw new Error(`${water.id}: ${unit} does not measure ${id}`);
      return [id, concentration];
    }),
  ) as unknown as WaterComposition;
  const { alkalinity } = water;
  const { name, origin } = water;
  return analysed({
    name,
    origin,
    ions: water.copper ? { ...ions, copper: copperOf(water.copper) } : ions,
    alkalinity: alkalinity && toPlanUnit(alkalinity.value, alkalinity.unit, 'charge concentration'),
  });
}

/** Finds waters by name: the file's own first, then the library's. */
export function waterFinder(content: EnclosureContent, library: Library): (id: string) => Analysed {
  const own = new Map((content.waters ?? []).map((water) => [water.id, water]));
  return (id) => {
    const found = own.get(id);
    return found ? ownWater(found) : libraryWater(library.water(id));
  };
}

/** A blend mixed by volume [mol/m3]; shares are taken relative to their sum. */
export function blendOf(blend: Blend, find: (id: string) => Analysed): WaterComposition {
  if (typeof blend === 'string') return find(blend).composition;
  const total = blend.reduce((sum, { share }) => sum + share, 0);
  return blend.reduce<WaterComposition>((mixed, { water, share }) => {
    const { composition } = find(water);
    const ions = Object.fromEntries(
      DISSOLVED_IDS.map((id) => [id, mixed[id] + (share / total) * composition[id]]),
    ) as unknown as WaterComposition;
    const copper = (mixed.copper ?? 0) + (share / total) * (composition.copper ?? 0);
    return copper > 0 ? { ...ions, copper } : ions;
  }, NONE);
}
