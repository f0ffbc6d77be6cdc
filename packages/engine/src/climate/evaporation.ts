import { cbrt, log, pow } from '../numerics/elementary.ts';
import { ICE_POINT } from '../units/constants.ts';
import { MASS_RATIO } from './moist-air.ts';
import { saturationVapourPressure } from './saturation.ts';

/** Gas constant of water vapour [J/(kg K)]. */
const VAPOUR_GAS_CONSTANT = 461.5;
/** Specific heat of dry air [J/(kg K)]. */
export const AIR_HEAT_CAPACITY = 1006;
/** Lewis number of vapour in air to the power 2/3: 0.866^(2/3) (memory). */
export const LEWIS_FACTOR = 0.9085;

/**
 * Returns the latent heat of evaporation [J/kg, > 0]: 1000 (2501 - 2.361 t).
 * @param temperature t [degC], 0 to 40
 * @validity within 0.6 kJ/kg of the steam table
 * @source steam-table-ohio, linear fit
 */
export function latentHeat(temperature: number): number {
  return 1000 * (2501 - 2.361 * temperature);
}

/**
 * Returns evaporation from a pool with air moving over it [kg/(m2 s)], negative when vapour settles on it:
 * E = (p_w - p_a)(0.0887 + 0.07815 V)/Y, pressures in kPa, Y in kJ/kg.
 * @param deficit p_w - p_a, saturation at the water's temperature less vapour pressure of the air [Pa]
 * @param airSpeed V over the surface [m/s], 0 to 1.5
 * @param latent Y [J/kg]
 * @validity pools of many square metres; undisturbed ones measured 74 % of it
 * @source smith-lof-jones-1998, abstract, converted to SI
 */
export function poolEvaporationCarrier(deficit: number, airSpeed: number, latent: number): number {
  return ((deficit / 1000) * (0.0887 + 0.07815 * airSpeed)) / (latent / 1000);
}

/**
 * Returns evaporation by the engineers' rule of thumb [kg/(m2 s)]: (25 + 19 V)(x_s - x)/3600.
 * @param ratioDifference humidity ratio saturated at the water less that of the air [kg/kg]
 * @param airSpeed V over the surface [m/s]
 * @validity rough: two to three times the quiet-air form in still air
 * @source engineering-toolbox-evaporation
 */
export function poolEvaporationRuleOfThumb(ratioDifference: number, airSpeed: number): number {
  return ((25 + 19 * airSpeed) * ratioDifference) / 3600;
}

/** Air at a surface or in the box, as the quiet-air form needs it. */
export interface QuietAir {
  /** Dry air per volume [kg/m3]. */
  readonly dryDensity: number;
  /** [kg/kg] */
  readonly ratio: number;
  /** [Pa] */
  readonly vapourPressure: number;
}

/**
 * Returns evaporation from undisturbed water into quiet air [kg/(m2 s), >= 0]: the larger of
 * E1 = 35 d_w (d_r - d_w)^(1/3) (W_w - W_r), driven by light moist air rising, and E2 = 5e-5 (p_w - p_r) [kg/(m2 h)].
 * @param atWater air saturated at the temperature of the water
 * @param inBox air above it
 * @validity water 7 to 94 degC, air at 28 to 95 % RH, 0.07 to 425 m2; mean deviation 18 %; rims lower it
 * @source shah-2014
 */
export function poolEvaporationShah2014(atWater: QuietAir, inBox: QuietAir): number {
  const lift = inBox.dryDensity - atWater.dryDensity;
  const natural = 35 * atWater.dryDensity * cbrt(Math.max(0, lift)) * (atWater.ratio - inBox.ratio);
  const forced = 5e-5 * (atWater.vapourPressure - inBox.vapourPressure);
  return Math.max(natural, forced, 0) / 3600;
}

/**
 * Returns the quiet-air form as a conductance [kg/(m2 s) per kg/kg of humidity ratio, > 0]; times W_w - W_r it is the
 * larger of E1 and E2, and it also serves vapour settling on cool water.
 * @param waterDryDensity dry air per volume, saturated at the water's temperature [kg/m3]
 * @param lift dry density in the box less that at the water [kg/m3]
 * @param meanRatio mean of both humidity ratios [kg/kg], for turning pressures into ratios
 * @param pressure [Pa]
 * @source shah-2014; p_w - p_r = p 0.621945 (W_w - W_r)/(0.621945 + W)^2 derived
 */
export function quietAirConductance(
  waterDryDensity: number,
  lift: number,
  meanRatio: number,
  pressure: number,
): number {
  const natural = lift > 0 ? 35 * waterDryDensity * cbrt(lift) : 0;
  const denominator = MASS_RATIO + meanRatio;
  const forced = (5e-5 * pressure * MASS_RATIO) / (denominator * denominator);
  return Math.max(natural, forced) / 3600;
}

/**
 * Returns the diffusivity of vapour in air [m2/s]: 2.178e-5 (T/273.15)^1.81 (101325/p).
 * @param temperature [degC]
 * @param pressure p [Pa]
 * @source massman-1998, coefficients from memory
 */
export function vapourDiffusivity(temperature: number, pressure: number): number {
  return 2.178e-5 * pow((temperature + ICE_POINT) / ICE_POINT, 1.81) * (101325 / pressure);
}

/**
 * Returns the vapour density [kg/m3, >= 0]: p_v/(461.5 T).
 * @param pressureOfVapour p_v [Pa]
 * @param temperature [degC]
 * @source derived from the ideal gas law
 */
export function vapourDensity(pressureOfVapour: number, temperature: number): number {
  return pressureOfVapour / (VAPOUR_GAS_CONSTANT * (temperature + ICE_POINT));
}

/** A still column of air over water. */
export interface StillColumn {
  /** [degC] */
  readonly temperature: number;
  /** [Pa] */
  readonly pressure: number;
  /** [m] */
  readonly height: number;
  /** Vapour pressure at the water and at the top [Pa]. */
  readonly atSurface: number;
  readonly atTop: number;
}

/**
 * Returns evaporation through a still column of air [kg/(m2 s)]: D p/(461.5 T L) ln((p - p_top)/(p - p_surface)).
 * @param column the air above the water
 * @validity no convection: water cooler than the air; a lower bound otherwise
 * @source bird-stewart-lightfoot, section 18.2 (memory)
 */
export function stillColumnEvaporation(column: StillColumn): number {
  const { temperature, pressure, height, atSurface, atTop } = column;
  const perLength =
    (vapourDiffusivity(temperature, pressure) * pressure) /
    (VAPOUR_GAS_CONSTANT * (temperature + ICE_POINT) * height);
  return perLength * log((pressure - atTop) / (pressure - atSurface));
}

/** A moist surface and the air above it. */
export interface MoistSurface {
  /** Temperatures of the surface and of the air [degC]. */
  readonly surfaceTemperature: number;
  readonly airTemperature: number;
  /** Relative humidity of the air [0..1]. */
  readonly relativeHumidity: number;
  /** Resistance of the air layer and of the surface itself [s/m]; their sum is above 0. */
  readonly airResistance: number;
  readonly surfaceResistance: number;
}

/**
 * Returns evaporation from moss, soil or leaves [kg/(m2 s)], negative for dew: (rho_sat(t_s) - rho_air)/(r_a + r_s).
 * @param surface the surface and its air
 * @validity r_a 100 to 300 s/m in a quiet box; r_s 0 when wet, 50 to 150 moist, 300 and more when drying
 * @source bond-lamberty-2010, moss resistance; form from memory
 */
export function moistSurfaceEvaporation(surface: MoistSurface): number {
  const { surfaceTemperature, airTemperature, relativeHumidity, airResistance, surfaceResistance } = surface;
  const atSurface = vapourDensity(saturationVapourPressure(surfaceTemperature), surfaceTemperature);
  const inAir = vapourDensity(relativeHumidity * saturationVapourPressure(airTemperature), airTemperature);
  return (atSurface - inAir) / (airResistance + surfaceResistance);
}
