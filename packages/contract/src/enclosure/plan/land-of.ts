import { type LandStart, type Layer, MOLAR_MASS, type Zone } from '@shoreglass/engine';
import type { Library } from '@shoreglass/library';
import type { Drawn } from './drawn-of.ts';
import { litterContents } from './pieces.ts';

/** Upper ground in which animals and fungi live [m]. @source assumed */
const ACTIVE_DEPTH = 0.03;
/** Organic carbon per dry mass of soils made of plants, and of mineral ones [kg/kg]. @source memory: 8 to 15 % in leaf mould, 1 % in sand */
const ORGANIC = 0.1;
const MINERAL = 0.01;
/** Carbon over nitrogen and phosphorus of soil organic matter by mass. @source memory: 15 to 25 and about 200 */
const CARBON_PER_NITROGEN = 20;
const CARBON_PER_PHOSPHORUS = 200;

/** Plan area of a zone, by its outline where it has one [m2]. */
function areaOf({ outline, from, to }: Zone, width: number): number {
  if (!outline) return (to - from) * width;
  let twice = 0;
  for (const [i, corner] of outline.entries()) {
    const next = outline[(i + 1) % outline.length]!;
    twice += corner.x * next.y - next.x * corner.y;
  }
  return Math.abs(twice) / 2;
}

function litterOf(layer: Layer, area: number, library: Library): readonly [number, number, number] {
  const material = library.material(layer.material);
  if (material.use !== 'litter') return [0, 0, 0];
  const { carbon, leachable, nitrogen, phosphorus } = litterContents(
    material,
    area * layer.thickness * (layer.bulkDensity ?? 0),
  );
  return [carbon + leachable, nitrogen, phosphorus];
}

function soilCarbonOf({ layers }: Zone, area: number): number {
  const top = layers.findLast(({ kind }) => kind === 'substrate');
  if (!top) return 0;
  const share = top.leachable && top.leachable.quick > 0 ? ORGANIC : MINERAL;
  return (area * ACTIVE_DEPTH * (top.bulkDensity ?? 0) * share * 1000) / MOLAR_MASS.carbon;
}

const LAND: ReadonlySet<Zone['kind']> = new Set(['bank', 'margin', 'island']);

/** Litter and active soil of the zones that stand out of the water. */
export function landOf({ zones, box }: Drawn, library: Library): LandStart {
  const sums = { litterCarbon: 0, litterNitrogen: 0, litterPhosphorus: 0, soilCarbon: 0 };
  for (const zone of zones.filter(({ kind }) => LAND.has(kind))) {
    const area = areaOf(zone, box.width);
    sums.soilCarbon += soilCarbonOf(zone, area);
    for (const layer of zone.layers.filter(({ kind }) => kind === 'litter')) {
      const [carbon, nitrogen, phosphorus] = litterOf(layer, area, library);
      sums.litterCarbon += carbon;
      sums.litterNitrogen += nitrogen;
      sums.litterPhosphorus += phosphorus;
    }
  }
  const soilMass = sums.soilCarbon * MOLAR_MASS.carbon;
  return {
    ...sums,
    soilNitrogen: soilMass / CARBON_PER_NITROGEN / MOLAR_MASS.nitrogen,
    soilPhosphorus: soilMass / CARBON_PER_PHOSPHORUS / MOLAR_MASS.phosphorus,
  };
}
