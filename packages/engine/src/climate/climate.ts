import type { Geometry } from '../geometry/geometry.ts';
import type { Plan } from '../plan/plan.ts';
import { airDevices } from './air-devices.ts';
import { airPaths } from './air-paths.ts';
import { HeatAndVapour } from './balance.ts';
import { AIR, GLASS, GROUND, RATIO, WATER } from './balance-system.ts';
import { climateParameters } from './climate-parameters.ts';
import { type DeviceHours, deviceHours } from './device-hours.ts';
import { createEnvelope } from './envelope.ts';
import { FrontPane } from './front-pane.ts';
import { MoisturePools, WATER_DENSITY } from './moisture-pools.ts';
import type { RoomDrivers } from './room-drivers.ts';

/** Temperatures [degC], humidity and water held outside the pool, at the end of the last hour. */
export interface ClimateState {
  airTemperature: number;
  /** [kg/kg dry air] */
  humidityRatio: number;
  waterTemperature: number;
  groundTemperature: number;
  /** Inner face of the glass that touches air, the front glass among it. */
  glassTemperature: number;
  /** Inner face of the front glass: as the other glass, unless a second pane or stirred air sets it apart. */
  frontTemperature: number;
  /** Condensate on the glass [m3]. */
  film: number;
  /** Moisture in the upper ground and plants above the water [m3]. */
  landWater: number;
}

/** Heat and moisture of the box, hour by hour. All amounts are of the last hour; water in m3 of liquid. */
export interface Climate {
  readonly state: Readonly<ClimateState>;
  /**
   * Moves the climate on by one hour.
   * @param hour of the run, 0 is midnight of the first day
   * @param waterVolume liquid in the pool and in pores below its level [m3], held during the hour
   * @throws RangeError beyond the room's hours, for a negative volume, or when a temperature leaves -20 to 80 degC.
   */
  step(hour: number, waterVolume: number): void;
  /**
   * Sets the leaves that give off water from now on; none before.
   * @param onLand rooted in land, area over resistance in full light [m3/s]
   * @param overWater rooted in the pool's water
   */
  setLeaves(onLand: number, overWater: number): void;
  /** From the open water and from leaves rooted in it into the air; negative when more vapour settled on it than left. */
  readonly evaporated: number;
  /** Drip from the glass, mist, fog and run-off from the land that reached the pool. */
  readonly returnedToPool: number;
  /** Drawn from the pool into drying ground; negative when wet ground drained back. */
  readonly wicked: number;
  /** Run off ground that holds no more, a part of `returnedToPool`. */
  readonly drained: number;
  /** What the pool gained: `returnedToPool - evaporated - wicked`. */
  readonly poolChange: number;
  /** Vapour carried into the room; negative when the room is the moister. */
  readonly lostToRoom: number;
  /** Sprayed in from outside. */
  readonly misted: number;
  /** Of the box air at the end of the hour, 1 at saturation. */
  readonly relativeHumidity: number;
  /** Part of the hour during which the front glass is fogged [0..1]. */
  readonly fogged: number;
  /** Mean heater power [W]. */
  readonly heaterPower: number;
  /** Heat from lamps, pump and heater; heat to the room, that carried by vapour included [J]. */
  readonly heatIn: number;
  readonly heatOut: number;
  /** Vapour, film and land moisture [m3]: with the pool, all the water inside. */
  storedWater(): number;
  /** Heat in air, water, ground and glass above 0 degC, with the latent heat of the vapour [J]. */
  storedHeat(): number;
}

/** Part of its moisture store that land holds on the first day. @source assumed */
const LAND_WETNESS_AT_START = 0.75;

class HourlyClimate implements Climate {
  readonly state: ClimateState = {
    airTemperature: 0,
    humidityRatio: 0,
    waterTemperature: 0,
    groundTemperature: 0,
    glassTemperature: 0,
    frontTemperature: 0,
    film: 0,
    landWater: 0,
  };
  evaporated = 0;
  returnedToPool = 0;
  wicked = 0;
  drained = 0;
  poolChange = 0;
  lostToRoom = 0;
  misted = 0;
  relativeHumidity = 0;
  fogged = 0;
  heaterPower = 0;
  heatIn = 0;
  heatOut = 0;
  private readonly balance: HeatAndVapour;
  private readonly refresh: (volume: number) => void;
  private readonly devices: DeviceHours;
  private readonly rhythm: Rhythm;
  private readonly front: FrontPane | undefined;

  constructor(
    balance: HeatAndVapour,
    refresh: (volume: number) => void,
    devices: DeviceHours,
    rhythm: Rhythm,
    front: FrontPane | undefined,
  ) {
    this.front = front;
    this.balance = balance;
    this.refresh = refresh;
    this.devices = devices;
    this.rhythm = rhythm;
    this.report();
  }

  step(hour: number, waterVolume: number): void {
    const { balance, devices, rhythm } = this;
    const { pools } = balance;
    if (!(hour >= 0 && hour < rhythm.hours)) {
      throw new RangeError(`hour ${hour} is beyond the ${rhythm.hours} hours of the room`);
    }
    const mist = devices.mist[hour % 24]!;
    this.refresh(waterVolume);
    pools.beginHour();
    balance.beginHour(hour, devices.lampPower[hour % 24]!);
    pools.fall(mist);
    const dt = 3600 / rhythm.stepsPerHour;
    let frontFogged = 0;
    for (let i = 0; i < rhythm.stepsPerHour; i++) {
      balance.advance(dt, waterVolume * WATER_DENSITY);
      if (this.front) frontFogged += this.front.advance(balance.aroundFront(hour), dt) / rhythm.stepsPerHour;
    }
    this.book(mist);
    if (this.front) this.fogged = frontFogged;
    this.report();
  }

  setLeaves(onLand: number, overWater: number): void {
    this.balance.setLeaves(onLand, overWater);
  }

  private book(mist: number): void {
    const { balance } = this;
    const { pools } = balance;
    this.evaporated = pools.evaporated / WATER_DENSITY;
    this.returnedToPool = pools.returned / WATER_DENSITY;
    this.wicked = pools.wicked / WATER_DENSITY;
    this.drained = pools.drained / WATER_DENSITY;
    this.poolChange = (pools.returned - pools.evaporated - pools.wicked) / WATER_DENSITY;
    this.lostToRoom = pools.lost / WATER_DENSITY;
    this.misted = (mist + pools.brought) / WATER_DENSITY;
    this.fogged = pools.foggedTime / 3600;
    this.heaterPower = balance.heaterHeat / 3600;
    this.heatIn = balance.heatIn;
    this.heatOut = balance.heatOut;
  }

  private report(): void {
    const { balance, state } = this;
    state.airTemperature = balance.value(AIR);
    state.humidityRatio = balance.value(RATIO);
    state.waterTemperature = balance.value(WATER);
    state.groundTemperature = balance.value(GROUND);
    state.glassTemperature = balance.value(GLASS);
    state.frontTemperature = this.front ? this.front.temperature : balance.value(GLASS);
    state.film = balance.pools.film / WATER_DENSITY;
    state.landWater = balance.pools.land / WATER_DENSITY;
    this.relativeHumidity = balance.relativeHumidity();
  }

  storedWater(): number {
    const { vapour, film, land } = this.balance.pools;
    return (vapour + film + land) / WATER_DENSITY;
  }

  storedHeat(): number {
    return this.balance.storedHeat();
  }
}

interface Rhythm {
  /** Hours the room covers. */
  readonly hours: number;
  readonly stepsPerHour: number;
}

/**
 * Returns the climate of a box at the start of a run: everything at room temperature, water at the heater's setpoint
 * if it is the warmer, glass dry, land three quarters wet.
 * @param plan box, devices and first water level
 * @param geometry of the same plan
 * @param parameters values by key, see `CLIMATE_PARAMETERS`
 * @param room drivers of the same plan, at least as long as the run; `stepsPerHour` (whole, default 1) refines the step
 * @throws Error when a parameter is missing; RangeError when one lies outside its range or the water has no level.
 * @source derived; equations and sources in docs/science/climate.md
 */
export function createClimate(
  plan: Pick<Plan, 'box' | 'devices' | 'water'>,
  geometry: Geometry,
  parameters: Readonly<Record<string, number>>,
  room: RoomDrivers & { readonly stepsPerHour?: number },
): Climate {
  const checked = climateParameters(parameters);
  const { box, devices, water } = plan;
  const { envelope, refresh } = createEnvelope(box, geometry, checked);
  const pools = new MoisturePools(envelope, checked);
  refresh(geometry.volumeAt(water.level));
  pools.land = LAND_WETNESS_AT_START * pools.landCapacity();
  const balance = new HeatAndVapour({
    envelope,
    pools,
    parameters: checked,
    room,
    paths: airPaths(box, geometry.baseArea * box.coverOpenFraction),
    air: airDevices(devices, () => envelope.openShare),
    heater: devices.heater,
    pump: devices.pump,
  });
  balance.fillAir();
  const isApart = box.secondPane !== undefined || devices.fans?.some(({ moves }) => moves === 'inside');
  const coefficients = { inner: checked.innerFilmCoefficient, outer: checked.outerFilmCoefficient };
  const front = isApart
    ? new FrontPane(box, coefficients, pools, (temperature) => balance.saturatedRatioAt(temperature))
    : undefined;
  const rhythm = { hours: room.hours, stepsPerHour: room.stepsPerHour ?? 1 };
  return new HourlyClimate(balance, refresh, deviceHours(devices), rhythm, front);
}
