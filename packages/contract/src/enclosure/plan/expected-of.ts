import {
  alkalinityOf,
  convert,
  type Expected,
  generalHardness,
  type Plan,
  type SeasonalCourse,
} from '@shoreglass/engine';

function courseRange({ mean, yearAmplitude }: SeasonalCourse): readonly [number, number] {
  return [mean - yearAmplitude, mean + yearAmplitude];
}

/** Coldest and warmest daily mean of a measured room, a rough stand-in for the water's. */
function seriesRange(values: Float64Array): readonly [number, number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let day = 0; day + 24 <= values.length; day += 24) {
    const mean = values.subarray(day, day + 24).reduce((sum, value) => sum + value, 0) / 24;
    low = Math.min(low, mean);
    high = Math.max(high, mean);
  }
  return [low, high];
}

/** What can be told of a plan before any run: hardness of the fill, temperatures that the room gives. */
export function expectedOf({ water: { fill }, room, devices }: Plan): Expected[] {
  const hardness = convert(generalHardness(fill), 'mmol/L', '°dGH');
  const alkalinity = convert(Math.max(0, alkalinityOf(fill)), 'meq/L', '°dKH');
  const [cold, warm] = room.series ? seriesRange(room.series.temperature) : courseRange(room.temperature);
  const setpoint = devices.heater?.setpoint ?? Number.NEGATIVE_INFINITY;
  const heated = { low: Math.max(cold, setpoint), high: Math.max(warm, setpoint), from: 'the room' as const };
  const mats = devices.mats?.length ?? 0;
  return [
    { series: 'GH', low: hardness, high: hardness, from: 'the fill water' },
    { series: 'KH', low: alkalinity, high: alkalinity, from: 'the fill water' },
    { series: 'waterTemperature', ...heated },
    // What a mat under the land adds is not told before the run.
    ...(mats === 0
      ? [{ series: 'airTemperature' as const, low: cold, high: warm, from: 'the room' as const }]
      : []),
  ];
}
