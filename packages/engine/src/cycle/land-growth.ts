import { SECONDS_PER_DAY } from '../units/constants.ts';
import type { LandLayerParameters } from './land-plant-parameters.ts';
import type { LandStand } from './land-stand.ts';
import { heatLimited, type TemperatureResponse, thetaResponse } from './temperature-response.ts';

/** Hours of light a day at which growth and limits of light are stated. @source assumed: lamps are lit 10 to 12 h (common practice) */
export const STATED_HOURS = 11;

/** What a stand can do in a day, by light and warmth. */
export interface LandGrowth {
  /** Assimilation in good light at 20 degC, before respiration [1/d]. */
  readonly best: number;
  /** Respiration and shedding at 20 degC [1/d]. */
  readonly upkeep: number;
  /** Share of the best assimilation that a light allows [>= 0]; above 1 in brighter light or longer days. */
  byLight(light: number): number;
  /** Factor of warmth on assimilation, 1 at 20 degC, and on upkeep. */
  readonly warmth: TemperatureResponse;
  readonly upkeepWarmth: TemperatureResponse;
}

/**
 * Growth of a stand, from what is known of a plant: it grows by `growth` a day in good light and just holds in the
 * least light, both for 11 h a day. With s(I) = I/(I + K):
 *   upkeep m = g s(least) / (s(good) - s(least));  assimilation = (g + m) (hours/11) s(I)/s(good).
 * @param stand its own growth, light and warmth
 * @param parameters half-saturation K [umol/(m2 s)], temperature factor, heat margin [K], usual growth [1/d]
 * @returns rates [1/d] and factors [1]
 * @throws RangeError when the good light is not above the least
 * @source monod-1949 (light); derived: upkeep is what the least light makes good
 */
export function landGrowth(stand: LandStand, parameters: LandLayerParameters): LandGrowth {
  const { least, good, hoursLit } = stand;
  if (!(good > least && least > 0))
    throw new RangeError(
      `${stand.id}: thrives with ${good} µmol/m²/s and lasts with ${least}; the first must be the larger`,
    );
  const half = parameters.lightHalf;
  const share = (light: number): number => light / (light + half);
  const growth =
    parameters.growthFactor *
    (stand.growth === undefined ? parameters.usualGrowth : stand.growth * SECONDS_PER_DAY);
  const upkeep = (growth * share(least)) / (share(good) - share(least));
  const scale = hoursLit / STATED_HOURS / share(good);
  const upkeepWarmth = thetaResponse(parameters.growthTheta, 20);
  const heated = heatLimited(
    thetaResponse(parameters.growthTheta, 20),
    stand.warmest + parameters.heatMargin,
  );
  const atReference = heated(20);
  return {
    best: growth + upkeep,
    upkeep,
    byLight: (light) => (light > 0 ? scale * share(light) : 0),
    warmth: (temperature) => heated(temperature) / atReference,
    upkeepWarmth,
  };
}
