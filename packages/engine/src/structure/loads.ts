import { GRAVITY } from '../climate/openings.ts';

/** Density of float glass [kg/m3]: 2.5 kg per m2 and mm. @source en-572 */
export const GLASS_DENSITY = 2500;

/**
 * Returns the mass of a pane [kg, > 0]: 2.5 kg per m2 and mm.
 * @param area of the pane [m2]
 * @param thickness [m]
 * @source en-572
 */
export function paneMass(area: number, thickness: number): number {
  return GLASS_DENSITY * area * thickness;
}

/**
 * Returns the pressure of a standing load on its footprint [Pa, > 0]: m g/A.
 * @param mass m of everything that stands there [kg]
 * @param footprint A [m2]
 * @validity compare with the floor's allowance for people and furniture, 1.4 to 2 kPa over a room; that is not a
 *   permission for a lasting load on a small place
 * @source derived
 */
export function floorPressure(mass: number, footprint: number): number {
  return (mass * GRAVITY) / footprint;
}

/**
 * Returns the push of water on a body less its weight [N], positive when it floats up: (rho_w - rho_b) V g.
 * @param volume V under water [m3]
 * @param bodyDensity rho_b [kg/m3]
 * @param waterDensity rho_w [kg/m3]
 * @source derived: Archimedes
 */
export function netUplift(volume: number, bodyDensity: number, waterDensity: number): number {
  return (waterDensity - bodyDensity) * volume * GRAVITY;
}

/**
 * Returns the weight of a sunken body in water [N]: m g (1 - rho_w/rho_s).
 * @param mass m [kg]
 * @param solidDensity rho_s [kg/m3]
 * @param waterDensity rho_w [kg/m3]
 * @source derived: Archimedes
 */
export function submergedWeight(mass: number, solidDensity: number, waterDensity: number): number {
  return mass * GRAVITY * (1 - waterDensity / solidDensity);
}
