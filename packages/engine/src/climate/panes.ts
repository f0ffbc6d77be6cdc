import { pow } from '../numerics/elementary.ts';
import { ICE_POINT } from '../units/constants.ts';
import { saturationVapourPressure } from './saturation.ts';

/** Conductivity of soda-lime glass [W/(m K)]. @source en-572 */
export const GLASS_CONDUCTIVITY = 1;
/** Stefan-Boltzmann constant [W/(m2 K4)]. */
const STEFAN_BOLTZMANN = 5.670374e-8;

/** A pane with a film coefficient on either side [W/(m2 K)], thickness [m] and conductivity [W/(m K)]. */
export interface Pane {
  readonly thickness: number;
  readonly conductivity: number;
  readonly inside: number;
  readonly outside: number;
}

/**
 * Returns the heat transmittance of a pane [W/(m2 K), > 0]: 1/(1/h_i + t/k + 1/h_o).
 * @param pane thickness and film coefficients; indoors 7.7 on both sides, about 200 where water touches it
 * @source en-673
 */
export function paneTransmittance({ thickness, conductivity, inside, outside }: Pane): number {
  return 1 / (1 / inside + thickness / conductivity + 1 / outside);
}

/**
 * Returns the temperature of a pane's inner face in steady state [degC]: t_in - (U/h_i)(t_in - t_out).
 * @param pane thickness and film coefficients
 * @param insideTemperature [degC]
 * @param outsideTemperature [degC]
 * @validity the middle of the pane; edges and corners are colder (film coefficient 4 to 5 there)
 * @source en-673, derived
 */
export function paneInnerTemperature(
  pane: Pane,
  insideTemperature: number,
  outsideTemperature: number,
): number {
  const share = paneTransmittance(pane) / pane.inside;
  return insideTemperature - share * (insideTemperature - outsideTemperature);
}

/**
 * Returns the relative humidity of the air from which a surface fogs [> 0]: p_ws(t_surface)/p_ws(t_air).
 * @param surfaceTemperature [degC]
 * @param airTemperature [degC]
 * @source derived from the dew point
 */
export function foggingHumidity(surfaceTemperature: number, airTemperature: number): number {
  return saturationVapourPressure(surfaceTemperature) / saturationVapourPressure(airTemperature);
}

/**
 * Returns the coefficient of heat radiated between surfaces of little difference [W/(m2 K), > 0]: 4 eps sigma T^3.
 * @param emissivity eps, 0 to 1; glass 0.84 to 0.89
 * @param meanTemperature [degC]
 * @source derived from the Stefan-Boltzmann law, linearised
 */
export function radiationCoefficient(emissivity: number, meanTemperature: number): number {
  const T = meanTemperature + ICE_POINT;
  return 4 * emissivity * STEFAN_BOLTZMANN * T * T * T;
}

/**
 * Returns the film coefficient of free convection on an upright pane [W/(m2 K)]: 1.42 (dT/L)^(1/4).
 * @param difference dT between pane and air [K], >= 0
 * @param height L of the pane [m]
 * @validity laminar, 1e4 < Gr Pr < 1e9
 * @source holman (memory)
 */
export function paneConvection(difference: number, height: number): number {
  return 1.42 * pow(difference / height, 0.25);
}
