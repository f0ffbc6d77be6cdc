import type { Devices, HeatMat } from '../plan/devices.ts';
import { litPart } from './device-hours.ts';

/** Humidity over which a fan with a humidistat comes fully on [0..1], and warmth over which a mat goes off [K]. @source assumed */
const FAN_BAND = 0.03;
const MAT_BAND = 1;
/** Part of a mat's heat that enters the box; the rest goes down into the stand. @source assumed */
const MAT_INSIDE = 0.7;

const part = (share: number): number => Math.min(1, Math.max(0, share));

/** What fans, mats and fogger do during an hour. */
export interface AirDevices {
  /** Room air drawn through [m3/s], and that which fans with a humidistat draw when fully on. */
  roomFlow: number;
  gatedFlow: number;
  /** Air stirred along the front glass [m3/s]. */
  stirred: number;
  /** Heat of fans inside [W], of mats into water and ground [W]. */
  fanHeat: number;
  matToWater: number;
  matToGround: number;
  /** Water made into fog [kg/s], and whether it comes from the pool. */
  fogRate: number;
  readonly fogFromPool: boolean;
  /** Part of full speed at which the humidistat runs its fans in air of a humidity [0..1]. */
  runsAt(humidity: number): number;
  /** Sets the hour of the day, with the air [0..1], water and ground [degC] as they are at its start. */
  set(hourOfDay: number, humidity: number, water: number, ground: number): void;
}

const NONE: AirDevices = {
  roomFlow: 0,
  gatedFlow: 0,
  runsAt: () => 0,
  stirred: 0,
  fanHeat: 0,
  matToWater: 0,
  matToGround: 0,
  fogRate: 0,
  fogFromPool: false,
  set: () => undefined,
};

/** How far a humidistat turns its fan on [0..1]. */
const gate = (humidity: number, above: number): number => part((humidity - above) / FAN_BAND + 0.5);

function matHeat({ power, setpoint, onAt, hours }: HeatMat, hour: number, temperature: number): number {
  const wanted = setpoint === undefined ? 1 : part((setpoint - temperature) / MAT_BAND + 0.5);
  return MAT_INSIDE * power * litPart(onAt, hours, hour) * wanted;
}

/**
 * Returns what fans, heat mats and fogger do hour by hour, refreshed in place.
 * @param devices of the plan
 * @param openShare part of the base that is open water [0..1], asked at each hour: a mat under all of it warms both
 * @throws RangeError when a fogger starts outside 0 to 24 h.
 * @source derived; bands and share of mats assumed
 */
export function airDevices(devices: Devices, openShare: () => number): AirDevices {
  const { fans = [], mats = [], fogger } = devices;
  if (fans.length === 0 && mats.length === 0 && !fogger) return { ...NONE };
  for (const time of fogger?.at ?? [])
    if (!(time >= 0 && time < 24)) throw new RangeError(`the fogger starts at ${time} h; give 0 to below 24`);
  const driest = Math.min(...fans.map(({ moves, above = 1 }) => (moves === 'room' ? above : 1)), 1);
  return {
    ...NONE,
    fogFromPool: fogger?.from === 'pool',
    runsAt: (humidity) => gate(humidity, driest),
    set(hour, humidity, water, ground) {
      this.roomFlow = 0;
      this.gatedFlow = 0;
      this.stirred = 0;
      this.fanHeat = 0;
      this.matToWater = 0;
      this.matToGround = 0;
      for (const { flow, power, moves, onAt, hours, above } of fans) {
        const lit = litPart(onAt, hours, hour);
        const runs = lit * (above === undefined ? 1 : gate(humidity, above));
        if (moves === 'room' && above === undefined) this.roomFlow += flow * lit;
        else if (moves === 'room') this.gatedFlow += flow * lit;
        else {
          this.stirred += flow * runs;
          this.fanHeat += power * runs;
        }
      }
      for (const mat of mats) {
        const heat = matHeat(mat, hour, mat.under === 'water' ? water : ground);
        const onWater = mat.under === 'water' ? 1 : mat.under === 'land' ? 0 : openShare();
        this.matToWater += heat * onWater;
        this.matToGround += heat * (1 - onWater);
      }
      let fogging = 0;
      for (const time of fogger?.at ?? []) fogging += litPart(time, fogger?.hours ?? 0, hour);
      this.fogRate = (fogger?.rate ?? 0) * Math.min(1, fogging);
    },
  };
}
