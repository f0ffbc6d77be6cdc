import { thetaResponse } from '../cycle/temperature-response.ts';
import { exp, log } from '../numerics/elementary.ts';
import { VARIABLE_INDEX as V } from '../variables/variables.ts';
import type { AirConditions } from './surroundings.ts';

/** Air over wood: temperature [degC] and relative humidity [%]. */
export type WoodAir = Pick<AirConditions, 'temperature' | 'humidity'>;

const DAYS_PER_WEEK = 7;
/** Warmth and humidity outside which no mould grows on wood [degC, %]. @source hukka-viitanen-1999 */
const COLDEST = 0;
const WARMEST = 50;
const DRIEST_WARM = 80;
const WARM = 20;
/** Index by which mould is seen under a microscope, and by the eye [1]. @source hukka-viitanen-1999 */
const FIRST = 1;
export const SEEN_BY_EYE = 3;
/** Fall of the index in dry spells of more than a day [1/d]. @source hukka-viitanen-1999 (memory) */
const DRY_FALL = 0.016;

/**
 * Lowest humidity at which mould grows on bare sapwood [%]: 80 above 20 degC, else -0.00267 T^3 + 0.16 T^2 - 3.13 T + 100.
 * @param temperature T [degC], 0 to 50
 * @source hukka-viitanen-1999
 */
export function leastHumidity(temperature: number): number {
  if (temperature > WARM) return DRIEST_WARM;
  return ((-0.00267 * temperature + 0.16) * temperature - 3.13) * temperature + 100;
}

/**
 * Highest mould index that air allows in the end [1], 0 to 6: 1 + 7 x - 2 x^2, x = (least - RH)/(least - 100).
 * @source hukka-viitanen-1999
 */
export function highestIndex({ temperature, humidity }: WoodAir): number {
  const least = leastHumidity(temperature);
  if (!(humidity >= least && temperature > COLDEST && temperature <= WARMEST)) return 0;
  if (least >= 100) return FIRST;
  const x = (least - humidity) / (least - 100);
  return 1 + 7 * x - 2 * x * x;
}

/**
 * Rise of the mould index of bare pine sapwood [1/d], >= 0: k1 k2/(7 tm), tm the weeks to index 1,
 *   tm = exp(-0.68 ln T - 13.9 ln RH + 66.02),  tv = exp(-0.74 ln T - 12.72 ln RH + 61.5) the weeks to index 3,
 *   k1 = 1 below index 1, 2/(tv/tm - 1) above;  k2 = 1 - exp(2.3 (M - Mmax)), not below 0.
 * @param index M [1], 0 to 6
 * @param most Mmax [1]
 * @validity small planed samples of sapwood without liquid water; heartwood and bark are slower
 * @source hukka-viitanen-1999
 */
export function mouldGrowth(index: number, { temperature, humidity }: WoodAir, most: number): number {
  if (!(most > 0 && index < most)) return 0;
  const warmth = log(temperature);
  const moisture = log(humidity);
  const first = exp(-0.68 * warmth - 13.9 * moisture + 66.02);
  const seen = exp(-0.74 * warmth - 12.72 * moisture + 61.5);
  const pace = index < FIRST ? 1 : 2 / (seen / first - 1);
  return (pace * (1 - exp(2.3 * (index - most)))) / (DAYS_PER_WEEK * first);
}

/**
 * Part of the bare wood that mould covers [0..1]: by index 2 none to the eye, 3 a tenth, 4 four tenths, 5 three quarters,
 * 6 all, straight in between.
 * @source hukka-viitanen-1999: index 3 is below 10 %, 4 is 10 to 50 %, 5 above 50 %, 6 about 100 %
 */
export function mouldCover(index: number): number {
  const step = Math.min(COVERS.length - 1, Math.floor(index));
  const from = COVERS[step]!;
  const to = COVERS[Math.min(COVERS.length - 1, step + 1)]!;
  return from + (index - step) * (to - from);
}
const COVERS = [0, 0, 0, 0.1, 0.4, 0.75, 1] as const;

export interface WoodMouldParameters {
  /** Time to mould over that of sapwood [1]. */
  readonly mouldTime: number;
  /** Upkeep and death of fungi at 20 degC [1/d], and its temperature factor. */
  readonly fungiRate: number;
  readonly theta: number;
}

/** Mould on the bare wood above the water, all pieces alike. */
export interface WoodMould {
  /** Mould index [1], 0 to 6. */
  readonly index: number;
  /** Lets a day pass and sets the driver `woodMouldCover`. */
  pass(values: Float64Array, air: WoodAir): void;
}

/**
 * Mould on bare wood through time. A day raises the index by `mouldGrowth` over `mouldTime`; the highest index is that of
 * the air times the part of the sugars near the surface that is left, and what lies above it dies back at the pace of
 * fungi; in air too dry it falls by 0.016 a day.
 * @param start sugars near the surface on the first day [mol C]
 * @validity one humidity for all wood, that of the box air; eaters are not told apart from those of other fungi
 * @source hukka-viitanen-1999; that the bloom fades as its food goes is common practice, no source; the form is assumed
 */
export function createWoodMould(parameters: WoodMouldParameters, start: number): WoodMould {
  const { mouldTime, fungiRate } = parameters;
  const warmth = thetaResponse(parameters.theta, 20);
  let index = 0;
  return {
    get index() {
      return index;
    },
    pass(values, air) {
      const left = start > 0 ? values[V.landWoodCarbon]! / start : 0;
      const allowed = highestIndex(air);
      const most = allowed * left;
      if (allowed === 0) index = Math.max(0, index - DRY_FALL);
      else if (index > most) index -= Math.min(1, fungiRate * warmth(air.temperature)) * (index - most);
      else index = Math.min(most, index + mouldGrowth(index, air, most) / mouldTime);
      values[V.woodMouldCover] = mouldCover(index);
    },
  };
}
