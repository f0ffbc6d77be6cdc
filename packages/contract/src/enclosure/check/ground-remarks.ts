import { type Plan, wetLayers } from '@shoreglass/engine';
import type { Remark } from './finding.ts';

/** Soil under water worth telling of [m3]: a litre. @source assumed */
const LEAST = 1e-3;

/** Ground of a bank that exchanges cations or leaches, and yet stands in the water. */
export function groundRemarks({ box, zones, water }: Plan): Remark[] {
  return zones.flatMap((zone, index): Remark[] => {
    if (zone.kind !== 'bank') return [];
    return wetLayers({ box, zones: [zone] }, water.level).flatMap(({ layer, volume }): Remark[] => {
      const soil = layer.kind === 'substrate' && (layer.exchanger || layer.leachable);
      if (!soil || volume < LEAST) return [];
      return [
        {
          severity: 'warning',
          path: ['zones', index, 'layers', zone.layers.indexOf(layer)],
          message: `${(volume * 1000).toFixed(0)} L of this ground stand below the water level; ground that never drains goes foul, and what it exchanges and gives off sets the pool’s hardness, acidity and colour`,
          mend: 'Raise the drainage under it to the water level, lower the water, or take sand or gravel there.',
          source: 'common practice, no source',
        },
      ];
    });
  });
}
