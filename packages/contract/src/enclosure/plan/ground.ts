import { type Corner, endsOf, type Layer, type Zone } from '@shoreglass/engine';
import type { Library } from '@shoreglass/library';
import type { ZoneContent } from '../schema/glass.ts';
import { exchangerOf, leachableOf, phosphateBinderOf } from './exchanger-of.ts';
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
      bulkDensity: plain(material.density, 'density') * (1 - LOOSE_LEAVES.porosity),
    };
  if (material.use !== 'layer') throw new Error(`${material.name} cannot be a layer`);
  const bulkDensity = plain(material.bulkDensity, 'density');
  const exchanger = exchangerOf(material, bulkDensity);
  const leachable = leachableOf(material, bulkDensity);
  const phosphateBinder = phosphateBinderOf(material, bulkDensity);
  return {
    kind,
    material: material.id,
    name,
    thickness,
    porosity: plain(material.porosity, 'share'),
    filmSurface: plain(material.filmSurface, 'area per volume'),
    bulkDensity,
    ...(exchanger ? { exchanger } : {}),
    ...(leachable ? { leachable } : {}),
    ...(phosphateBinder ? { phosphateBinder } : {}),
    ...(material.heldWater ? { heldWater: plain(material.heldWater, 'share') } : {}),
    ...(material.capillaryRise ? { capillaryRise: plain(material.capillaryRise, 'length') } : {}),
  };
}

/** Leaves lying on each other: pores, and both faces of leaves at 0.25 mm each. @source assumed */
const LOOSE_LEAVES = { porosity: 0.9, filmSurface: 800 } as const;

type Ends = Pick<Zone, 'from' | 'to' | 'groundStart' | 'groundEnd'>;

/** Heights at left and right, front and back; one for level ground. */
function heightsOf({ left, right, front, back }: NonNullable<ZoneContent['ground']>) {
  if (front === undefined && back === undefined) {
    const level = left ?? right ?? 0;
    return { along: true, low: left ?? level, high: right ?? level } as const;
  }
  const level = front ?? back ?? 0;
  return { along: false, low: front ?? level, high: back ?? level } as const;
}

/** Corners with the heights they carry, or those of a slope between the zone's ends. */
function outlineOf(corners: NonNullable<ZoneContent['outline']>, ground: ZoneContent['ground']): Corner[] {
  const { along, low, high } = heightsOf(ground ?? {});
  const position = corners.map(({ x, y }) => (along ? x : y));
  const start = Math.min(...position);
  const span = Math.max(...position) - start;
  return corners.map((corner, i) => ({
    x: corner.x,
    y: corner.y,
    ground: corner.ground ?? low + (span > 0 ? ((high - low) * (position[i]! - start)) / span : 0),
  }));
}

/** Where the zone lies, `width` that of the box. */
function placeOf(
  { outline, ground, from = 0, to = 0 }: ZoneContent,
  width: number,
): Ends & Pick<Zone, 'outline'> {
  if (outline) {
    const corners = outlineOf(outline, ground);
    return { ...endsOf(corners, width / 2), outline: corners };
  }
  const { along, low, high } = heightsOf(ground ?? {});
  if (along) return { from, to, groundStart: low, groundEnd: high };
  const middle = (low + high) / 2;
  return {
    from,
    to,
    groundStart: middle,
    groundEnd: middle,
    outline: [
      { x: from, y: 0, ground: low },
      { x: to, y: 0, ground: low },
      { x: to, y: width, ground: high },
      { x: from, y: width, ground: high },
    ],
  };
}

/** Stone a slab is of when the file does not say. */
const USUAL_SLAB = 'slate';

function roofOf(
  { bottom, top, material: id = USUAL_SLAB }: NonNullable<ZoneContent['roof']>,
  library: Library,
): NonNullable<Zone['roof']> {
  const material = library.material(id);
  if (material.use !== 'stone') throw new Error(`${material.name} cannot be a slab`);
  return { bottom, top, density: plain(material.density, 'density') };
}

/** @param width of the box [m] */
export function zonesOf(zones: readonly ZoneContent[], library: Library, width: number): Zone[] {
  return zones.map((zone) => ({
    id: zone.id,
    name: zone.name ?? zone.id,
    kind: zone.kind,
    ...placeOf(zone, width),
    layers: zone.layers.map((layer) => layerOf(layer, library)),
    ...(zone.roof ? { roof: roofOf(zone.roof, library) } : {}),
  }));
}
