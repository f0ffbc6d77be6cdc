import { moistSurfaceEvaporation } from '../climate/evaporation.ts';

/** Water that leaves give off in the dark over that in the light [1]. @source page: 72 to 91 % of a day's water by day, six office plants */
export const DARK_SHARE = 0.25;

/**
 * Water a leaf area gives off in a day [kg/(m2 d), >= 0]: (rho_sat - rho_air)/r through the hours of light, a quarter of
 * it in the dark; leaves are as warm as the air.
 * @param day mean temperature [degC] and humidity [%], hours lit, resistance r of leaves and the air about them [s/m]
 * @validity plants well watered; stomata do not answer to the air's dryness
 * @source bond-lamberty-2010 (form of the resistance); the share by day as read in a page on six office plants
 */
export function leafTranspiration(day: {
  readonly temperature: number;
  readonly humidity: number;
  readonly hoursLit: number;
  readonly resistance: number;
}): number {
  const { temperature, humidity, hoursLit, resistance } = day;
  const flow = moistSurfaceEvaporation({
    surfaceTemperature: temperature,
    airTemperature: temperature,
    relativeHumidity: humidity / 100,
    airResistance: 0,
    surfaceResistance: resistance,
  });
  const hours = hoursLit + DARK_SHARE * (24 - hoursLit);
  return Math.max(0, flow) * hours * 3600;
}
