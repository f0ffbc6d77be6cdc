import type { LandLayerParameters, MossParameters } from './land-plant-parameters.ts';
import type { LandStand } from './land-stand.ts';

/** Air drier than the driest moss is said to bear by the first gives it nothing, moister by the second all [% RH]. */
const MOSS_DRY = 10;
const MOSS_MOIST = 25;
/** Air drier than it is said to bear by this much stops a taller plant [% RH]. */
const LEAF_DRY = 40;
/** Mist that keeps a plant half moist by itself [kg/(m2 d)]. @source bond-lamberty-2010: moss loses 0.03 to 1.43, mostly about 0.4 */
const MIST_HALF = 0.4;

export interface Moisture {
  /** [%] */
  readonly humidity: number;
  /** Moisture of the upper ground over what it can hold [0..1]. */
  readonly groundWetness: number;
}

/** A share kept between none and all: a definition of the ramp, not a repair. */
const ramp = (from: number, to: number, value: number): number =>
  value <= from ? 0 : value >= to ? 1 : (value - from) / (to - from);

function fromGround({ wetHalf }: LandLayerParameters, wetness: number): number {
  return (wetness * (1 + wetHalf)) / (wetness + wetHalf);
}

function fromMist({ mist }: LandStand): number {
  return mist / (mist + MIST_HALF);
}

/**
 * Moisture of moss over that of wet moss [0..1]: h = 1 - (1 - a)(1 - R g)(1 - m), a from the air (0 at 10 % RH below the
 * driest air the moss is said to bear, 1 at 25 % above), g from the ground (none off the ground), m from mist.
 * @param stand where it grows and what it bears
 * @param parameters reach R of ground moisture, half-supply of the ground
 * @param around air and ground of the day
 * @validity daily means; moss takes up vapour, ground water and mist alike
 * @source assumed: growth 0, half and full at 60, 80 and 95 % RH unwetted, recalled for forest mosses
 */
export function mossMoisture(stand: LandStand, parameters: MossParameters, around: Moisture): number {
  const air = ramp(stand.driest - MOSS_DRY, Math.min(98, stand.driest + MOSS_MOIST), around.humidity);
  const ground = stand.offGround ? 0 : parameters.groundReach * fromGround(parameters, around.groundWetness);
  return 1 - (1 - air) * (1 - ground) * (1 - fromMist(stand));
}

/**
 * Water a taller plant has over what it needs [0..1]: its roots' supply times what dry air leaves of it. Off the ground
 * mist and the moist air supply it.
 * @param stand where it grows and what it bears
 * @param parameters half-supply of the ground
 * @param around air and ground of the day
 * @source assumed: straight fall over 40 % RH below the driest air it is said to bear
 */
export function leafMoisture(stand: LandStand, parameters: LandLayerParameters, around: Moisture): number {
  const air = ramp(stand.driest - LEAF_DRY, stand.driest, around.humidity);
  if (!stand.offGround) return air * fromGround(parameters, around.groundWetness);
  return 1 - (1 - air) * (1 - fromMist(stand));
}
