import { dayOfYear, type Room, type RoomSeries, type SeasonalCourse } from '@shoreglass/engine';
import type { EnclosureContent } from '../schema/enclosure.ts';

/** Where the file says nothing. @source assumed: indoor air, sea level, warmest in late July */
const ORDINARY = { carbonDioxide: 600, pressure: 101_325, peakDay: 205 } as const;

interface CourseContent {
  readonly mean: number;
  readonly season?: number | undefined;
  readonly day?: number | undefined;
  readonly peak?: number | undefined;
}

function courseOf({ mean, season = 0, day = 0, peak = ORDINARY.peakDay }: CourseContent): SeasonalCourse {
  return { mean, yearAmplitude: season, peakDay: peak, dayAmplitude: day };
}

const meanOf = (values: Float64Array): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;

const HOURS_IN_YEAR = 365 * 24;

/** A series of a whole year turned so that it starts on the plan's day of the year; a shorter one as it is. */
export function turnedTo(series: DatedSeries, startDate: string): RoomSeries {
  const { name, source, temperature, humidity } = series;
  if (temperature.length < HOURS_IN_YEAR) return { name, source, temperature, humidity };
  const days = dayOfYear(startDate) - dayOfYear(series.firstDay);
  const shift = (((days % 365) + 365) % 365) * 24;
  const turn = (values: Float64Array): Float64Array => {
    const turned = new Float64Array(values.length);
    turned.set(values.subarray(shift));
    turned.set(values.subarray(0, shift), values.length - shift);
    return turned;
  };
  return { name, source, temperature: turn(temperature), humidity: turn(humidity) };
}

/** A room series with the date of its first hour. */
export interface DatedSeries extends RoomSeries {
  /** ISO date. */
  readonly firstDay: string;
}

/** @throws Error when there is neither a series nor both courses; checking finds that first. */
export function roomOf({ room, start }: EnclosureContent, series: DatedSeries | undefined): Room {
  const base = {
    carbonDioxide: room['carbon-dioxide'] ?? ORDINARY.carbonDioxide,
    pressure: room.pressure ?? ORDINARY.pressure,
  };
  if (series) {
    return {
      ...base,
      temperature: courseOf(room.temperature ?? { mean: meanOf(series.temperature) }),
      humidity: courseOf(room.humidity ?? { mean: meanOf(series.humidity) }),
      series: turnedTo(series, start),
    };
  }
  if (!room.temperature || !room.humidity) throw new Error('the room has neither a series nor both courses');
  return { ...base, temperature: courseOf(room.temperature), humidity: courseOf(room.humidity) };
}
