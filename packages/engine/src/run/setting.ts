import { type RoomDrivers, roomDrivers } from '../climate/room-drivers.ts';
import type { LandStand } from '../cycle/land-stand.ts';
import { type Geometry, geometryOf } from '../geometry/geometry.ts';
import type { Shore } from '../life/drowning.ts';
import { type LampSegment, lampSegments } from '../light/surface-light.ts';
import { dueDays, type SingleCare } from '../plan/care.ts';
import type { Plan } from '../plan/plan.ts';
import { type FeedingTimes, feedingTimes, hourOf } from './feeding-times.ts';
import { landStands } from './land-stands.ts';
import { plantedBiomass } from './plant-cover.ts';
import { type PouredGases, pouredGases } from './poured-gases.ts';
import { SERIES, type SeriesId } from './series.ts';
import { shoreFor } from './shore-of.ts';
import { wetShare } from './wet-share.ts';

/** What all members of an outlook share: computed once per plan and length. */
export interface RunSetting {
  readonly plan: Plan;
  readonly days: number;
  readonly geometry: Geometry;
  readonly room: RoomDrivers;
  /** Stretches of the day between switchings of the lamps, covering 0 to 24 h. */
  readonly segments: readonly LampSegment[];
  /** Care due on each day of the run, in the order of the plan; that of an hour is apart. */
  readonly care: readonly (readonly SingleCare[])[];
  /** How days pass on which feed is given at an hour; none when no feed is. */
  readonly feeding: FeedingTimes | undefined;
  readonly seriesIds: readonly SeriesId[];
  /** Plantings that grow on land. */
  readonly stands: readonly LandStand[];
  /** Where water and land meet; left out where nobody lives who could drown. */
  readonly shore: Shore | undefined;
  /** Gases of the waters poured in. */
  readonly poured: PouredGases;
}

/** Longest stretch the cycle runs before it is sampled [h]: light moves acidity and oxygen faster than the dark does. */
const LONGEST_LIT = 4;
const LONGEST_DARK = 6;

function splitSegments(segments: readonly LampSegment[]): LampSegment[] {
  return segments.flatMap((segment) => {
    const longest = segment.ppfd > 0 ? LONGEST_LIT : LONGEST_DARK;
    const parts = Math.max(1, Math.ceil((segment.to - segment.from) / longest));
    const length = (segment.to - segment.from) / parts;
    return Array.from({ length: parts }, (_, part) => ({
      ...segment,
      from: segment.from + part * length,
      to: segment.from + (part + 1) * length,
    }));
  });
}

function careByDay(plan: Plan, days: number): SingleCare[][] {
  const byDay = Array.from({ length: days }, (): SingleCare[] => []);
  for (const routine of plan.routines) {
    if (hourOf(routine) !== undefined) continue;
    for (const day of dueDays(routine, days)) byDay[day]?.push(routine);
  }
  for (const action of plan.actions) if (hourOf(action) === undefined) byDay[action.day]?.push(action);
  return byDay;
}

/** Whether any water of the plan brings copper. */
function namesCopper({ water, devices, routines, actions }: Plan): boolean {
  const poured = [...routines, ...actions].flatMap((care) => ('water' in care ? [care.water] : []));
  return [water.fill, water.topOff, devices.mister?.water, ...poured].some(
    (each) => each?.copper !== undefined && each.copper > 0,
  );
}

/** Series every run records; covers of plants that stand above the water only where some were planted. */
function fixedSeries(plan: Plan, stands: readonly LandStand[]): SeriesId[] {
  const absent = new Set<SeriesId>();
  if (plantedBiomass(plan, 'floating') === 0) absent.add('floatingCover');
  if (plantedBiomass(plan, 'emersed') === 0) absent.add('emersedCover');
  if (!namesCopper(plan)) absent.add('copper');
  if (!hasBareWood(plan)) absent.add('woodMould');
  if (stands.every(({ layer }) => layer === 'moss')) absent.add('transpiration');
  return (Object.keys(SERIES) as SeriesId[]).filter((id) => !absent.has(id));
}

/** True when wood stands out of the water. */
function hasBareWood({ hardscape, water }: Plan): boolean {
  return hardscape.some(
    ({ kind, course, contents }) =>
      kind === 'wood' && (contents.woodLeachable ?? 0) > 0 && wetShare(course, water.level) < 1,
  );
}

function populationSeries(plan: Plan, stages: readonly string[]): SeriesId[] {
  return plan.populations.flatMap(({ id }) => [
    `population:${id}` as const,
    ...stages.map((stage) => `population:${id}:${stage}` as const),
  ]);
}

/**
 * Returns everything a run of `days` days needs beside its parameters.
 * @throws RangeError when the days are not a whole number from 1 to 3660, or the geometry cannot hold the water.
 * @source derived
 */
export function settingOf(plan: Plan, days: number, stages: readonly string[]): RunSetting {
  if (!Number.isInteger(days) || days < 1 || days > 3660) {
    throw new RangeError(`a run takes a whole number of days from 1 to 3660, not ${days}`);
  }
  for (const routine of plan.routines) {
    if (!Number.isInteger(routine.everyDays) || routine.everyDays < 1) {
      throw new RangeError(
        `${routine.kind} every ${routine.everyDays} days: give a whole number of at least 1`,
      );
    }
  }
  const stands = landStands(plan);
  const segments = splitSegments(lampSegments(plan));
  return {
    plan,
    days,
    geometry: geometryOf(plan),
    room: roomDrivers(plan, days),
    segments,
    care: careByDay(plan, days),
    feeding: feedingTimes(plan, days, segments),
    seriesIds: [
      ...fixedSeries(plan, stands),
      ...stands.map(({ id }) => `planting:${id}` as const),
      ...populationSeries(plan, stages),
    ],
    stands,
    shore: shoreFor(plan),
    poured: pouredGases(plan.room),
  };
}
