import { type Activity, activityByLight, type DayLight } from '../life/awake.ts';
import type { LampSegment } from '../light/surface-light.ts';
import { dueDays, type Routine, type SingleCare } from '../plan/care.ts';
import type { Plan } from '../plan/plan.ts';

/** A stretch of a day on which feed is given at an hour, with one light and one pace of eating. */
export interface FeedingStretch extends LampSegment {
  readonly activity: Activity;
  /** Whether animals choose anew what they eat: feed came, or the light changed. */
  readonly begins: boolean;
}

/** How a day passes on which feed is given at an hour. */
export interface FeedingTimes {
  readonly stretches: readonly FeedingStretch[];
  /** Care due on each day at its hour, in order of hours; empty on days without any. */
  readonly care: readonly (readonly TimedCare[])[];
}

export interface TimedCare {
  readonly hour: number;
  readonly care: SingleCare;
}

/** About a switching of the lamps it counts as dusk [h], half before and half after. @source assumed */
const DUSK = 2;
/** Daylight of a room where no lamp is, or none is ever off [h of the day]. @source assumed */
const ROOM_DAY = { from: 8, to: 20 } as const;

/** Hour of the day at which a piece of care is done; undefined for none. `derived`. */
export function hourOf(care: SingleCare | Routine): number | undefined {
  return care.kind === 'feed' ? care.hour : undefined;
}

/** Hours at which light and dark meet [h of the day]. */
function switchingsOf(segments: readonly LampSegment[]): number[] {
  const hours = segments.flatMap(({ from, ppfd }, at) => {
    const before = segments[(at + segments.length - 1) % segments.length]!;
    return ppfd > 0 !== before.ppfd > 0 ? [from] : [];
  });
  return hours.length > 0 ? hours : [ROOM_DAY.from, ROOM_DAY.to];
}

/**
 * Light in which a stretch of the day lies: dusk within an hour of a switching of the lamps, else light where lamps are
 * lit. Where none is ever lit or off, the day of a room, 8 to 20 h.
 * @param hour middle of the stretch [h of the day]
 * @source derived; two hours of dusk and the room's day assumed
 */
export function dayLightAt(segments: readonly LampSegment[], hour: number): DayLight {
  const near = switchingsOf(segments).some((each) => {
    const apart = Math.abs(hour - each);
    return Math.min(apart, 24 - apart) < DUSK / 2;
  });
  if (near) return 'dusk';
  const isSwitched = segments.some(({ ppfd }) => ppfd > 0) && segments.some(({ ppfd }) => ppfd === 0);
  if (!isSwitched) return hour >= ROOM_DAY.from && hour < ROOM_DAY.to ? 'light' : 'dark';
  return segments.some(({ from, to, ppfd }) => hour >= from && hour < to && ppfd > 0) ? 'light' : 'dark';
}

/** The lamps' stretches cut at more hours. */
function cutAt(segments: readonly LampSegment[], hours: readonly number[]): LampSegment[] {
  return segments.flatMap((segment) => {
    const inside = hours.filter((hour) => hour > segment.from && hour < segment.to);
    const times = [...new Set([segment.from, ...inside, segment.to])].sort((a, b) => a - b);
    return times.slice(1).map((to, at) => ({ ...segment, from: times[at]!, to }));
  });
}

function dueByDay(plan: Plan, days: number): TimedCare[][] {
  const byDay = Array.from({ length: days }, (): TimedCare[] => []);
  const put = (day: number, care: SingleCare): void => {
    const hour = hourOf(care);
    if (hour !== undefined) byDay[day]?.push({ hour, care });
  };
  for (const routine of plan.routines) for (const day of dueDays(routine, days)) put(day, routine);
  for (const action of plan.actions) put(action.day, action);
  for (const due of byDay) due.sort((a, b) => a.hour - b.hour);
  return byDay;
}

/**
 * Returns how days pass on which feed is given at an hour: cut at those hours and about the switchings of the lamps;
 * undefined when none is.
 * @param segments stretches of the day as the cycle runs them
 * @throws RangeError for an hour outside 0 to below 24
 * @source derived
 */
export function feedingTimes(
  plan: Plan,
  days: number,
  segments: readonly LampSegment[],
): FeedingTimes | undefined {
  const hours = [...plan.routines, ...plan.actions].flatMap((care) => hourOf(care) ?? []);
  if (hours.length === 0) return undefined;
  for (const hour of hours)
    if (!(hour >= 0 && hour < 24)) throw new RangeError(`feed is given at ${hour} h; give 0 to below 24 h`);
  const dusks = switchingsOf(segments).flatMap((hour) => [
    (hour + 24 - DUSK / 2) % 24,
    (hour + DUSK / 2) % 24,
  ]);
  const cut = cutAt(segments, [...hours, ...dusks]);
  const lights = cut.map(({ from, to }) => dayLightAt(segments, 0.5 * (from + to)));
  const lit = { light: 0, dusk: 0, dark: 0 };
  for (const [at, { from, to }] of cut.entries()) lit[lights[at]!] += to - from;
  const activity = activityByLight(lit);
  return {
    stretches: cut.map((segment, at) => ({
      ...segment,
      activity: activity[lights[at]!],
      begins: at === 0 || lights[at] !== lights[at - 1] || hours.includes(segment.from),
    })),
    care: dueByDay(plan, days),
  };
}
