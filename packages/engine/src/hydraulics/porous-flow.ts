import { GRAVITY } from '../climate/openings.ts';
import { cube, square } from '../numerics/small-powers.ts';

/** One darcy in square metres. */
export const DARCY = 9.869233e-13;

/** Water moving through a bed of grains or a block of foam. */
export interface Seepage {
  /** Flow by the whole cross-section [m/s]. */
  readonly speed: number;
  /** Way through [m]. */
  readonly length: number;
  /** Density [kg/m3] and dynamic viscosity [Pa s] of the fluid. */
  readonly density: number;
  readonly viscosity: number;
}

/**
 * Returns the pressure lost in a bed of grains [Pa, >= 0]:
 * L (150 mu (1 - e)^2 v/(e^3 d^2) + 1.75 rho (1 - e) v^2/(e^3 d)).
 * @param seepage v, L, rho and mu
 * @param diameter d of the grains times their shape factor [m]: spheres 1, rounded sand 0.82, average 0.75, angular 0.73
 * @param porosity e, 0 to 1
 * @source ergun-1952; shape factors davis-filters
 */
export function bedLoss(
  { speed, length, density, viscosity }: Seepage,
  diameter: number,
  porosity: number,
): number {
  const solid = 1 - porosity;
  const cube = porosity * porosity * porosity;
  const viscous = (150 * viscosity * solid * solid * speed) / (cube * diameter * diameter);
  const inertial = (1.75 * density * solid * speed * speed) / (cube * diameter);
  return length * (viscous + inertial);
}

/**
 * Returns the permeability of a bed of grains [m2, > 0]: d^2 e^3/(180 (1 - e)^2).
 * @param diameter d of the grains [m]
 * @param porosity e, 0 to below 1
 * @validity slow flow, grain Reynolds number below 1 to 6
 * @source kozeny-carman (memory)
 */
export function bedPermeability(diameter: number, porosity: number): number {
  const solid = 1 - porosity;
  return (diameter * diameter * cube(porosity)) / (180 * solid * solid);
}

/**
 * Returns the hydraulic conductivity [m/s, > 0]: k rho g/mu.
 * @param permeability k [m2]
 * @param density rho of the water [kg/m3]
 * @param viscosity mu, dynamic [Pa s]
 * @source derived
 */
export function hydraulicConductivity(permeability: number, density: number, viscosity: number): number {
  return (permeability * density * GRAVITY) / viscosity;
}

/**
 * Returns the hydraulic conductivity of sand by its finest tenth [m/s, > 0]: 1 cm/s times d10^2 in mm2.
 * @param finestTenth d10, the grain size that a tenth of the mass passes [m], 1e-4 to 3e-3
 * @source hazen-1892 (memory)
 */
export function sandConductivityHazen1892(finestTenth: number): number {
  return 0.01 * square(finestTenth * 1000);
}

/**
 * Returns the pressure lost in open-pored foam [Pa, >= 0]: L (mu v/k + rho F v^2/sqrt k).
 * @param seepage v, L, rho and mu
 * @param permeability k [m2]: clean foam of 10 to 40 pores per inch 1.2e-7 to 0.6e-7; a fouled one a tenth to a thousandth
 * @param inertial F, 0.085 to 0.10
 * @source bhattacharya-2002 (memory): measured on metal foams
 */
export function foamLoss(seepage: Seepage, permeability: number, inertial: number): number {
  const { speed, length, density, viscosity } = seepage;
  const viscous = (viscosity * speed) / permeability;
  return length * (viscous + (density * inertial * speed * speed) / Math.sqrt(permeability));
}

/**
 * Returns the water a drainage layer or false bottom holds [m3, >= 0]: volume times void fraction.
 * @param area in plan view [m2]
 * @param depth [m]
 * @param voidFraction 0 to 1; false bottoms 0.9 to 0.97 (common practice)
 * @source derived
 */
export function layerStorage(area: number, depth: number, voidFraction: number): number {
  return area * depth * voidFraction;
}

/**
 * Returns the radius of pores that lift water to a height [m, > 0]: 2 sigma/(rho g h), wetted walls.
 * @param rise h [m], above 0
 * @param tension sigma [N/m]
 * @param density rho [kg/m3]
 * @source derived: Jurin
 */
export function poreRadiusOfRise(rise: number, tension: number, density: number): number {
  return (2 * tension) / (density * GRAVITY * rise);
}

/**
 * Returns the height to which pores lift water [m, > 0]: 2 sigma/(rho g r), wetted walls.
 * @param radius r [m], above 0; 0.2 to 0.3 of the grain diameter (memory)
 * @param tension sigma [N/m]
 * @param density rho [kg/m3]
 * @source derived: Jurin
 */
export function capillaryRise(radius: number, tension: number, density: number): number {
  return (2 * tension) / (density * GRAVITY * radius);
}

/**
 * Returns the capillary rise in a bed of grains [m, > 0]: 0.45 (1 - n)/(n d) in cm, d in cm.
 * @param porosity n, 0 to 1
 * @param diameter d of the grains [m]
 * @source polubarinova-kochina (memory)
 */
export function capillaryRiseInGrains(porosity: number, diameter: number): number {
  return (0.45e-4 * (1 - porosity)) / (porosity * diameter);
}
