import {
  type Handle,
  lengthMeasure,
  type MaterialName,
  type Measure,
  materialChoice,
  type ShapeContent,
} from './handle.ts';

/** Thinner than this a layer cannot be taken hold of in the drawing; it is typed [m]. */
const THIN = 0.006;

type Layer = ShapeContent['zones'][number]['layers'][number];

interface LayerPlace {
  readonly index: number;
  readonly position: number;
  /** Where it begins above the base [m]. */
  readonly bottom: number;
  /** Height of the glass [m]. */
  readonly room: number;
}

/** Every layer with its material; those below the topmost have a thickness, and a mark on their upper face. */
export function layerHandles(
  content: ShapeContent,
  ends: readonly { from: number; to: number }[],
  materials: readonly MaterialName[],
): Handle[] {
  return content.zones.flatMap((zone, index) => {
    const { from, to } = ends[index] ?? { from: 0, to: 0 };
    const count = zone.layers.length;
    let base = 0;
    return zone.layers.map((layer, position): Handle => {
      const bottom = base;
      const thickness = layer.thickness ?? 0;
      base += thickness;
      const place = { index, position, bottom, room: content.glass.height };
      const isTop = position === count - 1;
      const use = layer.kind === 'litter' ? 'litter' : 'layer';
      return {
        id: `layer:${zone.id}:${position}`,
        group: 'layers',
        name: `${zone.name ?? zone.id}: ${layer.name ?? layer.kind}`,
        measures: isTop ? [] : [thicknessOf(layer, place)],
        choices: [
          materialChoice(layer.material, ['zones', index, 'layers', position, 'material'], materials, use),
        ],
        ...(isTop || thickness < THIN
          ? {}
          : { inSection: { x: from + ((to - from) * (position + 1)) / count, z: bottom + thickness } }),
      };
    });
  });
}

function thicknessOf({ thickness = 0 }: Layer, { index, position, bottom, room }: LayerPlace): Measure {
  const measure = lengthMeasure({
    id: 'thickness',
    name: 'Thickness',
    value: thickness,
    low: 0.0002,
    high: Math.max(0.0002, room - bottom),
    path: ['zones', index, 'layers', position, 'thickness'],
  });
  if (thickness < THIN) return measure;
  return {
    ...measure,
    drag: { axis: 'z', position: bottom + thickness, valueAt: (z: number) => z - bottom },
  };
}
