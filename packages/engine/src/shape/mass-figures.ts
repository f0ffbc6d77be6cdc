import { WATER_DENSITY } from '../climate/moisture-pools.ts';
import { GRAVITY } from '../climate/openings.ts';
import type { LayerKind, Plan } from '../plan/plan.ts';
import { floorPressure, netUplift, paneMass } from '../structure/loads.ts';
import { moistDensity } from '../structure/wet-media.ts';
import { layerVolumes, type ShapeGround, shareBelow } from './shape-ground.ts';
import type { MassFigures } from './shape-sheet.ts';

/** Where the library tells nothing [kg/m3; 1]. @source assumed */
const USUAL: Readonly<Record<LayerKind, { readonly density: number; readonly held: number }>> = {
  'false bottom': { density: 45, held: 0.01 },
  drainage: { density: 700, held: 0.1 },
  foam: { density: 28, held: 0.05 },
  mesh: { density: 500, held: 0.05 },
  substrate: { density: 1000, held: 0.3 },
  litter: { density: 40, held: 0.1 },
};

const PART_NAMES: Readonly<Record<LayerKind, string>> = {
  'false bottom': 'false bottom',
  drainage: 'drainage, moist',
  foam: 'foam',
  mesh: 'mesh',
  substrate: 'substrate, moist',
  litter: 'litter, moist',
};

function glassMass({
  length,
  width,
  height,
  glassThickness: t,
  coverOpenFraction,
  secondPane,
}: Plan['box']): number {
  const base = paneMass((length + 2 * t) * (width + 2 * t), t);
  const walls = paneMass(2 * (length + 2 * t + width) * height, t);
  const cover = paneMass(length * width * (1 - coverOpenFraction), Math.min(t, 0.004));
  return base + walls + cover + (secondPane ? paneMass(length * height, secondPane.thickness) : 0);
}

interface GroundMasses {
  readonly byKind: ReadonlyMap<LayerKind, number>;
  readonly uplift: MassFigures['uplift'];
}

/** Layers with the water they hold above the level; below it their pores are counted as water. */
function groundMasses({ plan, patches }: ShapeGround): GroundMasses {
  const { level } = plan.water;
  const byKind = new Map<LayerKind, number>();
  const uplift: { name: string; force: number; place: string }[] = [];
  for (const [i, zone] of plan.zones.entries()) {
    let above = 0;
    for (const { layer, volume, underWater } of layerVolumes(zone, patches[i]!, level).reverse()) {
      const { density, held } = USUAL[layer.kind];
      const dry = layer.bulkDensity ?? density;
      const moist = moistDensity(dry, Math.min(layer.porosity, layer.heldWater ?? held), WATER_DENSITY);
      const mass = underWater * dry + (volume - underWater) * moist;
      byKind.set(layer.kind, (byKind.get(layer.kind) ?? 0) + mass);
      // Solid matter and closed pores push up; the layer itself and all that lies on it holds down.
      const push = underWater * (1 - layer.porosity) * WATER_DENSITY;
      const force = (push - mass - above) * GRAVITY;
      if (force > 0)
        uplift.push({
          name: `${layer.name} in ${zone.name}`,
          force,
          place: `zones.${zone.id}.layers.${zone.layers.indexOf(layer)}`,
        });
      above += mass - push;
    }
  }
  return { byKind, uplift };
}

/** Slabs over caves, as far as the ground below them leaves room [kg]. */
function roofMass({ plan, patches }: ShapeGround): number {
  return plan.zones.reduce((sum, { roof }, i) => {
    if (!roof) return sum;
    const area = patches[i]!.reduce((all, patch) => all + patch.area * shareBelow(patch, roof.bottom), 0);
    return sum + area * (roof.top - roof.bottom) * roof.density;
  }, 0);
}

/**
 * Returns masses by part [kg], the load on floor [Pa] and stand [N/m], and what floats up [N].
 * @param ground of a plan that can be drawn
 * @source derived; en-572 for glass
 */
export function massFigures(ground: ShapeGround): MassFigures {
  const { plan, geometry } = ground;
  const { box } = plan;
  const water = geometry.volumeAt(plan.water.level) * WATER_DENSITY;
  const { byKind, uplift } = groundMasses(ground);
  const pieces = (kinds: readonly string[]) =>
    plan.hardscape.filter(({ kind }) => kinds.includes(kind)).reduce((sum, { mass }) => sum + mass, 0);
  const parts = [
    { name: 'glass', mass: glassMass(box) },
    { name: 'water', mass: water },
    ...[...byKind].map(([kind, mass]) => ({ name: PART_NAMES[kind], mass })),
    { name: 'stone and carbonate', mass: pieces(['stone', 'carbonate']) },
    { name: 'slabs over caves', mass: roofMass(ground) },
    { name: 'wood and loose litter, dry', mass: pieces(['wood', 'litter']) },
  ].filter(({ mass }) => mass > 0);
  const total = parts.reduce((sum, { mass }) => sum + mass, 0);
  const outerLength = box.length + 2 * box.glassThickness;
  const outerWidth = box.width + 2 * box.glassThickness;
  const wood = plan.hardscape
    .filter(({ kind, course, volume }) => kind === 'wood' && course.length > 0 && volume > 0)
    .map(({ id, name, mass, volume }) => ({
      name,
      force: netUplift(volume, mass / volume, WATER_DENSITY),
      place: `hardscape.${id}`,
    }))
    .filter(({ force }) => force > 0);
  return {
    parts,
    total,
    drained: total - water,
    floorPressure: floorPressure(total, outerLength * outerWidth),
    standLineLoad: (total * GRAVITY) / (2 * outerLength),
    uplift: [...wood, ...uplift],
    assumption:
      'Without rim, stand, equipment, plants and animals; wood as dry and wholly under water; layers drained above the water level.',
  };
}
