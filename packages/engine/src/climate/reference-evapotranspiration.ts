import { exp, log } from '../numerics/elementary.ts';
import { square } from '../numerics/small-powers.ts';

/**
 * Returns the saturation vapour pressure in the Tetens form [Pa, > 0]: e = 610.8 exp(17.27 t/(t + 237.3)).
 * @param temperature t [degC], 0 to 50
 * @validity within 0.11 % of the Hyland-Wexler form from 0 to 40 degC
 * @source fao-56, equation 11
 */
export function saturationPressureTetens(temperature: number): number {
  return 610.8 * exp((17.27 * temperature) / (temperature + 237.3));
}

/**
 * Returns the slope of the Tetens curve [Pa/K, > 0]: 4098 e(t)/(t + 237.3)^2.
 * @param temperature t [degC], 0 to 50
 * @source fao-56, equation 13
 */
export function saturationSlopeTetens(temperature: number): number {
  return (4098 * saturationPressureTetens(temperature)) / square(temperature + 237.3);
}

/**
 * Returns the psychrometric constant [Pa/K, > 0]: 0.665e-3 p.
 * @param pressure p [Pa]
 * @source fao-56, equation 8
 */
export function psychrometricConstant(pressure: number): number {
  return 0.665e-3 * pressure;
}

/**
 * Returns the wind speed 2 m above ground [m/s]: u2 = u 4.87/ln(67.8 z - 5.42).
 * @param speed u [m/s] measured at `height`
 * @param height z [m], above 0.1
 * @source fao-56, equation 47
 */
export function windAtTwoMetres(speed: number, height: number): number {
  return (speed * 4.87) / log(67.8 * height - 5.42);
}

/** Extremes of one day: temperatures [degC], relative humidity [0..1]. */
export interface DailyExtremes {
  readonly lowestTemperature: number;
  readonly highestTemperature: number;
  readonly lowestHumidity: number;
  readonly highestHumidity: number;
}

/**
 * Returns the vapour pressure of a day [Pa]: half of e(t_min) RH_max + e(t_max) RH_min.
 * @param day extremes of the day
 * @source fao-56, equation 17
 */
export function dailyVapourPressure(day: DailyExtremes): number {
  return (
    (saturationPressureTetens(day.lowestTemperature) * day.highestHumidity +
      saturationPressureTetens(day.highestTemperature) * day.lowestHumidity) /
    2
  );
}

/** Weather of one day for the reference surface. */
export interface DailyWeather {
  /** [degC] */
  readonly temperature: number;
  /** Net radiation less heat into the ground [J/(m2 day)]. */
  readonly netRadiation: number;
  /** Wind at 2 m [m/s]. */
  readonly wind: number;
  /** Saturation less actual vapour pressure [Pa]. */
  readonly deficit: number;
  /** [Pa] */
  readonly pressure: number;
}

/**
 * Returns the reference evapotranspiration of short grass outdoors [mm/day, >= 0 by day]:
 * (0.408 D R + g 900/(t + 273) u d)/(D + g (1 + 0.34 u)), D and g in kPa/K, R in MJ/(m2 day), d in kPa.
 * @param weather one day
 * @validity outdoors over grass; a bound and a check for the box, not a model of it
 * @source fao-56, equation 6
 */
export function referenceEvapotranspiration(weather: DailyWeather): number {
  const { temperature, netRadiation, wind, deficit, pressure } = weather;
  const D = saturationSlopeTetens(temperature) / 1000;
  const g = psychrometricConstant(pressure) / 1000;
  const radiative = 0.408 * D * (netRadiation / 1e6);
  const aerodynamic = ((g * 900) / (temperature + 273)) * wind * (deficit / 1000);
  return (radiative + aerodynamic) / (D + g * (1 + 0.34 * wind));
}
