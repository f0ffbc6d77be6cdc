import type { ClimateParameters } from './climate-parameters.ts';
import type { Envelope } from './envelope.ts';

/** Density at which kilograms of water in air, film and land are turned into cubic metres [kg/m3]. */
export const WATER_DENSITY = 998;

/** Rates over one step [kg/s]. */
export interface MoistureFlows {
  /** From open water and from land into the air. */
  fromWater: number;
  fromLand: number;
  /** Into the room. */
  toRoom: number;
  /** Onto the glass, negative when the film dries. */
  condensing: number;
  /** Droplets forming in air that would exceed saturation; they fall. */
  fog: number;
  /** Made into vapour by a fogger, from the pool and from elsewhere. */
  foggedFromPool: number;
  foggedIn: number;
}

/** Water held outside the pool [kg], and what crossed its borders in the hour [kg]. Every move takes and gives alike. */
export class MoisturePools {
  vapour = 0;
  film = 0;
  land = 0;
  evaporated = 0;
  returned = 0;
  wicked = 0;
  /** Run off ground that holds no more, a part of `returned`. */
  drained = 0;
  lost = 0;
  /** Brought in by a fogger from its own reservoir. */
  brought = 0;
  /** Time with a visible film [s]. */
  foggedTime = 0;
  private readonly envelope: Envelope;
  private readonly parameters: ClimateParameters;
  private readonly wickingRate: number;

  constructor(envelope: Envelope, parameters: ClimateParameters) {
    this.envelope = envelope;
    this.parameters = parameters;
    this.wickingRate = parameters.wicking / 86400;
  }

  /** Condensate on glass from which it looks fogged, and from which it drips [kg/m2]. */
  get limits(): Pick<ClimateParameters, 'fogThreshold' | 'dripLimit'> {
    return this.parameters;
  }

  /** Moisture the land holds when wet [kg]. */
  landCapacity(): number {
    return this.parameters.landStore * this.envelope.landArea;
  }

  beginHour(): void {
    this.evaporated = 0;
    this.returned = 0;
    this.wicked = 0;
    this.drained = 0;
    this.lost = 0;
    this.brought = 0;
    this.foggedTime = 0;
  }

  /** Water falling evenly over the base: onto the open water, and onto the land. */
  fall(mass: number): void {
    const onWater = mass * this.envelope.openShare;
    this.returned += onWater;
    this.land += mass - onWater;
  }

  /** Moves what flowed during `dt` seconds; the pool holds `poolWater` [kg]. */
  settle(flows: MoistureFlows, dt: number, poolWater: number): void {
    const evaporated = flows.fromWater * dt;
    const lost = flows.toRoom * dt;
    const fromLand = flows.fromLand * dt;
    const condensed = flows.condensing * dt;
    const fog = flows.fog * dt;
    const ownFog = flows.foggedFromPool * dt;
    const broughtFog = flows.foggedIn * dt;
    this.vapour += evaporated + fromLand - lost - condensed - fog + ownFog + broughtFog;
    this.evaporated += evaporated + ownFog;
    this.brought += broughtFog;
    this.lost += lost;
    this.land -= fromLand;
    this.fall(fog);
    this.growFilm(condensed, dt);
    this.wick(dt, poolWater);
    if (!(this.vapour >= 0 && this.land >= 0)) {
      throw new RangeError(
        `the moisture balance of the box broke: vapour ${this.vapour} kg, land ${this.land} kg`,
      );
    }
  }

  private growFilm(condensed: number, dt: number): void {
    const { glassArea } = this.envelope;
    const before = this.film;
    // Drying takes at most what is there; rounding may leave a trace below nothing.
    const after = before + condensed < 1e-15 ? 0 : before + condensed;
    this.vapour += before + condensed - after;
    this.foggedTime += dt * partAbove(before, after, this.parameters.fogThreshold * glassArea);
    this.film = after;
    const limit = this.parameters.dripLimit * glassArea;
    if (after > limit) {
      this.film = limit;
      this.fall(after - limit);
    }
  }

  /** Ground draws water up the faster the drier it is, and gives back what it cannot hold. */
  private wick(dt: number, poolWater: number): void {
    const capacity = this.landCapacity();
    const before = this.land;
    if (capacity > 0) {
      const most = Math.min(this.wickingRate * this.envelope.landArea * dt, 0.5 * poolWater);
      this.land = (before + most) / (1 + most / capacity);
      this.wicked += this.land - before;
    }
    if (this.land > capacity) {
      this.drained += this.land - capacity;
      this.returned += this.land - capacity;
      this.land = capacity;
    }
  }
}

/**
 * Returns the part of a straight course from `before` to `after` that lies above `threshold` [0..1].
 * @param before at its start
 * @param after at its end
 * @param threshold in the same unit
 * @source derived
 */
export function partAbove(before: number, after: number, threshold: number): number {
  const low = Math.min(before, after);
  const high = Math.max(before, after);
  if (low >= threshold) return high > 0 ? 1 : 0;
  if (high <= threshold) return 0;
  return (high - threshold) / (high - low);
}
