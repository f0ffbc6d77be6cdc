import { pow } from '../numerics/elementary.ts';

/**
 * Returns the longest time within which a US Class A ground-fault interrupter must trip [s, > 0]: (20/I)^1.43.
 * @param current I to earth [A], 0.006 or more; it must not trip below 0.004
 * @source ul-943, as quoted in trade sources
 */
export function longestTripTime(current: number): number {
  return pow(20 / (current * 1000), 1.43);
}

/**
 * Returns the current a load draws [A, >= 0]: P/(V pf). Keep a circuit under 80 % of its rating for lasting loads.
 * @param power P [W]
 * @param voltage V [V]
 * @param powerFactor pf, above 0 to 1
 * @source derived
 */
export function loadCurrent(power: number, voltage: number, powerFactor: number): number {
  return power / (voltage * powerFactor);
}

/**
 * Returns the energy a load uses [J, >= 0].
 * @param power [W]
 * @param duration [s]
 * @source derived
 */
export function energyUsed(power: number, duration: number): number {
  return power * duration;
}
