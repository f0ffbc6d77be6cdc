import type { Devices, Lamp } from '@shoreglass/engine';
import type { EnclosureContent } from '../schema/enclosure.ts';

type DevicesContent = NonNullable<EnclosureContent['devices']>;
type LampContent = NonNullable<DevicesContent['lamps']>[number];

/** Photons per luminous flux of white LEDs [umol/lm]. @source computed from the CIE LED illuminants B1 to B5, +/- 4 % */
const PHOTONS_PER_LUMEN = 0.0144;
/** Where neither photons nor lumens are given [umol/J]. @source assumed: white LED bars of the trade */
export const PHOTONS_PER_JOULE = 1.8;
/** Part of the emitted light that reaches the cover; the rest goes past it. @source assumed */
const REACHES_COVER = 0.85;

function photonFluxOf({ power, photons, lumens }: LampContent): number {
  if (photons !== undefined) return photons;
  return (lumens === undefined ? power * PHOTONS_PER_JOULE : lumens * PHOTONS_PER_LUMEN) * REACHES_COVER;
}

function lampOf(lamp: LampContent): Lamp {
  const { name = 'Lamp', power, on, lit } = lamp;
  return { name, power, photonFlux: photonFluxOf(lamp), onAt: on, hours: lit };
}

/** [kg/m3] */
const WATER_DENSITY = 998;

export function devicesOf({ lamps = [], heater, pump, mister }: DevicesContent): Devices {
  return {
    lamps: lamps.map(lampOf),
    ...(heater ? { heater } : {}),
    ...(pump
      ? {
          pump: {
            name: pump.name ?? 'Pump',
            power: pump.power,
            flow: pump.flow,
            fallHeight: pump.fall ?? 0,
            filmSurface: pump.films ?? 0,
          },
        }
      : {}),
    ...(mister
      ? {
          mister: {
            name: mister.name ?? 'Mister',
            dailyMass: mister.amount * WATER_DENSITY,
            at: mister.at,
          },
        }
      : {}),
  };
}
