import { type Climate, createClimate } from '../climate/climate.ts';
import { dayOfYear } from '../climate/day-of-year.ts';
import { vapourPressure } from '../climate/moist-air.ts';
import { WATER_DENSITY } from '../climate/moisture-pools.ts';
import { type RoomDrivers, roomDrivers } from '../climate/room-drivers.ts';
import { dewPoint } from '../climate/saturation.ts';
import { type Geometry, geometryOf } from '../geometry/geometry.ts';
import type { Plan } from '../plan/plan.ts';
import type { ClimateDay, ClimateMonth, ClimateYear, Spread } from './climate-year-result.ts';

/** Days before those that are counted, in which the box comes to its own climate. */
const SETTLING = 20;
const DAYS = 365;
const MONTH_ENDS = [31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365] as const;
/** Land drier than this counts as dry [part of its store]. @source assumed */
const DRY = 1 / 3;
/** On one day in twenty it is drier, or foggier. */
const RARE = 0.05;

/** Hours of every so many days, one day after the other. */
function thinned(values: Float64Array, every: number): Float64Array {
  const days = Math.floor(values.length / 24 / every);
  const kept = new Float64Array(days * 24);
  for (let day = 0; day < days; day++)
    kept.set(values.subarray(day * every * 24, (day * every + 1) * 24), day * 24);
  return kept;
}

/**
 * Returns a case whose room has only every so many days, one following the other: the seasons in less time.
 * @param one case
 * @param every 1 keeps all days
 * @source derived
 */
export function thinnedCase(one: ClimateCase, every: number): ClimateCase {
  const { room } = one;
  const temperature = thinned(room.temperature, every);
  return {
    ...one,
    room: {
      ...room,
      hours: temperature.length,
      temperature,
      vapourPressure: thinned(room.vapourPressure, every),
      humidityRatio: thinned(room.humidityRatio, every),
      density: thinned(room.density, every),
    },
  };
}

/** The parts of the climate that several runs of one box share. */
export interface ClimateCase {
  readonly plan: Plan;
  readonly geometry: Geometry;
  readonly room: RoomDrivers;
  /** Values of the climate's parameters. */
  readonly parameters: Readonly<Record<string, number>>;
}

/** Medians of the plan's priors. @source derived */
export function climateCase(plan: Plan): ClimateCase {
  const priors = plan.priors.climate ?? {};
  return {
    plan,
    geometry: geometryOf(plan),
    room: roomDrivers(plan, SETTLING + DAYS),
    parameters: Object.fromEntries(Object.entries(priors).map(([key, { median }]) => [key, median])),
  };
}

/** One series of the year, an hour at a time. */
interface Hours {
  readonly air: Float64Array;
  readonly water: Float64Array;
  readonly frontGlass: Float64Array;
  readonly ratio: Float64Array;
  readonly humidity: Float64Array;
  readonly fogged: Float64Array;
  readonly evaporated: Float64Array;
  readonly lost: Float64Array;
  readonly topOff: Float64Array;
  readonly wetness: Float64Array;
  readonly heater: Float64Array;
}

export interface HourlyYear extends Hours {
  /** Of the room's air [Pa]. */
  readonly pressure: number;
  /** Month of each day, 0 to 11. */
  readonly months: readonly number[];
  readonly closure: ClimateYear['closure'];
}

function emptyHours(days: number): Hours {
  const hours = () => new Float64Array(days * 24);
  return {
    air: hours(),
    water: hours(),
    frontGlass: hours(),
    ratio: hours(),
    humidity: hours(),
    fogged: hours(),
    evaporated: hours(),
    lost: hours(),
    topOff: hours(),
    wetness: hours(),
    heater: hours(),
  };
}

function monthsFrom(startDate: string): number[] {
  const first = dayOfYear(startDate) - 1 + SETTLING;
  return Array.from({ length: DAYS }, (_, day) => {
    const ofYear = (first + day) % 365;
    return MONTH_ENDS.findIndex((end) => ofYear < end);
  });
}

/** Sums of water [m3] and heat [J] that must balance. */
class Balance {
  water: number;
  moved: number;
  heat: number;
  turned = 0;
  private readonly climate: Climate;

  constructor(climate: Climate) {
    this.climate = climate;
    this.water = -climate.storedWater();
    this.moved = climate.storedWater();
    this.heat = -climate.storedHeat();
  }

  add(): void {
    const { climate } = this;
    this.water += climate.poolChange + climate.lostToRoom - climate.misted;
    this.moved += Math.abs(climate.evaporated) + Math.abs(climate.lostToRoom) + climate.misted;
    this.heat += climate.heatOut - climate.heatIn;
    this.turned += Math.abs(climate.heatIn) + Math.abs(climate.heatOut);
  }

  closure(): ClimateYear['closure'] {
    return {
      water: (this.water + this.climate.storedWater()) / this.moved,
      heat: (this.heat + this.climate.storedHeat()) / (this.turned + 1),
    };
  }
}

/**
 * Returns a year of the box hour by hour, its pool kept at the planned level.
 * @param climate plan, geometry, room and parameters
 * @param settling days before those that are counted
 * @throws RangeError as `createClimate`.
 * @source derived; docs/science/climate.md
 */
export function hourlyYear(
  { plan, geometry, room, parameters }: ClimateCase,
  settling = SETTLING,
): HourlyYear {
  const climate = createClimate(plan, geometry, parameters, room);
  const { level } = plan.water;
  const volume = geometry.volumeAt(level);
  const store = ((parameters.landStore ?? 0) * geometry.landAreaAt(level)) / WATER_DENSITY;
  const days = Math.min(DAYS, room.hours / 24 - settling);
  const hours = emptyHours(days);
  const { state } = climate;
  const balance = new Balance(climate);
  for (let hour = 0; hour < room.hours; hour++) {
    climate.step(hour, volume);
    balance.add();
    const i = hour - settling * 24;
    if (i >= 0 && i < days * 24) {
      hours.air[i] = state.airTemperature;
      hours.water[i] = state.waterTemperature;
      hours.frontGlass[i] = state.frontTemperature;
      hours.ratio[i] = state.humidityRatio;
      hours.humidity[i] = climate.relativeHumidity;
      hours.fogged[i] = climate.fogged;
      hours.evaporated[i] = climate.evaporated;
      hours.lost[i] = climate.lostToRoom;
      hours.topOff[i] = -climate.poolChange;
      hours.wetness[i] = store > 0 ? state.landWater / store : 1;
      hours.heater[i] = climate.heaterPower;
    }
  }
  return {
    ...hours,
    pressure: room.pressure,
    months: monthsFrom(plan.startDate).slice(0, days),
    closure: balance.closure(),
  };
}

/** Dew point of every hour [degC]. */
function dewPoints({ ratio, pressure }: HourlyYear): Float64Array {
  return ratio.map((one) => dewPoint(vapourPressure(one, pressure)));
}

/** Every hour of the days of a month; of all days for `undefined`. */
function daysOf(months: readonly number[], month: number | undefined): number[] {
  return months.flatMap((one, day) => (month === undefined || one === month ? [day] : []));
}

function spread(values: Float64Array, days: readonly number[]): Spread {
  let sum = 0;
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const day of days)
    for (let hour = day * 24; hour < day * 24 + 24; hour++) {
      const value = values[hour]!;
      sum += value;
      if (value < low) low = value;
      if (value > high) high = value;
    }
  return { mean: sum / (24 * days.length), low, high };
}

/** Sum over each day. */
function daily(values: Float64Array, days: readonly number[]): number[] {
  return days.map((day) => {
    let sum = 0;
    for (let hour = day * 24; hour < day * 24 + 24; hour++) sum += values[hour]!;
    return sum;
  });
}

const meanOf = (values: readonly number[]): number =>
  values.reduce((sum, one) => sum + one, 0) / values.length;

/** Value that a share of the days stays below. */
function rank(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const above = Math.min(sorted.length - 1, below + 1);
  return sorted[below]! + (sorted[above]! - sorted[below]!) * (place - below);
}

export interface RareDays {
  readonly humidity: number;
  readonly fog: number;
  readonly topOff: number;
}

/** Mean humidity of the driest day in twenty, hours of fog of the foggiest, and mean top-off [m3/day]: what a cover is judged by. */
export function rareDays(year: HourlyYear, days = daysOf(year.months, undefined)): RareDays {
  return {
    humidity: rank(daily(year.humidity, days), RARE) / 24,
    fog: rank(daily(year.fogged, days), 1 - RARE),
    topOff: meanOf(daily(year.topOff, days)),
  };
}

function monthOf(year: HourlyYear, dew: Float64Array, month: number | undefined): ClimateMonth {
  const days = daysOf(year.months, month);
  const rare = rareDays(year, days);
  const wetness = spread(year.wetness, days);
  let dry = 0;
  for (const day of days)
    for (let hour = day * 24; hour < day * 24 + 24; hour++) if (year.wetness[hour]! < DRY) dry++;
  return {
    month: month === undefined ? 0 : month + 1,
    air: spread(year.air, days),
    water: spread(year.water, days),
    frontGlass: spread(year.frontGlass, days),
    dewPoint: spread(dew, days),
    humidity: spread(year.humidity, days),
    dryDay: rare.humidity,
    fog: meanOf(daily(year.fogged, days)),
    foggyDay: rare.fog,
    evaporated: meanOf(daily(year.evaporated, days)),
    lost: meanOf(daily(year.lost, days)),
    topOff: meanOf(daily(year.topOff, days)),
    landWetness: wetness.mean,
    dryHours: dry / (24 * days.length),
    heaterPower: spread(year.heater, days).mean,
  };
}

function dayOf(year: HourlyYear, dew: Float64Array, month: number): ClimateDay {
  const days = daysOf(year.months, month);
  const course = (values: Float64Array): number[] =>
    Array.from({ length: 24 }, (_, hour) => {
      let sum = 0;
      for (const day of days) sum += values[day * 24 + hour]!;
      return sum / days.length;
    });
  return {
    month: month + 1,
    air: course(year.air),
    water: course(year.water),
    frontGlass: course(year.frontGlass),
    dewPoint: course(dew),
    humidity: course(year.humidity),
    fogged: course(year.fogged),
  };
}

/**
 * Returns a year of heat and moisture in the box by month and hour of the day, at the medians of the climate's parameters
 * and with the pool topped off to its level (`ClimateYear`).
 * @param plan that can be drawn
 * @throws RangeError when its climate cannot be worked out.
 * @validity plants and moss count as moist ground; see docs/science/climate.md
 * @source derived
 */
export function climateYear(plan: Plan): ClimateYear {
  const year = hourlyYear(climateCase(plan));
  const dew = dewPoints(year);
  const months = Array.from({ length: 12 }, (_, month) => month);
  return {
    months: months.map((month) => monthOf(year, dew, month)),
    days: months.map((month) => dayOf(year, dew, month)),
    year: monthOf(year, dew, undefined),
    closure: year.closure,
  };
}
