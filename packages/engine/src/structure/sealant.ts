import { square } from '../numerics/small-powers.ts';
/** How deep acetoxy silicone cures from one open side in a day [m/s]: 3 mm in 24 h. @source sealant-sheets */
export const CURING_RATE = 0.003 / 86400;

/**
 * Returns the width of a structural silicone joint [m, > 0]: half the short side times pressure over design strength.
 * @param shortSide of the pane [m]
 * @param pressure even load [Pa]
 * @param designStrength of the silicone [Pa]; 138e3 short-term, about 7e3 for a lasting load (memory)
 * @source kubal, p. 5.51
 */
export function jointBite(shortSide: number, pressure: number, designStrength: number): number {
  return (0.5 * shortSide * pressure) / designStrength;
}

/** Load on the seams of an upright strip of pane, per length of seam [N/m]. */
export interface SeamLoad {
  readonly bottom: number;
  readonly top: number;
}

/**
 * Returns the load on bottom and top seam of a pane full to the top [N/m]: p0 d/3 and p0 d/6.
 * @param basePressure p0 [Pa]
 * @param depth d [m]
 * @source derived: simply supported strip under a triangular load
 */
export function seamLoad(basePressure: number, depth: number): SeamLoad {
  return { bottom: (basePressure * depth) / 3, top: (basePressure * depth) / 6 };
}

/**
 * Returns the time a bead needs to cure through from one open side [s, >= 0]: thickness by rate. A least time: wait
 * longer before loading.
 * @param thickness [m], up to 0.012
 * @param rate [m/s], see `CURING_RATE`
 * @source sealant-sheets
 */
export function curingTime(thickness: number, rate: number): number {
  return thickness / rate;
}

/**
 * Returns the time a thick bead needs to cure, moisture having to diffuse in [s, >= 0]: t_0 (x/x_0)^2.
 * @param thickness x [m]
 * @param knownThickness x_0 known to cure [m]
 * @param knownTime t_0 in this time [s]
 * @source derived: diffusion through cured silicone; the cautious form
 */
export function curingTimeByDiffusion(thickness: number, knownThickness: number, knownTime: number): number {
  return knownTime * square(thickness / knownThickness);
}

/**
 * Returns the length of bead in a cartridge [m, > 0]: volume by cross-section. Add 15 % for waste.
 * @param volume [m3]
 * @param section of the bead [m2]: width times depth, or half the square of a fillet's leg
 * @source derived
 */
export function beadLength(volume: number, section: number): number {
  return volume / section;
}
