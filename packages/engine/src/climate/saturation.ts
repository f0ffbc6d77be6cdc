import { exp, log } from '../numerics/elementary.ts';
import { ICE_POINT } from '../units/constants.ts';

/**
 * Returns the saturation vapour pressure over liquid water [Pa, > 0].
 *
 * ln p = C1/T + C2 + C3 T + C4 T^2 + C5 T^3 + C6 ln T, T in K.
 * @param temperature [degC], 0 to 200
 * @validity within 0.05 % of steam tables from 10 to 50 degC; below 0 degC supercooled water is extrapolated
 * @source ashrae-fundamentals-2017, chapter 1, equation 6 (Hyland and Wexler)
 */
export function saturationVapourPressure(temperature: number): number {
  const T = temperature + ICE_POINT;
  const polynomial = 1.3914993 + T * (-4.8640239e-2 + T * (4.1764768e-5 - T * 1.4452093e-8));
  return exp(-5.8002206e3 / T + polynomial + 6.5459673 * log(T));
}

/**
 * Returns how fast the saturation vapour pressure rises with temperature [Pa/K, > 0].
 *
 * dp/dT = p (-C1/T^2 + C3 + 2 C4 T + 3 C5 T^2 + C6/T), T in K.
 * @param temperature [degC], 0 to 200
 * @source derived, from ashrae-fundamentals-2017, chapter 1, equation 6
 */
export function saturationSlope(temperature: number): number {
  const T = temperature + ICE_POINT;
  const logarithmic =
    5.8002206e3 / (T * T) - 4.8640239e-2 + T * (2 * 4.1764768e-5 - T * 3 * 1.4452093e-8) + 6.5459673 / T;
  return saturationVapourPressure(temperature) * logarithmic;
}

/**
 * Returns the dew point, the temperature at which air of this vapour pressure is saturated [degC].
 *
 * Solves p_ws(t) = p_v by Newton steps on ln p, starting from the Tetens inverse.
 * @param vapourPressure [Pa], 50 to 100000
 * @throws RangeError when the vapour pressure lies outside that range.
 * @source ashrae-fundamentals-2017, chapter 1, equation 6, inverted
 */
export function dewPoint(vapourPressure: number): number {
  if (!(vapourPressure >= 50 && vapourPressure <= 1e5)) {
    throw new RangeError(`dewPoint: ${vapourPressure} Pa is outside 50 to 100000 Pa`);
  }
  const x = log(vapourPressure / 610.8);
  let t = (237.3 * x) / (17.27 - x);
  for (let i = 0; i < 4; i++) {
    const p = saturationVapourPressure(t);
    t -= (log(p / vapourPressure) * p) / saturationSlope(t);
  }
  return t;
}
