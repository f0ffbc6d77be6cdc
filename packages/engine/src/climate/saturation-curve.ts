import { MASS_RATIO } from './moist-air.ts';
import { saturationSlope, saturationVapourPressure } from './saturation.ts';

const LOWEST = -20;
const HIGHEST = 80;
const PER_KELVIN = 2;
const COUNT = (HIGHEST - LOWEST) * PER_KELVIN + 1;

/** Saturated humidity ratio at one total pressure, tabulated from -20 to 80 degC for the inner loop of the climate. */
export interface SaturationCurve {
  /**
   * Writes the tangent to the curve at a temperature [degC]: its value at 0 degC [kg/kg] into `into[at]` and its
   * slope [1/K] into `into[at + 1]`.
   * @throws RangeError outside the table.
   */
  tangent(temperature: number, into: Float64Array, at: number): void;
}

/**
 * Returns the curve W_s(t) = 0.621945 p_ws/(p - p_ws) by cubic Hermite interpolation every half kelvin.
 * @param pressure p [Pa], above 50000
 * @throws RangeError for a pressure at which water boils within the table.
 * @validity within 1e-7 of the formula it tabulates
 * @source ashrae-fundamentals-2017, chapter 1, equations 6 and 20
 */
export function saturationCurve(pressure: number): SaturationCurve {
  if (last?.pressure !== pressure) last = { pressure, curve: tabulated(pressure) };
  return last.curve;
}

/** The curve asked for last: the members of an outlook share theirs. */
let last: { readonly pressure: number; readonly curve: SaturationCurve } | undefined;

function tabulated(pressure: number): SaturationCurve {
  if (!(pressure > 5e4)) throw new RangeError(`air pressure of ${pressure} Pa: give more than 50000 Pa`);
  const value = new Float64Array(COUNT);
  const slope = new Float64Array(COUNT);
  for (let i = 0; i < COUNT; i++) {
    const temperature = LOWEST + i / PER_KELVIN;
    const vapour = saturationVapourPressure(temperature);
    const dry = pressure - vapour;
    value[i] = (MASS_RATIO * vapour) / dry;
    slope[i] = (MASS_RATIO * pressure * saturationSlope(temperature)) / (dry * dry * PER_KELVIN);
  }
  return {
    tangent(temperature, into, at) {
      const place = (temperature - LOWEST) * PER_KELVIN;
      if (!(place >= 0 && place < COUNT - 1)) {
        throw new RangeError(`${temperature} degC in the box is outside ${LOWEST} to ${HIGHEST} degC`);
      }
      const i = Math.trunc(place);
      const u = place - i;
      const v = 1 - u;
      const low = value[i]!;
      const rise = value[i + 1]! - low;
      const a = slope[i]! - rise;
      const b = rise - slope[i + 1]!;
      // low + u rise + u v (a v + b u): the cubic through both values and slopes
      const bend = a * v + b * u;
      const steepness = PER_KELVIN * (rise + (v - u) * bend + u * v * (b - a));
      into[at] = low + u * rise + u * v * bend - steepness * temperature;
      into[at + 1] = steepness;
    },
  };
}
