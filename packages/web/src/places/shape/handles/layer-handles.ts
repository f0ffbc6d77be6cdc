import { type Handle, lengthMeasure, type ShapeContent } from './handle.ts';

/** Thinner than this a layer cannot be taken hold of in the drawing; it is typed [m]. */
const THIN = 0.006;

/** The upper face of every layer below the topmost, and slabs over the ground. */
export function layerHandles(content: ShapeContent, ends: readonly { from: number; to: number }[]): Handle[] {
  return content.zones.flatMap((zone, index) => {
    const { from, to } = ends[index] ?? { from: 0, to: 0 };
    const lower = zone.layers.slice(0, -1);
    let base = 0;
    return lower.map((layer, position): Handle => {
      const thickness = layer.thickness ?? 0;
      const bottom = base;
      base += thickness;
      const measure = lengthMeasure({
        id: 'thickness',
        name: 'Thickness',
        value: thickness,
        low: 0.0002,
        high: Math.max(0.0002, content.glass.height - bottom),
        path: ['zones', index, 'layers', position, 'thickness'],
      });
      const seen = thickness >= THIN;
      return {
        id: `layer:${zone.id}:${position}`,
        group: 'layers',
        name: `${zone.name ?? zone.id}: ${layer.name ?? layer.kind}`,
        measures: [
          seen
            ? {
                ...measure,
                drag: { axis: 'z', position: bottom + thickness, valueAt: (z: number) => z - bottom },
              }
            : measure,
        ],
        ...(seen
          ? {
              inSection: {
                x: from + ((to - from) * (position + 1)) / (lower.length + 1),
                z: bottom + thickness,
              },
            }
          : {}),
      };
    });
  });
}
