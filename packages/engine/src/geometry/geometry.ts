import type { Plan } from '../plan/plan.ts';
import { columnOf } from './column.ts';
import { type Columns, columnsOf } from './columns.ts';
import { type HardscapeBand, hardscapeBands } from './hardscape-bands.ts';
import { FIELD_ROWS } from './height-field.ts';
import { knotsAt } from './knots.ts';
import { type Profile, profileOf } from './profile.ts';
import { hardscapeProblems } from './section-problems.ts';

/**
 * Volumes and surfaces of the enclosure as functions of the water level z [m above the inner base]. All standing water has one level, and pores below it are full. Above the rim the
 * glass is continued upwards, so that a caller notices an overflow by `capacity` rather than by an error.
 */
export interface Geometry {
  /** Lowest height at which water can stand, and height of the rim [m]. */
  readonly floor: number;
  readonly rim: number;
  /** Liquid held when full to the rim [m3]. */
  readonly capacity: number;
  /** Area of the base [m2] and bulk volume of all ground [m3]. */
  readonly baseArea: number;
  readonly groundVolume: number;
  /** Liquid, pore water included [m3]; strictly increasing from `floor` wherever anything there holds water. */
  volumeAt(level: number): number;
  /** Water level [m] of a volume of liquid [m3, >= 0]; inverse of `volumeAt`. @throws RangeError below 0. */
  levelAt(volume: number): number;
  /** Free water surface, hardscape standing through it left out [m2]. */
  openAreaAt(level: number): number;
  /** Water above the ground [m3]. */
  openVolumeAt(level: number): number;
  /** Open volume by open area [m]; 0 without open water. */
  meanDepthAt(level: number): number;
  /** Ground, panes and hardscape under water [m2]. */
  submergedAreaAt(level: number): number;
  /** Surface on which films grow: `submergedAreaAt` and the inner surface of layers under water [m2]. */
  filmSurfaceAt(level: number): number;
  /** Ground above the water, in plan view [m2]. */
  landAreaAt(level: number): number;
  /** Water in the pores of the ground [m3]. */
  groundWaterVolumeAt(level: number): number;
  /** Air between water, ground and cover [m3]; hardscape above the water is not taken off. */
  airVolumeAt(level: number): number;
  /** Inner faces of the four panes touching open water, and touching air [m2]. */
  waterPaneAreaAt(level: number): number;
  airPaneAreaAt(level: number): number;
}

/**
 * Returns the geometry of a plan, in closed form where its ground is straight across the width: A(z) = open area + pore area is straight between the heights at which a
 * ground, a layer or a piece of hardscape begins or ends, so V(z) is its exact integral and z(V) the root of a
 * quadratic. Zones drawn in plan are summed over a height field instead, and A(z) is straight between 256 heights.
 * @param plan box, zones and hardscape
 * @param rows lines of the height field across the width
 * @throws RangeError when the box or a zone cannot be drawn, or hardscape fills the open water at some height; the
 *   message names the place (see `checkGeometry`).
 * @validity one common water level: water held up behind a dam or perched in a layer is not represented
 * @source derived
 */
export function geometryOf(plan: Pick<Plan, 'box' | 'zones' | 'hardscape'>, rows = FIELD_ROWS): Geometry {
  const profile = profileOf(plan, rows);
  const bands = bandsIn(profile, plan.hardscape);
  const [overfull] = hardscapeProblems(bands, profile.height);
  if (overfull) throw new RangeError(`${overfull.place}: ${overfull.message}`);
  const bandEdges = bands.flatMap(({ low, high }) => [low, high]);
  return geometryFrom(
    profile,
    columnsOf(profile, bands, knotsAt([...profile.heights, ...bandEdges], profile.height)),
  );
}

/**
 * Returns where the hardscape of a plan displaces water in its profile.
 * @source derived
 */
export function bandsIn(profile: Profile, hardscape: Plan['hardscape']): HardscapeBand[] {
  const open = columnOf(knotsAt(profile.heights, profile.height), profile.open);
  return hardscapeBands(hardscape, open, profile.floor);
}

/**
 * Returns what hardscape displaces of the water above the ground [m3, >= 0].
 * @param plan box, zones and hardscape that can be drawn
 * @param geometry of the same plan
 * @param level of the water [m]
 * @source derived
 */
export function displacedVolume(
  plan: Pick<Plan, 'box' | 'zones'>,
  geometry: Geometry,
  level: number,
): number {
  const profile = profileOf(plan);
  const open = columnOf(knotsAt(profile.heights, profile.height), profile.open);
  return Math.max(0, open.integralTo(level) - geometry.openVolumeAt(level));
}

function geometryFrom(section: Profile, columns: Columns): Geometry {
  const { raw, open, pores, wet, films, panes, sides, ground } = columns;
  const baseArea = section.length * section.width;
  const rawCapacity = raw.integralTo(section.height);
  const allPanes = panes.integralTo(section.height);
  const submergedAreaAt = (level: number) =>
    level <= 0 ? 0 : sides.integralTo(level) + ground.densityAt(level);
  return {
    floor: wet.bottom,
    rim: section.height,
    capacity: wet.integralTo(section.height),
    baseArea,
    groundVolume: baseArea * section.height - rawCapacity,
    volumeAt: wet.integralTo,
    levelAt(volume) {
      if (!(volume >= 0)) throw new RangeError(`levelAt: a volume of ${volume} m3 has no level`);
      return wet.heightOf(volume);
    },
    openAreaAt: (level) => (level <= 0 ? 0 : open.densityAt(level)),
    openVolumeAt: open.integralTo,
    meanDepthAt(level) {
      const area = level <= 0 ? 0 : open.densityAt(level);
      return area > 0 ? open.integralTo(level) / area : 0;
    },
    submergedAreaAt,
    filmSurfaceAt: (level) => submergedAreaAt(level) + films.integralTo(level),
    landAreaAt: (level) => baseArea - (level <= 0 ? 0 : raw.densityAt(level)),
    groundWaterVolumeAt: pores.integralTo,
    airVolumeAt: (level) => Math.max(0, rawCapacity - raw.integralTo(level)),
    waterPaneAreaAt: panes.integralTo,
    airPaneAreaAt: (level) => Math.max(0, allPanes - panes.integralTo(level)),
  };
}
