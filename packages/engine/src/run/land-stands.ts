import type { LandStand } from '../cycle/land-stand.ts';
import { lampSegments } from '../light/surface-light.ts';
import type { Plan, Planting, Zone } from '../plan/plan.ts';
import { type LampField, lampField } from '../shape/light-field.ts';
import { growsOnLand, planArea } from './plant-cover.ts';

/** What a planting bears where its entry does not say: air of 28 °C and 60 % RH, light of 15 and 80. @source assumed */
const USUAL = { warmest: 28, driest: 60, light: { least: 15, good: 80 } } as const;
/** Light on an upright face over that on a level one. @source assumed: it sees half of the lamps' sky */
const UPRIGHT = 0.5;
/** Points along and across a zone at which light is looked at. */
const ALONG = 5;
const ACROSS = 3;

type StandPlan = Pick<Plan, 'box' | 'zones' | 'plants' | 'devices' | 'water'>;

interface Spot {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** Points spread over a zone with the height of its ground. */
function spotsOf({ box }: StandPlan, zone: Zone): Spot[] {
  const { outline, from, to, groundStart, groundEnd } = zone;
  if (outline) {
    const mean = (pick: (spot: Spot) => number): number =>
      outline.reduce((sum, { x, y, ground }) => sum + pick({ x, y, z: ground }), 0) / outline.length;
    const middle = { x: mean(({ x }) => x), y: mean(({ y }) => y), z: mean(({ z }) => z) };
    const inner = outline.map(({ x, y, ground }) => ({
      x: (x + middle.x) / 2,
      y: (y + middle.y) / 2,
      z: (ground + middle.z) / 2,
    }));
    return [middle, ...inner];
  }
  return Array.from({ length: ALONG * ACROSS }, (_, k) => {
    const share = ((k % ALONG) + 0.5) / ALONG;
    return {
      x: from + (to - from) * share,
      y: (box.width * (Math.floor(k / ALONG) + 0.5)) / ACROSS,
      z: groundStart + (groundEnd - groundStart) * share,
    };
  });
}

const heightsOf = ({ outline, groundStart, groundEnd }: Zone): number[] =>
  outline ? outline.map(({ ground }) => ground) : [groundStart, groundEnd];

/** Part of a zone's ground above the water [0..1], as if it rose evenly from its lowest to its highest point. */
function dryShare(zone: Zone, level: number): number {
  const heights = heightsOf(zone);
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  if (low >= level) return 1;
  return high <= level ? 0 : (high - level) / (high - low);
}

/** Longer side of a zone seen from above [m]. */
function lengthOf({ box }: StandPlan, { outline, from, to }: Zone): number {
  if (!outline) return Math.max(to - from, box.width);
  const across = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
  return Math.max(across(outline.map(({ x }) => x)), across(outline.map(({ y }) => y)));
}

/** Ground that plants of a zone can cover [m2]: of a wall its face above the water, of others their dry ground. */
function groundOf(plan: StandPlan, zone: Zone): number {
  const { level } = plan.water;
  if (zone.kind === 'wall') return lengthOf(plan, zone) * Math.max(0, Math.max(...heightsOf(zone)) - level);
  return planArea(plan, zone) * dryShare(zone, level);
}

const isOpenWater = ({ kind }: Zone): boolean => kind === 'pool' || kind === 'stream';
const NEAR = 1e-3;

/** Edge of a zone along open water [m]: sides that touch such a zone, or of an outline what does not lie on the glass. */
function shoreOf({ box, zones }: StandPlan, zone: Zone): number {
  const { outline } = zone;
  if (!outline) {
    const touching = zones.filter(
      (other) =>
        isOpenWater(other) &&
        (Math.abs(other.to - zone.from) < NEAR || Math.abs(other.from - zone.to) < NEAR),
    );
    return touching.length * box.width;
  }
  if (!zones.some(isOpenWater)) return 0;
  const onGlass = (a: number, b: number, far: number): boolean =>
    (a < NEAR && b < NEAR) || (a > far - NEAR && b > far - NEAR);
  return outline.reduce((sum, corner, i) => {
    const next = outline[(i + 1) % outline.length]!;
    if (onGlass(corner.x, next.x, box.length) || onGlass(corner.y, next.y, box.width)) return sum;
    const [dx, dy] = [next.x - corner.x, next.y - corner.y];
    return sum + Math.sqrt(dx * dx + dy * dy);
  }, 0);
}

function hoursLitOf(plan: StandPlan): number {
  return lampSegments(plan).reduce((sum, { from, to, ppfd }) => (ppfd > 0 ? sum + to - from : sum), 0);
}

/** Mean light on a zone's dry ground while any lamp is on [umol/(m2 s)]. */
function lightOn(plan: StandPlan, zone: Zone, fields: readonly LampField[], hoursLit: number): number {
  if (!(hoursLit > 0)) return 0;
  const { level } = plan.water;
  const isWall = zone.kind === 'wall';
  const all = spotsOf(plan, zone);
  const dry = all.filter(({ z }) => z >= level);
  const spots = (dry.length > 0 ? dry : all).map((spot) =>
    isWall ? { ...spot, z: (level + spot.z) / 2 } : spot,
  );
  const daily = spots.reduce(
    (sum, { x, y, z }) =>
      sum + fields.reduce((light, { lamp, at }) => light + at(x, y, Math.max(z, level)) * lamp.hours, 0),
    0,
  );
  return ((isWall ? UPRIGHT : 1) * daily) / (spots.length * hoursLit);
}

function standOf(plan: StandPlan, planting: Planting, zone: Zone, area: number): Omit<LandStand, 'light'> {
  const { box, devices } = plan;
  const { light = USUAL.light } = planting;
  return {
    id: planting.id,
    layer: planting.group === 'moss' ? 'moss' : 'tall',
    zone: zone.id,
    area,
    fullCoverBiomass: planting.fullCoverBiomass,
    cover: planting.cover,
    hoursLit: hoursLitOf(plan),
    least: light.least,
    good: light.good,
    ...(planting.growth === undefined ? {} : { growth: planting.growth }),
    warmest: planting.warmest ?? USUAL.warmest,
    driest: planting.driest ?? USUAL.driest,
    offGround: zone.kind === 'wall' || zone.kind === 'canopy',
    mist: (devices.mister?.dailyMass ?? 0) / (box.length * box.width),
    ...(planting.edible === undefined ? {} : { edible: planting.edible }),
    fragments: planting.fragments ?? false,
    shore: shoreOf(plan, zone),
  };
}

/**
 * Returns the plantings that grow on land, with their ground [m2] and their light [umol/(m2 s)]; those whose ground lies
 * under water are left out.
 * @param plan box, zones, plants, devices and water level
 * @validity one light for a planting, that of the middle of its zone's dry ground; the level of the first day
 * @source derived; see docs/science/land-plants.md
 */
export function landStands(plan: StandPlan): LandStand[] {
  let fields: LampField[] | undefined;
  return plan.plants.flatMap((planting) => {
    const zone = plan.zones.find(({ id }) => id === planting.zone);
    if (!zone || !growsOnLand(planting, plan.zones)) return [];
    const area = groundOf(plan, zone);
    if (!(area > 0)) return [];
    fields ??= plan.devices.lamps.map((lamp) => lampField(lamp, plan.box));
    const stand = standOf(plan, planting, zone, area);
    return [{ ...stand, light: lightOn(plan, zone, fields, stand.hoursLit) }];
  });
}
