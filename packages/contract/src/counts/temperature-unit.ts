import { toPlanUnit } from '@shoreglass/engine';

export type TemperatureUnit = '°C' | '°F';

/** '°C' where nothing is said, and undefined where something else is. */
export function temperatureUnitOf(written: string | undefined): TemperatureUnit | undefined {
  const plain = (written ?? '°C').trim();
  if (/^(°|deg)?c$/i.test(plain)) return '°C';
  return /^(°|deg)?f$/i.test(plain) ? '°F' : undefined;
}

/** A temperature in °C. */
export const inCelsius = (value: number, unit: TemperatureUnit): number =>
  toPlanUnit(value, unit, 'temperature');
