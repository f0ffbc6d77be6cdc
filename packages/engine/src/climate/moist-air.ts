import { pow } from '../numerics/elementary.ts';
import { ICE_POINT } from '../units/constants.ts';
import { dewPoint, saturationVapourPressure } from './saturation.ts';

/** Molar mass of water by that of dry air. */
export const MASS_RATIO = 0.621945;
/** Gas constant of dry air [J/(kg K)]. */
const DRY_AIR_GAS_CONSTANT = 287.042;
/** Standard pressure at sea level [Pa]. */
export const STANDARD_PRESSURE = 101325;

/**
 * Returns the humidity ratio [kg vapour/kg dry air, >= 0]: W = 0.621945 p_v/(p - p_v), ideal gas.
 * @param vapourPressure p_v [Pa], 0 to below `pressure`
 * @param pressure p [Pa]
 * @throws RangeError when the vapour pressure is not below the total pressure.
 * @validity the real-gas enhancement, about 0.4 % at saturation, is left out
 * @source ashrae-fundamentals-2017, chapter 1, equation 20
 */
export function humidityRatio(vapourPressure: number, pressure: number): number {
  if (!(vapourPressure >= 0 && vapourPressure < pressure)) {
    throw new RangeError(`humidityRatio: ${vapourPressure} Pa of vapour in air of ${pressure} Pa`);
  }
  return (MASS_RATIO * vapourPressure) / (pressure - vapourPressure);
}

/**
 * Returns the vapour pressure [Pa, >= 0]: p_v = p W/(0.621945 + W).
 * @param ratio humidity ratio W [kg/kg], >= 0
 * @param pressure p [Pa]
 * @source ashrae-fundamentals-2017, chapter 1, equation 20, inverted
 */
export function vapourPressure(ratio: number, pressure: number): number {
  return (pressure * ratio) / (MASS_RATIO + ratio);
}

/**
 * Returns the vapour pressure deficit [Pa], positive below saturation: p_ws(t) (1 - RH).
 * @param temperature [degC], 0 to 200
 * @param relativeHumidity 0 to 1
 * @source ashrae-fundamentals-2017, chapter 1, equation 22
 */
export function vapourPressureDeficit(temperature: number, relativeHumidity: number): number {
  return saturationVapourPressure(temperature) * (1 - relativeHumidity);
}

/**
 * Returns the enthalpy of moist air [J/kg dry air], 0 for dry air at 0 degC: h = 1000 (1.006 t + W (2501 + 1.86 t)).
 * @param temperature t [degC], 0 to 100
 * @param ratio humidity ratio W [kg/kg], >= 0
 * @source ashrae-fundamentals-2017, chapter 1, equation 30
 */
export function moistAirEnthalpy(temperature: number, ratio: number): number {
  return 1000 * (1.006 * temperature + ratio * (2501 + 1.86 * temperature));
}

/**
 * Returns the volume of moist air per mass of dry air [m3/kg]: v = 287.042 T (1 + 1.607858 W)/p.
 * @param temperature [degC]
 * @param ratio humidity ratio W [kg/kg], >= 0
 * @param pressure p [Pa]
 * @source ashrae-fundamentals-2017, chapter 1, equation 26
 */
export function moistAirVolume(temperature: number, ratio: number, pressure: number): number {
  return (DRY_AIR_GAS_CONSTANT * (temperature + ICE_POINT) * (1 + 1.607858 * ratio)) / pressure;
}

/**
 * Returns the density of moist air, vapour included [kg/m3]: rho = (1 + W)/v.
 * @param temperature [degC]
 * @param ratio humidity ratio W [kg/kg], >= 0
 * @param pressure [Pa]
 * @source ashrae-fundamentals-2017, chapter 1, equation 9
 */
export function moistAirDensity(temperature: number, ratio: number, pressure: number): number {
  return (1 + ratio) / moistAirVolume(temperature, ratio, pressure);
}

/**
 * Returns the humidity ratio of air whose wet bulb is known [kg/kg]:
 * W = ((2501 - 2.326 t*) W_s(t*) - 1.006 (t - t*))/(2501 + 1.86 t - 4.186 t*).
 * @param temperature dry bulb t [degC]
 * @param wetBulbTemperature t* [degC], 0 to t
 * @param pressure [Pa]
 * @validity wet bulb above freezing
 * @source ashrae-fundamentals-2017, chapter 1, equation 33
 */
export function humidityRatioFromWetBulb(
  temperature: number,
  wetBulbTemperature: number,
  pressure: number,
): number {
  const saturated = humidityRatio(saturationVapourPressure(wetBulbTemperature), pressure);
  return (
    ((2501 - 2.326 * wetBulbTemperature) * saturated - 1.006 * (temperature - wetBulbTemperature)) /
    (2501 + 1.86 * temperature - 4.186 * wetBulbTemperature)
  );
}

/**
 * Returns the wet bulb temperature [degC], where fogging without heat stops: the root of
 * `humidityRatioFromWetBulb` between dew point and dry bulb, by bisection.
 * @param temperature dry bulb [degC], above 0
 * @param ratio humidity ratio [kg/kg], of unsaturated air
 * @param pressure [Pa]
 * @throws RangeError when the air holds next to no vapour (below 50 Pa).
 * @source ashrae-fundamentals-2017, chapter 1, equation 33
 */
export function wetBulb(temperature: number, ratio: number, pressure: number): number {
  let low = dewPoint(vapourPressure(ratio, pressure));
  let high = temperature;
  while (high - low > 1e-9) {
    const middle = 0.5 * (low + high);
    if (humidityRatioFromWetBulb(temperature, middle, pressure) > ratio) high = middle;
    else low = middle;
  }
  return 0.5 * (low + high);
}

/**
 * Returns the pressure of the standard atmosphere [Pa]: p = 101325 (1 - 2.25577e-5 z)^5.2559.
 * @param altitude z above sea level [m], -5000 to 11000
 * @source ashrae-fundamentals-2017, chapter 1, equation 3
 */
export function standardPressure(altitude: number): number {
  return STANDARD_PRESSURE * pow(1 - 2.25577e-5 * altitude, 5.2559);
}
