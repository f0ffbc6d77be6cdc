import type { Layer, Zone } from '@shoreglass/engine';
import type { Library } from '@shoreglass/library';
import type { ZoneContent } from '../schema/glass.ts';
import { plain } from './plain.ts';

/** Layers take their pores and surfaces from the library. @throws UnknownEntry, or Error for a material that is no layer. */
function layerOf(content: ZoneContent['layers'][number], library: Library): Layer {
  const material = library.material(content.material);
  const { kind, name = material.name, thickness = 0 } = content;
  if (material.use === 'litter')
    return {
      kind,
      material: material.id,
      name,
      thickness,
      porosity: LOOSE_LEAVES.porosity,
      filmSurface: LOOSE_LEAVES.filmSurface,
    };
  if (material.use !== 'layer') throw new Error(`${material.name} cannot be a layer`);
  return {
    kind,
    material: material.id,
    name,
    thickness,
    porosity: plain(material.porosity, 'share'),
    filmSurface: plain(material.filmSurface, 'area per volume'),
  };
}

/** Leaves lying on each other: pores, and both faces of leaves at 0.25 mm each. @source assumed */
const LOOSE_LEAVES = { porosity: 0.9, filmSurface: 800 } as const;

export function zonesOf(zones: readonly ZoneContent[], library: Library): Zone[] {
  return zones.map(({ id, name, kind, from, to, ground, layers }) => ({
    id,
    name: name ?? id,
    kind,
    from,
    to,
    groundStart: ground.left,
    groundEnd: ground.right,
    layers: layers.map((layer) => layerOf(layer, library)),
  }));
}
