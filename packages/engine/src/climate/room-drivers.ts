import { cos } from '../numerics/elementary.ts';
import type { Plan, SeasonalCourse } from '../plan/plan.ts';
import { dayOfYear } from './day-of-year.ts';
import { humidityRatio, moistAirDensity } from './moist-air.ts';
import { saturationVapourPressure } from './saturation.ts';

/** Air of the room, one value for each hour of a run; shared by all members. */
export interface RoomDrivers {
  readonly hours: number;
  /** [degC] */
  readonly temperature: Float64Array;
  /** [Pa] */
  readonly vapourPressure: Float64Array;
  /** [kg/kg dry air] */
  readonly humidityRatio: Float64Array;
  /** Density with vapour [kg/m3]. */
  readonly density: Float64Array;
  /** Total pressure [Pa]. */
  readonly pressure: number;
  /** Hours whose relative humidity fell outside 0 to 1 and was set to the nearer bound. */
  readonly boundedHours: number;
}

/** Hour of the day at which the daily course peaks. */
const WARMEST_HOUR = 15;

/** mean + yearAmplitude cos(2 pi (day - peakDay)/365.25) + dayAmplitude cos(2 pi (hour - 15)/24). */
function seasonal(course: SeasonalCourse, day: number, hourOfDay: number): number {
  const season = cos((2 * Math.PI * (day - course.peakDay)) / 365.25);
  const daily = cos((2 * Math.PI * (hourOfDay - WARMEST_HOUR)) / 24);
  return course.mean + course.yearAmplitude * season + course.dayAmplitude * daily;
}

/**
 * Returns the room's air for every hour of a run: from the hourly series, repeated from its start when it is shorter,
 * or else from the seasonal courses, with the middle of the hour as its time.
 * @param plan the room and the first day of the run
 * @param days length of the run, >= 1
 * @throws RangeError when the start is not a date, a series is empty or uneven, or a temperature is not from -50 to 60 degC.
 * @source derived
 */
export function roomDrivers(plan: Pick<Plan, 'room' | 'startDate'>, days: number): RoomDrivers {
  const { room } = plan;
  const hours = Math.ceil(days * 24);
  const first = dayOfYear(plan.startDate);
  const period = room.series?.temperature.length ?? 0;
  if (room.series && (period === 0 || room.series.humidity.length !== period)) {
    throw new RangeError(
      `room series ${room.series.name}: temperature and humidity need the same hours, at least one`,
    );
  }
  const temperature = new Float64Array(hours);
  const vapourPressure = new Float64Array(hours);
  const ratio = new Float64Array(hours);
  const density = new Float64Array(hours);
  let boundedHours = 0;
  for (let hour = 0; hour < hours; hour++) {
    const time = (hour % 24) + 0.5;
    const day = first + (hour - (hour % 24) + time) / 24;
    const t = room.series ? room.series.temperature[hour % period]! : seasonal(room.temperature, day, time);
    const humidity = room.series ? room.series.humidity[hour % period]! : seasonal(room.humidity, day, time);
    if (!(t >= -50 && t <= 60) || Number.isNaN(humidity)) {
      throw new RangeError(`room air of hour ${hour}: ${t} degC at a relative humidity of ${humidity}`);
    }
    const bounded = Math.min(1, Math.max(0, humidity));
    if (bounded !== humidity) boundedHours++;
    temperature[hour] = t;
    vapourPressure[hour] = bounded * saturationVapourPressure(t);
    ratio[hour] = humidityRatio(vapourPressure[hour]!, room.pressure);
    density[hour] = moistAirDensity(t, ratio[hour]!, room.pressure);
  }
  return {
    hours,
    temperature,
    vapourPressure,
    humidityRatio: ratio,
    density,
    pressure: room.pressure,
    boundedHours,
  };
}
