import { capital } from '../outlook/capital.ts';
import { seriesSpec } from '../run/series.ts';
import { type Conflict, type Inhabitant, type Sourced, shown } from './inhabitant.ts';

/** Room of overlap below which two ranges only just meet, by series, in its unit. @source assumed */
const NARROW: Readonly<Record<string, number>> = {
  waterTemperature: 2,
  airTemperature: 2,
  pH: 0.3,
  GH: 2,
  KH: 1,
  relativeHumidity: 5,
};

function isApart(needy: Sourced | undefined, frail: Sourced | undefined): needy is Sourced {
  return needy !== undefined && frail !== undefined && needy.value > frail.value;
}

/** Two inhabitants of whom one needs more than the other bears, and by how much; and ranges that only just meet. */
function between(first: Inhabitant, second: Inhabitant): Conflict[] {
  return first.ranges.flatMap((range): Conflict[] => {
    const other = second.ranges.find(({ series }) => series === range.series);
    if (!other) return [];
    const { name, unit } = seriesSpec(range.series);
    const say = (value: number): string => `${shown(value)} ${unit}`.trim();
    if (isApart(range.low, other.high)) {
      const gap = range.low.value - other.high!.value;
      return [
        {
          kind: 'range',
          who: [first.id, second.id],
          severity: 'warning',
          sentence: `${capital(first.name)} and ${second.name} do not fit together: ${name} of at least ${say(range.low.value)} for the first, at most ${say(other.high!.value)} for the second, ${say(gap)} apart.`,
          source: `${range.low.source}; ${other.high!.source}`,
          mend: 'Keep one of the two.',
        },
      ];
    }
    const low = maxOf(range.low, other.low);
    const high = minOf(range.high, other.high);
    const narrow = NARROW[range.series];
    if (!low || !high || narrow === undefined || first.id > second.id) return [];
    const room = high.value - low.value;
    if (room < 0 || room >= narrow) return [];
    return [
      {
        kind: 'range',
        who: [first.id, second.id],
        severity: 'note',
        sentence: `${capital(first.name)} and ${second.name} share only ${name} from ${say(low.value)} to ${say(high.value)}; a warm spell or a new top-off leaves it.`,
        source: `${low.source}; ${high.source}`,
        mend: `Hold ${name} within it, or keep one of the two.`,
      },
    ];
  });
}

function maxOf(a: Sourced | undefined, b: Sourced | undefined): Sourced | undefined {
  if (!a || !b) return a ?? b;
  return a.value >= b.value ? a : b;
}
function minOf(a: Sourced | undefined, b: Sourced | undefined): Sourced | undefined {
  if (!a || !b) return a ?? b;
  return a.value <= b.value ? a : b;
}

/** Ranges in air and water that do not overlap, or hardly. @source derived: comparison of the species' ranges */
export function rangeConflicts(inhabitants: readonly Inhabitant[]): Conflict[] {
  return inhabitants.flatMap((first) =>
    inhabitants.flatMap((second) => (first === second ? [] : between(first, second))),
  );
}
