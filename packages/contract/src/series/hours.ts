export interface Sample {
  readonly line: number;
  /** Minutes since 1970, as the clock on the wall had it. */
  readonly minute: number;
  readonly temperature: number;
  readonly humidity: number;
}

export interface Hours {
  readonly firstDay: string;
  readonly temperature: Float64Array;
  readonly humidity: Float64Array;
}

export interface Gap {
  /** Line of the row before the gap. */
  readonly gap: number;
  readonly message: string;
  readonly mend: string;
}

const DAY = 1440;
const LONGEST_GAP = 6 * 60;

/**
 * Hourly means from the first midnight to the last: the mean of the rows of an hour, or a straight line between the
 * rows around its beginning where it has none. A gap of more than six hours is refused.
 */
export function toHours(samples: readonly Sample[]): Hours | Gap {
  const [first] = samples;
  const last = samples[samples.length - 1];
  const start = first ? Math.ceil(first.minute / DAY) * DAY : 0;
  const before = samples[samples.length - 2];
  const step = last && before ? Math.min(LONGEST_GAP, last.minute - before.minute) : 60;
  const days = last ? Math.floor((last.minute + Math.max(60, step) - start) / DAY) : 0;
  if (!first || !last || days < 1)
    return {
      gap: 1,
      message: 'does not hold one whole day from midnight to midnight',
      mend: 'Give at least one full day.',
    };
  const gap = samples.findIndex(
    (sample, index) => index > 0 && sample.minute - (samples[index - 1]?.minute ?? 0) > LONGEST_GAP,
  );
  if (gap > 0)
    return {
      gap: samples[gap]?.line ?? 1,
      message: 'comes more than six hours after the row before',
      mend: 'Fill the gap, or use the part of the series before or after it.',
    };
  const hours = days * 24;
  const temperature = new Float64Array(hours);
  const humidity = new Float64Array(hours);
  let next = 0;
  for (let hour = 0; hour < hours; hour++) {
    const from = start + hour * 60;
    while (next < samples.length && (samples[next]?.minute ?? 0) < from) next++;
    const within: Sample[] = [];
    for (let index = next; index < samples.length && (samples[index]?.minute ?? 0) < from + 60; index++)
      within.push(samples[index] as Sample);
    const value = within.length > 0 ? mean(within) : between(samples[next - 1], samples[next], from);
    temperature[hour] = value.temperature;
    humidity[hour] = value.humidity;
  }
  return { firstDay: new Date(start * 60_000).toISOString().slice(0, 10), temperature, humidity };
}

type Air = Pick<Sample, 'temperature' | 'humidity'>;

function mean(samples: readonly Sample[]): Air {
  const sum = (of: (sample: Sample) => number) => samples.reduce((total, sample) => total + of(sample), 0);
  return {
    temperature: sum((sample) => sample.temperature) / samples.length,
    humidity: sum((sample) => sample.humidity) / samples.length,
  };
}

function between(before: Sample | undefined, after: Sample | undefined, minute: number): Air {
  const left = before ?? after;
  const right = after ?? before;
  if (!left || !right) throw new Error('there are no rows on either side');
  const span = right.minute - left.minute;
  const share = span > 0 ? (minute - left.minute) / span : 0;
  return {
    temperature: left.temperature + share * (right.temperature - left.temperature),
    humidity: left.humidity + share * (right.humidity - left.humidity),
  };
}
