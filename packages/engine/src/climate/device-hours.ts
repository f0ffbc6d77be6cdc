import type { Plan } from '../plan/plan.ts';

/** What lamps and mister do in each hour of the day. */
export interface DeviceHours {
  /** Mean electrical input of the lamps [W]. */
  readonly lampPower: Float64Array;
  /** Water sprayed [kg]. */
  readonly mist: Float64Array;
}

/**
 * Returns the part of the hour from `hour` to `hour + 1` in which something on from `onAt` for `hours` is on [0..1].
 * @param onAt hour of the day at which it turns on
 * @param hours how long
 * @param hour of the day
 * @source derived
 */
export function litPart(onAt: number, hours: number, hour: number): number {
  const overlap = (start: number) => Math.max(0, Math.min(hour + 1, start + hours) - Math.max(hour, start));
  return overlap(onAt) + overlap(onAt - 24);
}

/**
 * Returns the mean lamp power and the mist of each hour of the day, 24 values each.
 * @param devices of the plan
 * @throws RangeError when the mister sprays at an hour outside 0 to 24.
 * @source derived
 */
export function deviceHours(devices: Plan['devices']): DeviceHours {
  const lampPower = new Float64Array(24);
  const mist = new Float64Array(24);
  for (const { power, onAt, hours } of devices.lamps) {
    for (let hour = 0; hour < 24; hour++)
      lampPower[hour] = lampPower[hour]! + power * litPart(onAt, hours, hour);
  }
  const { mister } = devices;
  for (const time of mister?.at ?? []) {
    const hour = Math.floor(time);
    if (!mister || !(hour >= 0 && hour < 24))
      throw new RangeError(`the mister sprays at ${time} h; give 0 to below 24`);
    mist[hour] = mist[hour]! + mister.dailyMass / mister.at.length;
  }
  return { lampPower, mist };
}
