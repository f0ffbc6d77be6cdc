import {
  type Devices,
  type Fan,
  type FilterBed,
  type Fogger,
  type HeatMat,
  type Hose,
  type Lamp,
  type Mister,
  PHOTONS_PER_KILOLUMEN,
  type Pump,
  pumpedFlow,
  type WaterComposition,
} from '@shoreglass/engine';
import type { EnclosureContent } from '../schema/enclosure.ts';
import type { Blend } from '../schema/water.ts';

type DevicesContent = NonNullable<EnclosureContent['devices']>;
type LampContent = NonNullable<DevicesContent['lamps']>[number];
type PumpContent = NonNullable<DevicesContent['pump']>;
type FanContent = NonNullable<DevicesContent['fans']>[number];
type MatContent = NonNullable<DevicesContent['mats']>[number];
type FoggerContent = NonNullable<DevicesContent['fogger']>;

/** Photons per luminous flux of white LEDs [umol/lm]. @source computed from the CIE LED illuminants B1 to B5, +/- 4 % */
const PHOTONS_PER_LUMEN = 0.0144;
/** Where neither photons nor lumens are given [umol/J]. @source assumed: white LED bars of the trade */
export const PHOTONS_PER_JOULE = 1.8;
/** Part of the emitted light that reaches the cover; the rest goes past it. @source assumed */
const REACHES_COVER = 0.85;

/** Colour temperatures of the CIE LED illuminants B1 to B5 [K] and photons per luminous flux of each. */
const BY_COLOUR = [
  [2733, PHOTONS_PER_KILOLUMEN['LED-B1']],
  [2998, PHOTONS_PER_KILOLUMEN['LED-B2']],
  [4103, PHOTONS_PER_KILOLUMEN['LED-B3']],
  [5109, PHOTONS_PER_KILOLUMEN['LED-B4']],
  [6598, PHOTONS_PER_KILOLUMEN['LED-B5']],
] as const;

/** Photons per luminous flux of a white LED [umol/lm], straight between the illuminants, held beyond them. */
function photonsPerLumen(colour: number | undefined): number {
  if (colour === undefined) return PHOTONS_PER_LUMEN;
  const after = BY_COLOUR.findIndex(([kelvin]) => kelvin >= colour);
  const [high, above] = BY_COLOUR[after < 0 ? BY_COLOUR.length - 1 : after]!;
  const [low, below] = BY_COLOUR[after <= 0 ? (after < 0 ? BY_COLOUR.length - 1 : 0) : after - 1]!;
  const share = high > low ? (colour - low) / (high - low) : 0;
  return (below + (above - below) * share) / 1000;
}

function photonFluxOf({ power, photons, lumens, colour }: LampContent): number {
  if (photons !== undefined) return photons;
  const emitted = lumens === undefined ? power * PHOTONS_PER_JOULE : lumens * photonsPerLumen(colour);
  return emitted * REACHES_COVER;
}

function lampOf(lamp: LampContent): Lamp {
  const { name = 'Lamp', power, on, lit, dim = 1, panel, protection } = lamp;
  return {
    name,
    power: power * dim,
    photonFlux: photonFluxOf(lamp) * dim,
    onAt: on,
    hours: lit,
    ...(lamp.dim === undefined ? {} : { dimmedTo: dim }),
    ...(panel ? { panel } : {}),
    ...(protection ? { protection } : {}),
  };
}

/** [kg/m3] */
const WATER_DENSITY = 998;
/** Centrifugal pumps. @source derived: common practice for pumps known by two figures */
const USUAL_EXPONENT = 2;

function hoseOf({ length, bore, elbows = 0, valves = 0 }: NonNullable<PumpContent['hose']>): Hose {
  return { length, bore, elbows, valves };
}

function filterOf({ kind, area, thickness, pores, grain }: NonNullable<PumpContent['filter']>): FilterBed {
  return {
    kind,
    area,
    thickness,
    ...(pores === undefined ? {} : { pores }),
    ...(grain === undefined ? {} : { grain }),
  };
}

/** @param level of the water [m], from which the pump lifts */
function pumpOf(content: PumpContent, level: number): Pump {
  const { curve, hose, filter, outlet, lip } = content;
  const described = {
    name: content.name ?? 'Pump',
    power: content.power,
    fallHeight: content.fall ?? 0,
    filmSurface: content.films ?? 0,
    ...(curve
      ? {
          curve: {
            shutOffHead: curve.head,
            freeFlow: curve.flow,
            exponent: curve.exponent ?? USUAL_EXPONENT,
          },
        }
      : {}),
    ...(hose ? { hose: hoseOf(hose) } : {}),
    ...(filter ? { filter: filterOf(filter) } : {}),
    ...(outlet === undefined ? {} : { outlet }),
    ...(lip === undefined ? {} : { lip }),
  };
  return { ...described, flow: content.flow ?? pumpedFlow({ ...described, flow: 0 }, level) };
}

const allDay = (on: number | undefined, runs: number | undefined) => ({ onAt: on ?? 0, hours: runs ?? 24 });

function fanOf({ name, power, flow, moves, on, runs, above }: FanContent, index: number): Fan {
  return {
    name: name ?? `Fan ${index + 1}`,
    power,
    flow,
    moves,
    ...allDay(on, runs),
    ...(above === undefined ? {} : { above }),
  };
}

function matOf({ name, power, under, setpoint, on, runs }: MatContent, index: number): HeatMat {
  return {
    name: name ?? `Heat mat ${index + 1}`,
    power,
    under,
    ...allDay(on, runs),
    ...(setpoint === undefined ? {} : { setpoint }),
  };
}

function foggerOf({ name = 'Fogger', power, rate, from, at, runs }: FoggerContent): Fogger {
  return { name, power, rate: rate * WATER_DENSITY, from, at, hours: runs };
}

function misterOf(
  { name = 'Mister', amount, at, water }: NonNullable<DevicesContent['mister']>,
  blended: (blend: Blend) => WaterComposition,
): Mister {
  return { name, dailyMass: amount * WATER_DENSITY, at, ...(water ? { water: blended(water) } : {}) };
}

/**
 * @param level of the water [m]
 * @param blended gives the composition of a water by name or blend
 */
export function devicesOf(
  content: DevicesContent,
  level: number,
  blended: (blend: Blend) => WaterComposition,
): Devices {
  const { lamps = [], heater, pump, mister, fogger, fans = [], mats = [] } = content;
  return {
    lamps: lamps.map(lampOf),
    ...(heater ? { heater } : {}),
    ...(pump ? { pump: pumpOf(pump, level) } : {}),
    ...(mister ? { mister: misterOf(mister, blended) } : {}),
    ...(fogger ? { fogger: foggerOf(fogger) } : {}),
    ...(fans.length > 0 ? { fans: fans.map(fanOf) } : {}),
    ...(mats.length > 0 ? { mats: mats.map(matOf) } : {}),
  };
}
