import { atan, log } from '../numerics/elementary.ts';
import type { Lamp } from '../plan/devices.ts';
import type { Plan } from '../plan/plan.ts';

/** A stretch of the day between two switchings of the lamps. */
export interface LampSegment {
  /** Hours of the day, 0 <= from < to <= 24. */
  readonly from: number;
  readonly to: number;
  /** Light at the water plane [umol/(m2 s)]. */
  readonly ppfd: number;
  /** Electrical input of the lamps that are on [W]. */
  readonly lampPower: number;
}

type LitPlan = Pick<Plan, 'box' | 'devices' | 'water'>;

/** Part of the light meeting the side panes that comes back into the box: assumed, from "10 to 30 % more" in practice. */
export const RETURNED_BY_PANES = 0.2;

/**
 * Returns the part of diffuse light from one rectangle that reaches an equal one opposite it [0..1]:
 * 2/(pi X Y) (ln sqrt((1+X^2)(1+Y^2)/(1+X^2+Y^2)) + X sY atan(X/sY) + Y sX atan(Y/sX) - X atan X - Y atan Y),
 * X = a/h, Y = b/h, sX = sqrt(1 + X^2), sY = sqrt(1 + Y^2).
 * @param length a [m]
 * @param breadth b [m]
 * @param distance h between them [m], above 0
 * @source incropera, table 13.2 (memory)
 */
export function oppositeViewFactor(length: number, breadth: number, distance: number): number {
  const X = length / distance;
  const Y = breadth / distance;
  const sX = Math.sqrt(1 + X * X);
  const sY = Math.sqrt(1 + Y * Y);
  const corners = 0.5 * log((sX * sX * sY * sY) / (1 + X * X + Y * Y));
  const edges = X * sY * atan(X / sY) + Y * sX * atan(Y / sX) - X * atan(X) - Y * atan(Y);
  return (2 / (Math.PI * X * Y)) * (corners + edges);
}

/**
 * Returns the part of the light that the cover lets through [0..1]: its open part, less what mesh shades, and the
 * transmission of the rest.
 * @param box cover of the plan
 * @source derived
 */
export function coverTransmission({
  coverOpenFraction,
  coverTransmission: closed,
  coverMesh,
}: Plan['box']): number {
  return coverOpenFraction * (coverMesh?.openShare ?? 1) + (1 - coverOpenFraction) * closed;
}

/**
 * Returns the part of the photons at the plane of the cover that reaches the water plane [0..1]: the cover's open part
 * and the transmission of the rest, times what diffuse light keeps on its way down between panes, which return a fifth.
 * @validity lamps spread evenly over the cover; narrow beams lose less, lamps at one end light it unevenly
 * @source derived; panes assumed
 */
function shareReachingWater({ box, water }: LitPlan): number {
  const cover = coverTransmission(box);
  const drop = box.height - water.level;
  if (drop <= 1e-6) return cover;
  const direct = oppositeViewFactor(box.length, box.width, drop);
  return cover * (direct + RETURNED_BY_PANES * (1 - direct));
}

/**
 * Returns the light at the water plane while all lamps are on [umol/(m2 s), >= 0], averaged over the base.
 * @param plan box, lamps and water level
 * @source derived; see docs/science/climate.md
 */
export function surfaceLight(plan: LitPlan): number {
  const flux = plan.devices.lamps.reduce((total, lamp) => total + lamp.photonFlux, 0);
  return (flux * shareReachingWater(plan)) / (plan.box.length * plan.box.width);
}

function isOn({ onAt, hours }: Lamp, hourOfDay: number): boolean {
  const since = hourOfDay - onAt;
  return (since >= 0 ? since : since + 24) < hours;
}

/**
 * Returns the stretches of the day between switchings, in order and covering 0 to 24 h, so that a step can end where
 * a lamp turns on or off.
 * @param plan box, lamps and water level
 * @throws RangeError when a lamp turns on outside 0 to 24 h or is lit for less than 0 or more than 24 h.
 * @source derived
 */
export function lampSegments(plan: LitPlan): LampSegment[] {
  const { lamps } = plan.devices;
  for (const { name, onAt, hours } of lamps) {
    if (!(onAt >= 0 && onAt < 24 && hours >= 0 && hours <= 24)) {
      throw new RangeError(`${name}: on at ${onAt} h for ${hours} h; give 0 to below 24 h, for 0 to 24 h`);
    }
  }
  const perFlux = shareReachingWater(plan) / (plan.box.length * plan.box.width);
  const switches = lamps.flatMap(({ onAt, hours }) => [onAt, (onAt + hours) % 24]);
  const times = [...new Set([0, ...switches, 24])].sort((a, b) => a - b);
  return times.slice(1).map((to, i) => {
    const from = times[i] as number;
    const lit = lamps.filter((lamp) => isOn(lamp, 0.5 * (from + to)));
    const flux = lit.reduce((total, lamp) => total + lamp.photonFlux, 0);
    return { from, to, ppfd: flux * perFlux, lampPower: lit.reduce((total, lamp) => total + lamp.power, 0) };
  });
}
