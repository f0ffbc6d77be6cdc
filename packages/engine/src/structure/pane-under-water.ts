import { GRAVITY } from '../climate/openings.ts';
import { exp, log } from '../numerics/elementary.ts';
import { cube, fourth, square } from '../numerics/small-powers.ts';
import { monotoneCubic } from './monotone-cubic.ts';
import {
  BRACED_DEFLECTION,
  BRACED_STRESS,
  DEPTH_RATIOS,
  FREE_DEFLECTION,
  FREE_STRESS,
  LENGTH_RATIOS,
} from './pane-table.ts';

/** Elastic modulus of glass [Pa]. @source en-572 */
export const GLASS_MODULUS = 70e9;

export type TopEdge = 'free' | 'braced';

/** An upright pane that holds water back, held at base and sides. */
export interface PaneUnderWater {
  /** [m] */
  readonly length: number;
  readonly height: number;
  /** Depth of the water against it [m], above 0, at most the height. */
  readonly waterDepth: number;
  readonly topEdge: TopEdge;
  /** Density of the water [kg/m3]. */
  readonly density: number;
}

/** What the water does to a pane. */
export interface PaneLoad {
  /** Pressure at the base [Pa]. */
  readonly basePressure: number;
  /** Coefficients beta of stress and alpha of deflection, by the height of the pane. */
  readonly stressCoefficient: number;
  readonly deflectionCoefficient: number;
}

const logarithms = (values: readonly number[]): number[] => values.map((value) => log(value));
const LOG_DEPTHS = logarithms(DEPTH_RATIOS);
const LOG_LENGTHS = logarithms(LENGTH_RATIOS);

/** The table between its entries: monotone cubics on logarithms, along each row and then across the rows. */
function tabulated(table: readonly (readonly number[])[], depthRatio: number, lengthRatio: number): number {
  const alongRows = table.map((row) => monotoneCubic(LOG_LENGTHS, logarithms(row), log(lengthRatio)));
  return exp(monotoneCubic(LOG_DEPTHS, alongRows, log(depthRatio)));
}

/**
 * Returns the pressure of water at a depth [Pa, >= 0]: rho g d.
 * @param depth d [m], >= 0
 * @param density rho [kg/m3]
 * @source derived: hydrostatics
 */
export function waterPressure(depth: number, density: number): number {
  return density * GRAVITY * depth;
}

/** The whole push of water on a pane. */
export interface WaterPush {
  /** [N] */
  readonly force: number;
  /** Height above the base at which it acts [m]. */
  readonly height: number;
}

/**
 * Returns the force of water on a pane [N] and the height at which it acts [m]: 0.5 rho g L d^2, a third of d up.
 * @param length L of the pane [m]
 * @param depth d of the water [m]
 * @param density rho [kg/m3]
 * @source derived: hydrostatics
 */
export function waterPush(length: number, depth: number, density: number): WaterPush {
  return { force: 0.5 * waterPressure(depth, density) * length * depth, height: depth / 3 };
}

/**
 * Returns the pressure at the base [Pa] and the coefficients of stress and deflection of a pane [1, > 0].
 * @param pane sizes, water and top edge
 * @throws RangeError when the water is deeper than the pane or its length is not 0.5 to 4 times its height.
 * @validity small deflections (below half the thickness); depth below a quarter of the height is extrapolated; an ideal
 *   pane without chips, bad joints, uneven stand or blows. A first estimate, never a permission to build.
 * @source derived: see `DEPTH_RATIOS`
 */
export function paneLoad({ length, height, waterDepth, topEdge, density }: PaneUnderWater): PaneLoad {
  const lengthRatio = length / height;
  const depthRatio = waterDepth / height;
  if (!(depthRatio > 0 && depthRatio <= 1 + 1e-9)) {
    throw new RangeError(`paneLoad: water ${waterDepth} m deep against a pane ${height} m high`);
  }
  if (!(lengthRatio >= 0.5 - 1e-9 && lengthRatio <= 4 + 1e-9)) {
    throw new RangeError(
      `paneLoad: a pane ${length} m long and ${height} m high is not 0.5 to 4 times as long as high`,
    );
  }
  const isFree = topEdge === 'free';
  return {
    basePressure: waterPressure(waterDepth, density),
    stressCoefficient: tabulated(isFree ? FREE_STRESS : BRACED_STRESS, depthRatio, lengthRatio),
    deflectionCoefficient: tabulated(isFree ? FREE_DEFLECTION : BRACED_DEFLECTION, depthRatio, lengthRatio),
  };
}

/**
 * Returns the largest bending stress in a pane [Pa, > 0]: beta p0 H^2/t^2.
 * @param pane sizes, water and top edge
 * @param thickness t [m]
 * @throws RangeError as `paneLoad`.
 * @source derived
 */
export function paneStress(pane: PaneUnderWater, thickness: number): number {
  const { basePressure, stressCoefficient } = paneLoad(pane);
  return stressCoefficient * basePressure * square(pane.height / thickness);
}

/**
 * Returns the largest deflection of a pane [m, > 0]: alpha p0 H^4/(E t^3).
 * @param pane sizes, water and top edge
 * @param thickness t [m]
 * @param modulus E [Pa]
 * @throws RangeError as `paneLoad`.
 * @validity only indicative beyond half the thickness
 * @source derived
 */
export function paneDeflection(pane: PaneUnderWater, thickness: number, modulus: number): number {
  const { basePressure, deflectionCoefficient } = paneLoad(pane);
  return (deflectionCoefficient * basePressure * fourth(pane.height)) / (modulus * cube(thickness));
}

/**
 * Returns the thickness at which a pane just keeps to an allowed stress [m, > 0]: H sqrt(beta p0/sigma). Round up to the
 * next stock thickness after taking off its tolerance.
 * @param pane sizes, water and top edge
 * @param allowedStress sigma [Pa]
 * @throws RangeError as `paneLoad`.
 * @source derived
 */
export function leastThickness(pane: PaneUnderWater, allowedStress: number): number {
  const { basePressure, stressCoefficient } = paneLoad(pane);
  return pane.height * Math.sqrt((stressCoefficient * basePressure) / allowedStress);
}
