import { STATED_HOURS } from '../cycle/land-growth.ts';
import { meanTransmission } from '../cycle/underwater-light.ts';
import type { FieldGrid } from '../geometry/field-grid.ts';
import { dailyLightIntegral, lightAtDepth } from '../light/photometry.ts';
import { surfaceLight } from '../light/surface-light.ts';
import type { Plan, Planting, Zone } from '../plan/plan.ts';
import { MOLAR_MASS } from '../water/molar-masses.ts';
import { type LampField, lampField } from './light-field.ts';
import type { ShapeGround } from './shape-ground.ts';
import type { LightFigures, PlantLight, ZoneLight } from './shape-sheet.ts';

/** Reflected by still water from above. @source derived: Fresnel, averaged over diffuse light about 0.06; 0.02 straight down */
const REFLECTED = 0.04;
/** Diffuse light takes a longer way through water. @source derived: mean path of diffuse light after refraction */
const PATH = 1.2;
/** Attenuation where the plan holds no value [1/m]. @source memory: clear tank water 0.2 to 0.5 */
const USUAL_ATTENUATION = 0.35;
/** Light kept back by a full cover of plants above the point. @source assumed */
const SHADE = { floating: 0.9, emersed: 0.5 } as const;
/** Light from which algae overgrow surfaces. @source common practice, no source */
const ALGAE = { light: 100, daily: 4 } as const;
/** Points at which each zone is looked at, at most. */
const POINTS = 16;
const DEPTHS = 12;

/** Light now and over the day at a point. */
interface Lit {
  readonly light: number;
  readonly daily: number;
}

/** Attenuation of the water [1/m]. */
function attenuationOf({ priors, water }: Plan): number {
  const under = priors['underwater-light'];
  const background = under?.backgroundAttenuation?.median ?? USUAL_ATTENUATION;
  const colour = under?.colourAttenuation?.median ?? 0;
  return background + colour * MOLAR_MASS.carbon * water.fill.dissolvedOrganicCarbon;
}

class Lighting {
  readonly attenuation: number;
  private readonly plan: Plan;
  private readonly fields: readonly LampField[];

  constructor(plan: Plan) {
    this.plan = plan;
    this.fields = plan.devices.lamps.map((lamp) => lampField(lamp, plan.box));
    this.attenuation = attenuationOf(plan);
  }

  /** On a level surface; under water after its way through it and through what floats there. */
  at(x: number, y: number, z: number, zone: string): Lit {
    const { level } = this.plan.water;
    const isUnder = z < level;
    let light = 0;
    let daily = 0;
    for (const { lamp, at } of this.fields) {
      const own = at(x, y, Math.max(z, level));
      light += own;
      daily += dailyLightIntegral(own, lamp.hours);
    }
    const through = isUnder ? lightAtDepth(1, REFLECTED, this.attenuation, (level - z) * PATH) : 1;
    const factor = through * this.unshaded(zone, isUnder);
    return { light: light * factor, daily: daily * factor };
  }

  private unshaded(zone: string, isUnder: boolean): number {
    let kept = 1;
    for (const planting of this.plan.plants) {
      if (planting.zone !== zone) continue;
      if (planting.group === 'floating' && isUnder) kept *= 1 - SHADE.floating * planting.cover;
      if (planting.group === 'emersed') kept *= 1 - SHADE.emersed * planting.cover;
    }
    return kept;
  }
}

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly ground: number;
}

/** A few points of each zone, spread evenly over the cells it owns. */
function spotsByZone(grid: FieldGrid, zones: number): Spot[][] {
  const { columns, cellLength, cellWidth, ground, zone } = grid;
  const count = new Array<number>(zones).fill(0);
  for (const owner of zone) if (owner >= 0) count[owner] = count[owner]! + 1;
  const every = count.map((cells) => Math.max(1, Math.floor(cells / POINTS)));
  const met = new Array<number>(zones).fill(0);
  const spots: Spot[][] = Array.from({ length: zones }, () => []);
  for (const [i, owner] of zone.entries()) {
    if (owner < 0) continue;
    const turn = met[owner]!;
    met[owner] = turn + 1;
    if (turn % every[owner]! !== Math.floor(every[owner]! / 2)) continue;
    const column = i % columns;
    spots[owner]!.push({
      x: (column + 0.5) * cellLength,
      y: ((i - column) / columns + 0.5) * cellWidth,
      ground: ground[i]!,
    });
  }
  return spots;
}

const mean = (values: readonly number[]): number =>
  values.reduce((sum, one) => sum + one, 0) / Math.max(1, values.length);

function zoneLight(zone: Zone, lit: readonly Lit[]): ZoneLight {
  const lights = lit.map(({ light }) => light);
  return {
    zone: zone.id,
    name: zone.name,
    lowest: lights.length > 0 ? Math.min(...lights) : 0,
    mean: mean(lights),
    highest: lights.length > 0 ? Math.max(...lights) : 0,
    daily: mean(lit.map(({ daily }) => daily)),
  };
}

/** Height at which a planting meets the light: half way up for those under water, the surface for floating ones. */
function heightOf({ group }: Planting, ground: number, level: number): number {
  if (group === 'floating') return level;
  return group === 'submerged' ? Math.min(level, 0.5 * (ground + level)) : ground;
}

/** Strength that gives a day's light [mol/(m2 d)] in the hours for which plants' needs are stated [umol/(m2 s)]. */
function asStated(daily: number): number {
  return (daily * 1e6) / (STATED_HOURS * 3600);
}

/** How a short or long day is judged, where it is one. */
function dayAssumption(hours: number): string {
  if (!(hours > 0) || Math.abs(hours - STATED_HOURS) < 1) return '';
  return ` Plants' needs are stated for ${STATED_HOURS} h a day: ${hours.toFixed(1)} h of a light are judged as ${(hours / STATED_HOURS).toFixed(2)} of its strength.`;
}

function plantLight(planting: Planting, lit: readonly Lit[]): PlantLight {
  const light = mean(lit.map((one) => one.light));
  const judged = asStated(mean(lit.map((one) => one.daily)));
  const { least, good } = planting.light ?? {};
  const verdict =
    least === undefined || good === undefined
      ? 'not known'
      : judged < least
        ? 'too dark'
        : judged < good
          ? 'lasts'
          : 'thrives';
  return {
    planting: planting.id,
    name: planting.name,
    zone: planting.zone,
    light,
    daily: mean(lit.map((one) => one.daily)),
    ...(least === undefined ? {} : { least }),
    ...(good === undefined ? {} : { good }),
    verdict,
  };
}

function algaeOf(zones: readonly ZoneLight[], plan: Plan, wet: readonly boolean[]): LightFigures['algae'] {
  return zones.flatMap(({ zone, name, mean: light, daily }, i) => {
    if (!wet[i] || (light < ALGAE.light && daily < ALGAE.daily)) return [];
    const planted = plan.plants
      .filter((one) => one.zone === zone && (one.group === 'submerged' || one.group === 'floating'))
      .reduce((sum, one) => sum + one.cover, 0);
    const why =
      light >= ALGAE.light
        ? `${Math.round(light)} µmol/m²/s on wet ground`
        : `${daily.toFixed(1)} mol/m² a day on wet ground`;
    return [{ zone: name, light, why: planted < 0.3 ? `${why}, and few plants there take it` : why }];
  });
}

function byDepth(plan: Plan, attenuation: number, deepest: number): Pick<LightFigures, 'depths' | 'byDepth'> {
  const surface = surfaceLight(plan);
  const depths = Array.from({ length: DEPTHS + 1 }, (_, i) => (deepest * i) / DEPTHS);
  return {
    depths,
    byDepth: depths.map((depth) => lightAtDepth(surface, REFLECTED, attenuation, depth * PATH)),
  };
}

/** Hours of the day in which any lamp is on. */
function hoursLit({ devices: { lamps } }: Plan): number {
  const steps = 288;
  let lit = 0;
  for (let i = 0; i < steps; i++) {
    const hour = ((i + 0.5) * 24) / steps;
    if (lamps.some(({ onAt, hours }) => (hour - onAt + 24) % 24 < hours)) lit++;
  }
  return (lit * 24) / steps;
}

/**
 * Returns the light on ground and plants of every zone [umol/(m2 s), mol/(m2 day)], by depth, and where algae will like it.
 * @param ground of a plan that can be drawn
 * @param grid cells of the ground in plan
 * @source derived; see docs/science
 */
export function lightFigures(ground: ShapeGround, grid: FieldGrid): LightFigures {
  const { plan, geometry } = ground;
  const { level } = plan.water;
  const lighting = new Lighting(plan);
  const spots = spotsByZone(grid, plan.zones.length);
  const zones = plan.zones.map((zone, i) =>
    zoneLight(
      zone,
      spots[i]!.map(({ x, y, ground: z }) => lighting.at(x, y, z, zone.id)),
    ),
  );
  const wet = spots.map((own) => own.filter(({ ground: z }) => z < level + 0.01).length * 2 > own.length);
  const plants = plan.plants.map((planting) => {
    const zone = plan.zones.findIndex(({ id }) => id === planting.zone);
    const own = spots[zone] ?? [];
    return plantLight(
      planting,
      own.map(({ x, y, ground: z }) => lighting.at(x, y, heightOf(planting, z, level), planting.zone)),
    );
  });
  const atWater = surfaceLight(plan);
  const total = plan.devices.lamps.reduce((sum, { photonFlux }) => sum + photonFlux, 0);
  const lampHours = plan.devices.lamps.reduce((sum, { photonFlux, hours }) => sum + photonFlux * hours, 0);
  return {
    atWater,
    daily: total > 0 ? dailyLightIntegral(atWater, lampHours / total) : 0,
    hours: hoursLit(plan),
    attenuation: lighting.attenuation,
    zones,
    ...byDepth(plan, lighting.attenuation, Math.max(0, level - geometry.floor)),
    plants,
    algae: algaeOf(zones, plan, wet),
    assumption: `Diffuse lamps without lenses; the panes return a fifth; mean transmission over the pool ${(100 * meanTransmission(lighting.attenuation * geometry.meanDepthAt(level))).toFixed(0)} %; daylight from the room is not counted.${dayAssumption(hoursLit(plan))}`,
  };
}
